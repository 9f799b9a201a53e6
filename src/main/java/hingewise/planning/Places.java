package hingewise.planning;

import hingewise.decision.Policy;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;

/** A policy in which what is the same from some place on is one place, however many ways lead there. */
final class Places {
    /** Where a report leads that is too rare to be planned for. */
    static final int NOWHERE = -1;

    private final BiFunction<Policy.Decide, Map<Integer, Boolean>, Decision> decisions;
    private final Map<List<Object>, Integer> numbers = new HashMap<>();
    private final List<Draft> drafts = new ArrayList<>();

    /** A place as it is put together. */
    private record Draft(
            Policy policy,
            Optional<Decision> decision,
            double[] chance,
            Map<Optional<Map<Integer, Boolean>>, Way> ways) {}

    /**
     * What follows a report.
     *
     * @param chance of all cases
     * @param report answers by sign; empty if the act was left because a need was not met
     * @param to number of the place, or {@link #NOWHERE}
     */
    record Way(double chance, Optional<Map<Integer, Boolean>> report, int to) {}

    /** @param decisions what is decided, and which decisions are the same, by what was seen until then */
    Places(BiFunction<Policy.Decide, Map<Integer, Boolean>, Decision> decisions) {
        this.decisions = decisions;
    }

    /** The number of the place at which a policy begins, or {@link #NOWHERE} if it was not planned. */
    int add(Policy policy) {
        return add(policy, Map.of());
    }

    /** @param seen the last answer to each sign on the way there */
    private int add(Policy policy, Map<Integer, Boolean> seen) {
        if (policy instanceof Policy.Unplanned) {
            return NOWHERE;
        }
        List<Object> key = new ArrayList<>();
        List<Way> ways = new ArrayList<>();
        Optional<Decision> decision = Optional.empty();
        if (policy instanceof Policy.Do act) {
            key.add(act.act());
            key.add(act.opens());
            for (Policy.Branch b : act.branches()) {
                Map<Integer, Boolean> further = new HashMap<>(seen);
                b.reported().ifPresent(further::putAll);
                Way way = new Way(b.next().chance(), b.reported(), add(b.next(), further));
                ways.add(way);
                if (way.to() != NOWHERE) {
                    key.add(List.of(way.report(), way.to()));
                }
            }
        } else if (policy instanceof Policy.Decide end) {
            decision = Optional.of(decisions.apply(end, seen));
            key.add(decision.get());
        }
        int number = numbers.computeIfAbsent(key, k -> numbers.size());
        if (number == drafts.size()) {
            drafts.add(new Draft(policy, decision, new double[1], new LinkedHashMap<>()));
        }
        Draft draft = drafts.get(number);
        draft.chance()[0] += policy.chance();
        ways.forEach(w ->
                draft.ways().merge(w.report(), w, (a, b) -> new Way(a.chance() + b.chance(), a.report(), a.to())));
        return number;
    }

    /** What is done there, or decided. */
    Policy policy(int place) {
        return drafts.get(place).policy();
    }

    /** What is decided there. */
    Decision decision(int place) {
        return drafts.get(place).decision().orElseThrow();
    }

    double chance(int place) {
        return drafts.get(place).chance()[0];
    }

    /** Whether all that follows is too rare to be planned for. */
    boolean leadsNowhere(int place) {
        return policy(place) instanceof Policy.Do
                && drafts.get(place).ways().values().stream().allMatch(w -> w.to() == NOWHERE);
    }

    /** The ways on from there by where they lead: the likeliest first, what leads nowhere last. */
    List<List<Way>> ways(int place) {
        Map<List<Object>, List<Way>> together = new LinkedHashMap<>();
        for (Way way : drafts.get(place).ways().values()) {
            // What cannot be done is told apart from what was seen, unless neither is planned for.
            boolean left = way.report().isEmpty() && way.to() != NOWHERE;
            Objects.requireNonNull(together.computeIfAbsent(List.of(left, way.to()), k -> new ArrayList<>()))
                    .add(way);
        }
        return together.values().stream()
                .sorted(Comparator.comparing((List<Way> w) -> w.get(0).to() == NOWHERE)
                        .thenComparing(Comparator.comparingDouble(Places::sum).reversed()))
                .toList();
    }

    static double sum(List<Way> ways) {
        return ways.stream().mapToDouble(Way::chance).sum();
    }
}
