package hingewise.planning;

import hingewise.casefile.Opened;
import hingewise.casefile.Repair;
import hingewise.costing.Proceeds;
import hingewise.costing.RepairCosts;
import hingewise.costing.Shop;
import hingewise.diagnosis.Diagnosis;
import hingewise.rulebook.Part;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.joda.money.Money;

/**
 * What can be done with a phone instead of repairing it here: the maker's repair, selling it as it is, breaking it for its
 * parts. A plain model beside that of the offer: expected amounts, and causes of one component each take off its worth.
 */
final class Alternatives {
    private final RepairCosts costs;
    private final Diagnosis diagnosis;
    private final Money nothing;

    Alternatives(RepairCosts costs, Diagnosis diagnosis) {
        this.costs = costs;
        this.diagnosis = diagnosis;
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
                if (!opened()) {
                    all.add(service(s, asIs, true));
                }
                all.add(service(s, asIs, false));
            });
        });
        return all;
    }

    private static Alternative asIs(Proceeds proceeds, Money best) {
        return new Alternative(
                Decision.Kind.AS_IS,
                best.minus(proceeds.asIs()).plus(proceeds.sellingAsIs()),
                proceeds.asIsLess(),
                Set.of(),
                true,
                false);
    }

    private Alternative breaking(Proceeds proceeds, Money best) {
        Map<String, Money> less = new HashMap<>();
        Map<String, Money> salvage = proceeds.salvage();
        salvage.forEach((part, brings) ->
                costs.part(part).map(Part::renews).orElse(Set.of()).forEach(c -> less.merge(c, brings, Money::plus)));
        Money whole = salvage.values().stream().reduce(nothing, Money::plus);
        return new Alternative(
                Decision.Kind.BREAK, best.minus(whole).plus(proceeds.breaking()), less, Set.of(), true, false);
    }

    /** If they refuse, it is sold as it is. */
    private Alternative service(Shop.Service service, Alternative asIs, boolean unopened) {
        double taken = unopened ? 1 : 1 - service.refusesOpened().doubleValue();
        for (Map.Entry<String, BigDecimal> after : service.refusesAfter().entrySet()) {
            taken *= 1
                    - diagnosis.chanceOfAny(List.of(), List.of(after.getKey()))
                            * after.getValue().doubleValue();
        }
        double refused = 1 - taken;
        Money either = service.shipping().plus(costs.perDay().multipliedBy(service.days()));
        Map<String, Money> less = new HashMap<>();
        asIs.less().forEach((c, m) -> less.put(c, m.multipliedBy(refused, RoundingMode.HALF_EVEN)));
        return new Alternative(
                Decision.Kind.SERVICE,
                either.plus(service.quote().multipliedBy(taken, RoundingMode.HALF_EVEN))
                        .plus(service.refusal().plus(asIs.cost()).multipliedBy(refused, RoundingMode.HALF_EVEN)),
                less,
                service.renews(),
                false,
                unopened);
    }
}
