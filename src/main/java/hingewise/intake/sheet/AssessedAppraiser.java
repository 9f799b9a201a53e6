package hingewise.intake.sheet;

import hingewise.assessment.Assessment;
import hingewise.assessment.Assessor;
import hingewise.assessment.ShownCaution;
import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Phone;
import hingewise.casefile.Report;
import hingewise.costing.PriceBook;
import hingewise.costing.Shop;
import hingewise.diagnosis.CaseException;
import hingewise.inference.CliqueLimitException;
import hingewise.intake.SellerQuestions;
import hingewise.intake.sheet.Appraisal.LikelyCause;
import hingewise.offer.Promise;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Question;
import hingewise.rulebook.RuleBook;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.joda.money.Money;

/** Thinks about a listing as about any other case: what it claims is assessed, and the money reckoned from that. */
public final class AssessedAppraiser implements Appraiser {
    private static final int CAUSES = 3;
    private static final int MOST_CEILINGS = 100;

    private final RuleBook rules;
    private final PriceBook prices;
    private final Shop shop;

    public AssessedAppraiser(RuleBook rules, PriceBook prices, Shop shop) {
        this.rules = rules;
        this.prices = prices;
        this.shop = shop;
    }

    @Override
    public Prospect prospect(Claims claims) {
        Shop terms = claims.quote().map(q -> quoting(claims.phone(), q)).orElse(shop);
        CaseFile file = new CaseFile("", false, claims.phone(), reports(claims.claims()));
        try {
            Assessment assessment = new Assessor(rules, prices, terms).assess(file);
            Promise promise = new hingewise.offer.Appraiser(rules, prices, terms)
                    .promise(file, assessment.diagnosis())
                    .orElseThrow(() -> new UnappraisableException(
                            "the shop file does not say what such a phone brings; add a model to it"));
            return new Thought(promise, about(assessment, claims.claims()));
        } catch (CliqueLimitException e) {
            throw new UnappraisableException("what its text claims hangs together too much to be answered exactly ("
                    + e.getMessage() + "); assess it by hand");
        } catch (CaseException e) {
            throw new UnappraisableException(String.join("; ", e.problems()));
        }
    }

    private Shop quoting(Phone phone, Money quote) {
        return shop.model(phone)
                .map(m -> shop.withModel(
                        m.at(m.resale(), m.asIs(), m.salvage(), m.service().map(s -> s.at(quote)))))
                .orElse(shop);
    }

    private static List<Entry> reports(List<Claim> claims) {
        List<Entry> reports = new ArrayList<>();
        for (Claim claim : claims) {
            reports.add(new Report(
                    "claim-" + (reports.size() + 1),
                    Instant.EPOCH,
                    "seller",
                    EvidenceKind.CLAIM,
                    claim.observation(),
                    claim.yes() ? Question.YES : Question.NO,
                    Optional.empty(),
                    ""));
        }
        return reports;
    }

    private About about(Assessment assessment, List<Claim> claims) {
        return new About(
                claims.stream().map(Claim::written).toList(),
                assessment.diagnosis().causes().stream()
                        .limit(CAUSES)
                        .map(c -> new LikelyCause(c.cause().id(), c.cause().label(), c.probability()))
                        .toList(),
                SellerQuestions.of(rules.of(assessment.file().phone().family()), assessment).stream()
                        .map(Observation::question)
                        .toList(),
                assessment.cautions().stream()
                        .filter(ShownCaution::stops)
                        .map(c -> c.caution().id())
                        .toList());
    }

    /** What is the same for all phones of which the same is claimed. */
    private record About(List<String> claims, List<LikelyCause> causes, List<String> ask, List<String> stops) {}

    private static final class Thought implements Prospect {
        private final Promise promise;
        private final About about;
        /** By shipping, of which a sheet has few; a sheet that has many must not fill the memory. */
        private final Map<Money, Money> ceilings = new ConcurrentHashMap<>();

        Thought(Promise promise, About about) {
            this.promise = promise;
            this.about = about;
        }

        @Override
        public Appraisal at(Money price, Money shipping) {
            Promise.Outlook outlook = promise.at(price, shipping);
            return new Appraisal(
                    outlook.profit(),
                    outlook.spread(),
                    outlook.lossChance(),
                    about.stops().isEmpty() ? ceiling(shipping) : Money.zero(price.getCurrencyUnit()),
                    about.claims(),
                    about.causes(),
                    about.ask(),
                    about.stops());
        }

        private Money ceiling(Money shipping) {
            if (ceilings.size() > MOST_CEILINGS) {
                ceilings.clear();
            }
            return ceilings.computeIfAbsent(shipping, s -> promise.ceiling(s).orElse(Money.zero(s.getCurrencyUnit())));
        }
    }
}
