package hingewise.planning;

import hingewise.costing.Offer;
import hingewise.costing.RepairCosts;
import hingewise.costing.Shop;
import hingewise.costing.Terms;
import hingewise.decision.Planner;
import hingewise.diagnosis.Diagnosis;
import hingewise.rulebook.Access;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * What is done with a phone costs, by the model that cases are planned with: how much less it brings than a phone that was
 * never opened and works. Amounts are in the shop's currency, expected where prices hang on chance.
 */
public final class Reckoning {
    private final RuleBook rules;
    private final RepairCosts costs;
    private final List<Cause> counted;
    private final Packages packages;
    private final List<Alternative> alternatives;
    private final Map<Access, List<Cause>> openedLater;
    private final double opened;

    /** @param start what is known of the phone before anything is done to it */
    public Reckoning(RuleBook rules, RepairCosts costs, Diagnosis start, Concern concern) {
        this.rules = rules;
        this.costs = costs;
        this.counted =
                rules.causesOf(costs.family()).stream().filter(concern::counts).toList();
        this.packages = new Packages(costs, Set.of(), counted);
        this.openedLater = packages.openedLater();
        Alternatives others = new Alternatives(costs, start, Terms.UNKNOWN, true);
        this.alternatives = others.all();
        this.opened = amount(others.opening());
    }

    /** The causes that count. */
    public List<Cause> counted() {
        return counted;
    }

    /** Something that is done once it is open as far as is needed. */
    public double doing(Confirmation c) {
        return amount(costs.money(c.cost())) + work(c.minutes());
    }

    /** So many hands-on minutes. */
    public double work(double minutes) {
        return amount(costs.labour(minutes));
    }

    /** One step of opening. */
    public double opening(Access step) {
        return amount(costs.opening(step));
    }

    /** What is fitted to renew a component for least; empty where no part that can be bought does. */
    public Set<Part> parts(String component) {
        return packages.part(component).map(costs::bundle).orElse(Set.of());
    }

    /** Buying, awaiting and fitting parts, opening not included. */
    public double fitting(Collection<Part> parts) {
        return amount(packages.cost(parts));
    }

    /** What is paid for the goods alone. */
    public double goods(Collection<Part> parts) {
        return parts.stream()
                .flatMap(p -> costs.offer(p.id()).stream())
                .mapToDouble(o -> amount(o.goods()))
                .sum();
    }

    /** How long these parts are waited for. */
    public int days(Collection<Part> parts) {
        return parts.stream()
                .flatMap(p -> costs.offer(p.id()).stream())
                .mapToInt(Offer::days)
                .max()
                .orElse(0);
    }

    /** Bringing about a cause that does not count. */
    public double bringing(Cause cause) {
        return amount(costs.toRenew(cause.component()).orElseGet(costs::priceOfFailure));
    }

    /** The ways to end a case without fitting anything more. */
    public List<Decision.Kind> endings(boolean isOpened) {
        return Stream.concat(
                        Stream.of(Decision.Kind.LEAVE),
                        alternatives.stream()
                                .filter(a -> !(isOpened && a.unopened()))
                                .map(Alternative::kind))
                .distinct()
                .toList();
    }

    /**
     * Ending a case.
     *
     * @param isOpened whether anything was opened
     * @param there ids of the causes that are there
     */
    public double ending(Decision.Kind kind, boolean isOpened, Set<String> there) {
        return expected(
                kind,
                isOpened,
                c -> there.contains(c.id()) ? 1 : 0,
                left -> left.stream().anyMatch(there::contains) ? 1 : 0);
    }

    /**
     * The same where it is not known what is there.
     *
     * @param chance of a cause, in 0–1
     * @param anyOf chance that any of some causes is there, by their ids, in 0–1
     */
    public double expected(
            Decision.Kind kind,
            boolean isOpened,
            ToDoubleFunction<Cause> chance,
            ToDoubleFunction<List<String>> anyOf) {
        Optional<Alternative> other = alternatives.stream()
                .filter(a -> a.kind() == kind && !(isOpened && a.unopened()))
                .findFirst();
        if (other.isEmpty()) {
            double later = isOpened
                    ? 0
                    : opened
                            * anyOf.applyAsDouble(ids(openedLater.values().stream()
                                    .flatMap(List::stream)
                                    .distinct()));
            return (isOpened ? opened : later) + failing(counted, chance, anyOf);
        }
        Alternative a = other.get();
        double less = a.less().stream()
                .mapToDouble(l -> amount(l.amount())
                        * anyOf.applyAsDouble(
                                ids(counted.stream().filter(c -> l.components().contains(c.component())))))
                .sum();
        List<Cause> left = a.leavesNothing()
                ? List.of()
                : counted.stream()
                        .filter(c -> !a.mends().contains(c.component()))
                        .toList();
        return amount(a.cost()) + less + a.concern() * failing(left, chance, anyOf);
    }

    private static List<String> ids(Stream<Cause> causes) {
        return causes.map(Cause::id).toList();
    }

    private double failing(List<Cause> left, ToDoubleFunction<Cause> chance, ToDoubleFunction<List<String>> anyOf) {
        return left.isEmpty()
                ? 0
                : amount(costs.priceOfFailure()) * anyOf.applyAsDouble(ids(left.stream()))
                        + left.stream()
                                .mapToDouble(c -> chance.applyAsDouble(c) * amount(packages.later(c)))
                                .sum()
                        + openedLater.entrySet().stream()
                                .mapToDouble(s -> opening(s.getKey())
                                        * anyOf.applyAsDouble(
                                                ids(s.getValue().stream().filter(left::contains))))
                                .sum();
    }

    /** Hands-on minutes that ending a case takes. */
    public double minutes(Decision.Kind kind) {
        return kind == Decision.Kind.BREAK
                ? costs.model().map(Shop.Model::stripMinutes).orElse(0)
                : 0;
    }

    /** Days that ending a case takes, until it can be sold. */
    public int days(Decision.Kind kind) {
        return kind == Decision.Kind.SERVICE
                ? costs.model()
                        .flatMap(Shop.Model::service)
                        .map(Shop.Service::days)
                        .orElse(0)
                : 0;
    }

    /** What a phone would cost if at every moment it were known what is there; nothing is expected to cost less. */
    public double knowing(Set<String> there) {
        List<Cause> present =
                counted.stream().filter(c -> there.contains(c.id())).toList();
        KnownPhone phone = new KnownPhone(rules, costs, packages, alternatives, present, opened);
        return phone.below() + Planner.knowing(phone.problem(), present.isEmpty() ? 0 : -1L >>> 64 - present.size());
    }

    /** Ids of the components that these parts renew. */
    public static Set<String> renewed(Collection<Part> parts) {
        return parts.stream().flatMap(p -> p.renews().stream()).collect(Collectors.toSet());
    }

    static double amount(Money money) {
        return money.getAmount().doubleValue();
    }
}
