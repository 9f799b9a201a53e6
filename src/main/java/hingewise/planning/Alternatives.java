package hingewise.planning;

import hingewise.casefile.Opened;
import hingewise.casefile.Repair;
import hingewise.costing.Proceeds;
import hingewise.costing.RepairCosts;
import hingewise.costing.Shop;
import hingewise.costing.Terms;
import hingewise.diagnosis.Diagnosis;
import hingewise.rulebook.Part;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.joda.money.Money;

/**
 * What can be done with a phone instead of repairing it here: the maker's repair, selling it as it is, breaking it for its
 * parts, giving it back to its seller, not buying it. A plain model beside that of the offer: expected amounts, and causes of one component each take off its worth.
 */
final class Alternatives {
    private final RepairCosts costs;
    private final Diagnosis diagnosis;
    private final Terms terms;
    private final boolean here;
    private final Money nothing;

    /** @param here whether the phone is here; else it is only listed */
    Alternatives(RepairCosts costs, Diagnosis diagnosis, Terms terms, boolean here) {
        this.costs = costs;
        this.diagnosis = diagnosis;
        this.terms = terms;
        this.here = here;
        this.nothing = Money.zero(costs.shop().currency());
    }

    /** Whether it was opened here before, so that opening it again takes nothing off. */
    boolean opened() {
        return !diagnosis.readings().open().isEmpty()
                || diagnosis.readings().happenings().stream()
                        .anyMatch(h -> h.entry() instanceof Opened || h.entry() instanceof Repair);
    }

    /** What a working phone brings less because it is opened now. */
    Money opening() {
        return costs.model()
                .map(m -> new Proceeds(costs, m, diagnosis.readings()))
                .filter(p -> !opened())
                .map(p -> p.working(false).minus(p.working(true)))
                .orElse(nothing);
    }

    /** None where the shop does not say what such a phone brings. */
    List<Alternative> all() {
        List<Alternative> all = new ArrayList<>();
        costs.model().ifPresent(m -> {
            Proceeds proceeds = new Proceeds(costs, m, diagnosis.readings());
            Money best = proceeds.working(opened()).minus(proceeds.selling());
            Alternative asIs = asIs(proceeds, best);
            all.add(asIs);
            all.add(breaking(proceeds, best));
            m.service().ifPresent(s -> {
                Money opened = opened() ? proceeds.working(false).minus(proceeds.working(true)) : nothing;
                double unlooked = takenIfUnopened(s);
                if (!opened()) {
                    all.add(service(s, asIs, opened, unlooked, true));
                }
                double taken = unlooked * (1 - s.refusesOpened().doubleValue());
                all.add(service(s, asIs, opened, taken, false));
            });
            costs.shop()
                    .returns()
                    .filter(r -> here && !opened())
                    .ifPresent(r -> terms.refund().ifPresent(price -> all.add(returning(r, price, best, asIs))));
            terms.asked().filter(price -> !here).ifPresent(price -> all.add(passing(price, best)));
        });
        return all;
    }

    private static Alternative asIs(Proceeds proceeds, Money best) {
        return new Alternative(
                Decision.Kind.AS_IS,
                best.minus(proceeds.asIs()).plus(proceeds.sellingAsIs()),
                proceeds.asIsLess().entrySet().stream()
                        .map(e -> new Alternative.Less(Set.of(e.getKey()), e.getValue()))
                        .toList(),
                Set.of(),
                true,
                1,
                false);
    }

    private Alternative breaking(Proceeds proceeds, Money best) {
        Map<String, Money> salvage = proceeds.salvage();
        List<Alternative.Less> less = salvage.entrySet().stream()
                .map(e -> new Alternative.Less(
                        costs.part(e.getKey()).map(Part::renews).orElse(Set.of()), e.getValue()))
                .toList();
        Money whole = salvage.values().stream().reduce(nothing, Money::plus);
        return new Alternative(
                Decision.Kind.BREAK, best.minus(whole).plus(proceeds.breaking()), less, Set.of(), true, 1, false);
    }

    /**
     * If they refuse, it is sold as it is.
     *
     * @param opened what a working phone brings less now because it was opened; the maker closes it as new
     * @param taken share of such phones that they do not refuse
     */
    private Alternative service(Shop.Service service, Alternative asIs, Money opened, double taken, boolean unopened) {
        double refused = 1 - taken;
        Money either = service.shipping().plus(costs.perDay().multipliedBy(service.days()));
        return new Alternative(
                Decision.Kind.SERVICE,
                either.plus(service.quote().minus(opened).multipliedBy(taken, RoundingMode.HALF_EVEN))
                        .plus(service.refusal().plus(asIs.cost()).multipliedBy(refused, RoundingMode.HALF_EVEN)),
                asIs.less().stream().map(l -> l.share(refused)).toList(),
                service.renews(),
                false,
                taken,
                unopened);
    }

    /** The share that they do not refuse of phones that nobody opened. */
    private double takenIfUnopened(Shop.Service service) {
        double taken = 1;
        for (Map.Entry<String, BigDecimal> after : new TreeMap<>(service.refusesAfter()).entrySet()) {
            taken *= 1
                    - diagnosis.histories().getOrDefault(after.getKey(), 0.0)
                            * after.getValue().doubleValue();
        }
        return taken;
    }

    /** Whatever else is done with it is only worth it if it leaves the margin beyond what the phone costs. */
    private Alternative passing(Money price, Money best) {
        Shop.Buying buying = costs.shop().buying();
        Money less = best.minus(buying.spent(price)).minus(buying.margin());
        return new Alternative(Decision.Kind.PASS, less, List.of(), Set.of(), true, 1, true);
    }

    /** If the seller refuses, it is not sent, and is sold as it is. */
    private static Alternative returning(Shop.Returning returning, Money price, Money best, Alternative asIs) {
        BigDecimal taken = returning.accepted();
        BigDecimal refused = BigDecimal.ONE.subtract(taken);
        return new Alternative(
                Decision.Kind.RETURN,
                best.minus(price)
                        .plus(returning.shipping())
                        .multipliedBy(taken, RoundingMode.HALF_EVEN)
                        .plus(asIs.cost().multipliedBy(refused, RoundingMode.HALF_EVEN)),
                asIs.less().stream().map(l -> l.share(refused.doubleValue())).toList(),
                Set.of(),
                true,
                1,
                true);
    }
}
