package hingewise.diagnosis;

import hingewise.inference.Weighted;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Observation;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Phones as this one may be, drawn jointly from what is known, each as likely as the next. */
public final class Draws {
    private final int count;
    private final Parents parents;
    private final Set<String> reported;
    private final Map<String, BitSet> yes = new HashMap<>();

    /** @param reported observations that somebody has answered */
    Draws(Parents parents, Set<String> reported, List<Map<String, Boolean>> draws) {
        this.count = draws.size();
        this.parents = parents;
        this.reported = Set.copyOf(reported);
        for (int i = 0; i < count; i++) {
            for (Map.Entry<String, Boolean> variable : draws.get(i).entrySet()) {
                if (variable.getValue()) {
                    yes.computeIfAbsent(variable.getKey(), v -> new BitSet()).set(i);
                }
            }
        }
    }

    /** How many there are. */
    public int count() {
        return count;
    }

    /** The phones that have a cause now. */
    public BitSet withCause(String cause) {
        return with(Names.cause(cause));
    }

    /** The phones to which this happened. */
    public BitSet afterHistory(String history) {
        return with(Names.history(history));
    }

    private BitSet with(String name) {
        BitSet with = yes.get(name);
        return with == null ? new BitSet() : (BitSet) with.clone();
    }

    /**
     * The chance, phone by phone, that a look at an observation says yes, in 0–1; given the phone, looks at different
     * observations are independent. Empty for an observation that was answered before: the answers to come depend on
     * those.
     */
    public Optional<double[]> saysYes(Observation observation, EvidenceKind kind) {
        if (reported.contains(observation.id())) {
            return Optional.empty();
        }
        double[] absent = new double[count];
        Arrays.fill(absent, 1 - observation.leak());
        for (Parents.Parent parent : parents.of(observation.id())) {
            BitSet there = with(parent.cause() ? Names.cause(parent.id()) : Names.history(parent.id()));
            there.stream().forEach(i -> absent[i] *= 1 - parent.strength());
        }
        Weighted report = Likelihoods.repeated(observation, kind, List.of(true));
        double[] says = new double[count];
        for (int i = 0; i < count; i++) {
            says[i] = (1 - absent[i]) * report.ifYes() + absent[i] * report.ifNo();
        }
        return Optional.of(says);
    }
}
