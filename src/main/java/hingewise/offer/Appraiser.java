package hingewise.offer;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Price;
import hingewise.costing.PriceBook;
import hingewise.costing.Returns;
import hingewise.costing.Shop;
import hingewise.costing.Terms;
import hingewise.diagnosis.Diagnosis;
import hingewise.planning.BenchPolicy;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.joda.money.Money;

/** Says what may be paid for a phone, how its routes compare, and which numbers that hangs on. */
public final class Appraiser {
    /** Any would do; always the same, so that the same case has the same figures. */
    private static final long SEED = 4217;

    private final RuleBook rules;
    private final PriceBook prices;
    private final Shop shop;

    public Appraiser(RuleBook rules, PriceBook prices, Shop shop) {
        this.rules = rules;
        this.prices = prices;
        this.shop = shop;
    }

    /**
     * The money of a case.
     *
     * @param asked what is asked for the phone; if it is empty, what its case says was paid, or else was asked
     * @param stopped whether a caution stops the work
     * @throws hingewise.costing.MixedCurrencyException if an amount is in a currency for which the shop has no rate
     */
    public Appraisal appraise(CaseFile file, Diagnosis diagnosis, Optional<Money> asked, boolean stopped) {
        if (stopped) {
            return new Appraisal(
                    "Work on this phone stops, so nothing is reckoned. Offer nothing for it. First do what the caution says,"
                            + " record what was done and what is seen then; once that is in order, ask again.",
                    Optional.empty());
        }
        Optional<Shop.Model> model = shop.model(file.phone());
        if (model.isEmpty()) {
            return new Appraisal(
                    "The shop file does not say what such a phone brings, so nothing can be reckoned: add a model of"
                            + " the family " + file.phone().family() + " to it.",
                    Optional.empty());
        }
        Returns returns = Returns.of(file, shop);
        Valuation.Subject subject = subject(file, diagnosis, returns);
        Optional<Money> paid = asked.isPresent() ? Optional.empty() : Price.last(file, Price.What.PAID);
        Optional<Money> wanted = asked.or(() -> Price.last(file, Price.What.ASKED));
        return appraise(subject, model.get(), wanted.map(shop::in), paid.map(shop::in), returns);
    }

    /**
     * What such a phone promises at any price; empty where the shop file does not say what it brings. It is for sheets of
     * many listings, so the bench sheet is not planned for it: it counts on looks on the desk alone, chosen once at the most
     * to pay without looking, and may promise less than {@link #appraise} says.
     *
     * @throws hingewise.costing.MixedCurrencyException if an amount is in a currency for which the shop has no rate
     */
    public Optional<Promise> promise(CaseFile file, Diagnosis diagnosis) {
        return shop.model(file.phone()).map(model -> {
            Valuation.Subject subject = subject(file, diagnosis, Returns.of(file, shop));
            Valuation valuation = subject.at(prices, shop, model);
            long around = valuation
                    .deal(Knowledge.none(subject.ways().weights()))
                    .ceiling()
                    .orElse(0);
            Knowledge knowledge = Looks.knowledge(subject.ways().weights(), looks(subject, valuation, around));
            double lossLimit = shop.buying().lossLimit().doubleValue();
            return Promise.of(shop.currency(), valuation.deal(knowledge), lossLimit);
        });
    }

    private Valuation.Subject subject(CaseFile file, Diagnosis diagnosis, Returns returns) {
        Bench now = Bench.of(diagnosis, new Ways(diagnosis, SEED));
        return new Valuation.Subject(rules, file.phone(), diagnosis, now, returns.open());
    }

    private Appraisal appraise(
            Valuation.Subject subject, Shop.Model model, Optional<Money> asked, Optional<Money> paid, Returns returns) {
        Valuation valuation = subject.at(prices, shop, model);
        double[] now = subject.ways().weights();
        Deal fixed = valuation.deal(Knowledge.none(now));
        Knowledge knowledge = knowledge(subject, valuation, fixed);
        Deal deal = valuation.deal(knowledge);
        double limit = shop.buying().lossLimit().doubleValue();
        OptionalLong ceiling = deal.ceiling(limit);
        Money price = paid.or(() -> asked).orElse(money(ceiling.orElse(0)));
        Map<Integer, List<Repair>> repairs = valuation.bestRepairs(knowledge);
        Worth worth = new Worth(
                money(ceiling),
                new Bracket(
                        money(fixed.ceiling()),
                        money(deal.ceiling()),
                        money(deal.withPerfectInformation(valuation.choices()).ceiling())),
                money(deal.lossCeiling(limit)),
                limit,
                error(valuation, knowledge, subject.ways(), limit),
                price,
                asked.isPresent() && paid.isEmpty(),
                paid.isPresent(),
                Spread.of(shop.currency(), valuation.bestRepair(now).cost(), now),
                routes(valuation, fixed, price, now).stream()
                        .filter(r -> paid.isEmpty() || r.route() != Route.NOTHING)
                        .toList(),
                returns.closed().stream().toList(),
                knowledge.looks(),
                knowledge.sheet(),
                new Movers(subject, prices, shop, model, knowledge, groups(repairs))
                        .of(repairs.values().stream()
                                .flatMap(List::stream)
                                .map(Repair::purchase)
                                .toList()));
        return new Appraisal(Verdict.of(worth, shop.buying().margin()), Optional.of(worth));
    }

    /**
     * What is known when the route is chosen, of a phone bought at the most that can be paid without looking: first by a few
     * looks on the desk, chosen for all that may be the matter; then by the bench sheet, which is planned for what is
     * complained of, as far as it pays.
     */
    private Knowledge knowledge(Valuation.Subject subject, Valuation valuation, Deal fixed) {
        long around = fixed.ceiling().orElse(0);
        BenchPolicy guide = BenchPolicy.of(
                rules,
                valuation.costs(),
                subject.diagnosis(),
                new Terms(
                        Optional.empty(), subject.returnable() ? Optional.of(money(around)) : Optional.empty(), true));
        Following following = new Following(
                guide,
                subject.now(),
                shop.currency().getDecimalPlaces(),
                (known, bench) -> valuation.state(known, bench).expected(around));
        List<Looks.Look> looks = looks(subject, valuation, around);
        Knowledge desk = Looks.knowledge(subject.ways().weights(), looks);
        Knowledge sheet = following.after(looks);
        // Where nothing of the sheet is left they differ by chance alone: what both look at is drawn.
        return !sheet.sheet().isEmpty()
                        && valuation.deal(sheet).profit(around)
                                > valuation.deal(desk).profit(around)
                ? sheet
                : desk;
    }

    private List<Looks.Look> looks(Valuation.Subject subject, Valuation valuation, long around) {
        return new Looks(rules, valuation.costs(), subject.diagnosis(), subject.ways())
                .worthLooking(valuation.choices(), around);
    }

    private static Map<Integer, List<List<Routes.Group>>> groups(Map<Integer, List<Repair>> repairs) {
        return repairs.entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        e -> e.getValue().stream().map(Repair::groups).toList()));
    }

    /** From the scatter over batches that were drawn and weighted apart. */
    private Money error(Valuation valuation, Knowledge knowledge, Ways ways, double limit) {
        double[] ceilings = IntStream.range(0, Ways.BATCHES)
                .mapToDouble(b -> valuation
                        .deal(knowledge.among(ways.weights(), ways.weights(b)))
                        .ceiling(limit)
                        .orElse(0))
                .toArray();
        double mean = IntStream.range(0, ceilings.length)
                .mapToDouble(b -> ceilings[b])
                .average()
                .orElse(0);
        double variance = IntStream.range(0, ceilings.length)
                        .mapToDouble(b -> (ceilings[b] - mean) * (ceilings[b] - mean))
                        .sum()
                / (ceilings.length - 1);
        return Spread.money(shop.currency(), Math.sqrt(variance / ceilings.length));
    }

    private List<RouteWorth> routes(Valuation valuation, Deal deal, Money price, double[] chances) {
        Repair best = valuation.bestRepair(chances);
        long paid = price.getAmountMinorLong();
        long outlay = deal.spent(paid);
        List<RouteWorth> routes = new ArrayList<>();
        for (Route route : Route.values()) {
            Optional<Choice> choice = route == Route.REPAIR
                    ? Optional.of(best.choice())
                    : valuation.choices().stream()
                            .filter(c -> c.route().equals(route.id()))
                            .findFirst();
            choice.ifPresent(
                    c -> routes.add(worth(route, route == Route.REPAIR ? detail(best) : "", c, paid, outlay, chances)));
        }
        Money none = Money.zero(shop.currency());
        routes.add(new RouteWorth(Route.NOTHING, "", none, none, none, none, none, 0));
        return routes.stream()
                .sorted(Comparator.comparing(RouteWorth::expected).reversed())
                .toList();
    }

    private RouteWorth worth(Route route, String detail, Choice choice, long price, long outlay, double[] chances) {
        long[] profit = IntStream.range(0, chances.length)
                .mapToLong(w -> choice.at(w, price) - outlay)
                .toArray();
        Spread spread = Spread.of(shop.currency(), profit, chances);
        double loss = IntStream.range(0, profit.length)
                .filter(w -> profit[w] < 0)
                .mapToDouble(w -> chances[w])
                .sum();
        return new RouteWorth(
                route,
                detail,
                spread.expected().plus(Money.ofMinor(shop.currency(), outlay)),
                spread.expected(),
                spread.low(),
                spread.middle(),
                spread.high(),
                Math.min(1, loss));
    }

    private static String detail(Repair repair) {
        String tries = repair.tries().stream().map(Confirmation::label).collect(Collectors.joining("; "));
        String parts = repair.purchase().lines().stream()
                .filter(l -> !l.part().renews().isEmpty())
                .map(l -> l.part().label())
                .collect(Collectors.joining("; "));
        return Stream.of(tries.isEmpty() ? "" : "try: " + tries, parts.isEmpty() ? "" : "fit: " + parts)
                .filter(s -> !s.isEmpty())
                .reduce((a, b) -> a + "; " + b)
                .orElse("mend what comes up");
    }

    private Optional<Money> money(OptionalLong minor) {
        return minor.isPresent() ? Optional.of(money(minor.getAsLong())) : Optional.empty();
    }

    private Money money(long minor) {
        return Money.ofMinor(shop.currency(), minor);
    }
}
