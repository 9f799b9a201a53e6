package hingewise.diagnosis;

import hingewise.inference.Link;
import hingewise.inference.Network;
import hingewise.inference.NoisyOr;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Observation;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Phones as this one may be, each as likely as the next: which causes they have and, because that is drawn once per
 * phone, which of them show which observation. The draws hang on the seed and on the case alone.
 */
public final class PossiblePhones {
    private final int count;
    private final long seed;
    private final Network network;
    private final Parents parents;
    private final Map<String, BitSet> columns;
    private final Set<String> answered;
    private final Map<String, Showing> showing = new HashMap<>();

    /**
     * Why an observation shows.
     *
     * @param by for each cause that can show it, the phones in which it does if it is there
     * @param otherwise phones in which it shows for another reason
     */
    public record Showing(Map<String, BitSet> by, BitSet otherwise) {}

    PossiblePhones(Diagnosis diagnosis, int count, long seed) {
        this.count = count;
        this.seed = seed;
        this.network = diagnosis.solver().network();
        this.parents = diagnosis.readings().parents();
        this.columns = diagnosis.solution().columns(new SplittableRandom(seed), count);
        this.answered = diagnosis.readings().used().stream()
                .map(r -> r.observation().id())
                .collect(Collectors.toUnmodifiableSet());
    }

    /** How many there are. */
    public int count() {
        return count;
    }

    /** The phones that have a cause now; none for a cause the family cannot have. */
    public BitSet with(String cause) {
        return column(Names.cause(cause));
    }

    /** The phones to which this happened. */
    public BitSet after(String history) {
        return column(Names.history(history));
    }

    /**
     * The chance, phone by phone, that an observation shows, in 0–1; given the phone, different observations are
     * independent. Empty for an observation that was answered before: what is seen next hangs on those answers, see
     * {@link #showing}.
     *
     * @param there the phones that have a cause, by its id, when it is looked at
     */
    public Optional<double[]> chances(Observation observation, Function<String, BitSet> there) {
        if (answered.contains(observation.id())) {
            return Optional.empty();
        }
        double[] absent = new double[count];
        Arrays.fill(absent, 1 - observation.leak());
        for (Parents.Parent parent : parents.of(observation.id())) {
            BitSet in = parent.cause() ? there.apply(parent.id()) : after(parent.id());
            in.stream().forEach(i -> absent[i] *= 1 - parent.strength());
        }
        return Optional.of(Arrays.stream(absent).map(a -> 1 - a).toArray());
    }

    private BitSet column(String name) {
        return columns.getOrDefault(name, new BitSet());
    }

    /** Why each of them shows an observation as it would be made now, if it does. */
    public Showing showing(String observation) {
        return showing.computeIfAbsent(observation, o -> showing(o, cause -> true));
    }

    /** The chances that a look of this kind reports an observation, if it is so and if it is not. */
    public static Look look(Observation observation, EvidenceKind kind) {
        var report = Likelihoods.repeated(observation, kind, List.of(true));
        return new Look(report.ifYes(), report.ifNo());
    }

    /** How a look reads: chance of "yes" if it is so and if it is not. */
    public record Look(double ifSo, double ifNot) {}

    /**
     * The same where only some causes can be brought about yet: whether one of the others would show it is not drawn for
     * phones without it.
     *
     * @param broughtAbout tells those causes, by id
     */
    public Showing showing(String observation, Predicate<String> broughtAbout) {
        SplittableRandom random = new SplittableRandom(seed * 31 + observation.hashCode());
        Map<String, BitSet> by = new LinkedHashMap<>();
        BitSet otherwise = new BitSet(count);
        String name = Names.observation(observation);
        NoisyOr or = noisyOr(name);
        boolean kept = or.links().stream().anyMatch(l -> l.parent().equals(Names.otherwise(observation)));
        String whole = kept ? Names.otherwise(observation) : name;
        Map<String, BitSet> active = active(noisyOr(whole), columns.get(whole), otherwise, random);
        for (Parents.Parent parent : parents.of(observation)) {
            if (!parent.cause()) {
                otherwise.or(active.getOrDefault(Names.history(parent.id()), new BitSet()));
                continue;
            }
            BitSet there = with(parent.id());
            BitSet untouched = active.get(Names.cause(parent.id()));
            BitSet shows = untouched != null ? (BitSet) untouched.clone() : shown(or, parent.id(), observation);
            // Where it is absent it has no draw yet; one is made in case it is brought about.
            shows.and(there);
            if (broughtAbout.test(parent.id())) {
                for (int i = there.nextClearBit(0); i < count; i = there.nextClearBit(i + 1)) {
                    if (random.nextDouble() < parent.strength()) {
                        shows.set(i);
                    }
                }
            }
            by.put(parent.id(), shows);
        }
        return new Showing(by, otherwise);
    }

    /** What a cause that was touched goes on showing. */
    private BitSet shown(NoisyOr or, String cause, String observation) {
        String prefix = Names.showsAnyVersion(cause, observation);
        return or.links().stream()
                .map(Link::parent)
                .filter(p -> p.startsWith(prefix))
                .findFirst()
                .map(p -> (BitSet) column(p).clone())
                .orElseGet(BitSet::new);
    }

    private NoisyOr noisyOr(String name) {
        if (network.variable(name).mechanism() instanceof NoisyOr or) {
            return or;
        }
        throw new IllegalStateException("'" + name + "' is not a noisy-OR");
    }

    /**
     * Which parents make a noisy-OR yes, given whether it is: drawn one after the other, each given that none before it did
     * and that one must.
     */
    private Map<String, BitSet> active(NoisyOr or, @Nullable BitSet so, BitSet leak, SplittableRandom random) {
        double[] none = new double[count];
        Arrays.fill(none, 1 - or.leak());
        for (Link link : or.links()) {
            BitSet there = column(link.parent());
            for (int i = there.nextSetBit(0); i >= 0; i = there.nextSetBit(i + 1)) {
                none[i] *= 1 - link.strength();
            }
        }
        BitSet found = new BitSet(count);
        Map<String, BitSet> active = new HashMap<>();
        for (Link link : or.links()) {
            BitSet there = column(link.parent());
            BitSet own = new BitSet(count);
            for (int i = there.nextSetBit(0); i >= 0; i = there.nextSetBit(i + 1)) {
                if (acts(i, link.strength(), so, none, found, random)) {
                    own.set(i);
                }
            }
            active.put(link.parent(), own);
        }
        for (int i = 0; i < count; i++) {
            boolean must = so != null && so.get(i) && !found.get(i);
            if (must || acts(i, or.leak(), so, none, found, random)) {
                leak.set(i);
            }
        }
        return active;
    }

    /**
     * @param none the chance in each phone that none of those acts that are still to be drawn
     * @param found the phones in which one was drawn that does
     */
    private static boolean acts(
            int phone, double strength, @Nullable BitSet so, double[] none, BitSet found, SplittableRandom random) {
        if (so == null) {
            return random.nextDouble() < strength;
        }
        if (!so.get(phone)) {
            return false;
        }
        double chance = found.get(phone) ? strength : strength / (1 - none[phone]);
        none[phone] = strength < 1 ? none[phone] / (1 - strength) : 0;
        boolean yes = random.nextDouble() < chance;
        if (yes) {
            found.set(phone);
        }
        return yes;
    }
}
