package hingewise.offer;

import hingewise.decision.Act;
import hingewise.decision.Cure;
import hingewise.decision.Gate;
import hingewise.decision.Harm;
import hingewise.decision.Look;
import hingewise.decision.Need;
import hingewise.decision.Policy;
import hingewise.decision.Problem;
import hingewise.diagnosis.PossiblePhones;
import hingewise.planning.BenchPolicy;
import hingewise.rulebook.EvidenceKind;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What is known at the ends of a policy if it is followed in all ways a phone may be. The policy goes by expected amounts
 * and by fewer causes than an offer does, so that deciding may be worth more before its end; there it is left.
 *
 * <p>A first look at a sign changes the chances of the ways by how likely its report is in each. Of a sign that is looked
 * at more than once, that is asked for before something else or that was answered before, it is drawn in each way whether
 * it shows and how it reads, so that what was seen is seen again. Whether a try cures and whether opening harms is drawn in
 * each way too; the cost of each act and opening is spent. All that is too rare to be planned after an act is one outcome:
 * there the report is not gone by.
 */
final class Following {
    private final BenchPolicy guide;
    private final Problem problem;
    private final Bench now;
    private final double minor;
    private final Stopping stopping;
    private final Set<Integer> drawn = new HashSet<>();
    private final List<Bench> benches = new ArrayList<>();
    private final Map<List<Integer>, Integer> numbers = new HashMap<>();

    /** @param decimals of the currency */
    Following(BenchPolicy guide, Bench now, int decimals, Stopping stopping) {
        this.guide = guide;
        this.problem = guide.problem();
        this.now = now;
        this.minor = Math.pow(10, decimals);
        this.stopping = stopping;
        notDrawn(guide.policy(), new HashSet<>());
    }

    /** What deciding is worth. */
    interface Stopping {
        /**
         * Sum of chance times what the best choice brings, in minor units.
         *
         * @param bench how far work has gone; the same number stands for the same
         */
        double value(Knowledge.Outcome known, Bench bench);
    }

    /** What is known if the policy is followed after looks on the desk. What both look at is drawn. */
    Knowledge after(List<Looks.Look> desk) {
        List<Looks.Look> looks = desk.stream()
                .map(l -> sign(l.observation().id()).map(s -> drawn(l, s)).orElse(l))
                .toList();
        Knowledge before = Looks.knowledge(now.ways().weights(), looks);
        Followed all = Followed.NOWHERE;
        for (Knowledge.Outcome known : before.outcomes()) {
            all = all.and(go(
                    guide.policy(),
                    new Spot(known.chances(), now, Knowledge.UNTOUCHED, List.of(), known.spent() / minor)));
        }
        List<String> sheet = labels(all.done()).stream()
                .map(l -> before.looks().contains(l) ? l + " (again)" : l)
                .toList();
        return new Knowledge(all.outcomes(), before.looks(), sheet, benches);
    }

    private Looks.Look drawn(Looks.Look look, int sign) {
        drawn.add(sign);
        PossiblePhones.Look reads = PossiblePhones.look(look.observation(), EvidenceKind.LOOK);
        return look.reading(asDrawn(new Look(sign, reads.ifSo(), reads.ifNot(), 0), now.ways()));
    }

    private Optional<Integer> sign(String observation) {
        return IntStream.range(0, guide.signs().size())
                .filter(s -> guide.signs().get(s).id().equals(observation))
                .boxed()
                .findFirst();
    }

    private List<String> labels(List<Done> done) {
        Map<Integer, Double> chances = new LinkedHashMap<>();
        done.forEach(d -> chances.merge(d.act(), d.chance(), Double::sum));
        return chances.entrySet().stream()
                .sorted(Map.Entry.<Integer, Double>comparingByValue(Comparator.reverseOrder()))
                .map(e -> guide.acts().get(e.getKey()).label())
                .toList();
    }

    /** An act that is done with this chance. */
    private record Done(int act, double chance) {}

    /** What following it from somewhere leads to, and what it is worth. */
    private record Followed(List<Knowledge.Outcome> outcomes, List<Done> done, double value) {
        static final Followed NOWHERE = new Followed(List.of(), List.of(), 0);

        Followed and(Followed other) {
            return new Followed(
                    Stream.concat(outcomes.stream(), other.outcomes.stream()).toList(),
                    Stream.concat(done.stream(), other.done.stream()).toList(),
                    value + other.value);
        }
    }

    /**
     * How far it has got.
     *
     * @param touched the acts that did something to the phone, in order
     */
    private record Spot(double[] chances, Bench bench, int number, List<Integer> touched, double spent) {
        Spot with(double[] others, double spentByNow) {
            return new Spot(others, bench, number, touched, spentByNow);
        }
    }

    /** Finds the signs that cannot be weighed, seen on the way to here. */
    private void notDrawn(Policy policy, Set<Integer> seen) {
        if (policy instanceof Policy.Do act) {
            Set<Integer> further = new HashSet<>(seen);
            problem.acts()
                    .get(act.act())
                    .needs()
                    .forEach(n -> drawn.add(n.look().sign()));
            for (Look look : looks(act)) {
                if (!further.add(look.sign())
                        || now.ways().shows(guide.signs().get(look.sign())).isEmpty()) {
                    drawn.add(look.sign());
                }
            }
            act.branches().forEach(b -> notDrawn(b.next(), further));
        }
    }

    /** Of many looks the policy goes by some. */
    private List<Look> looks(Policy.Do act) {
        Set<Integer> reported = new HashSet<>();
        act.branches().forEach(b -> b.reported().ifPresent(r -> reported.addAll(r.keySet())));
        return problem.acts().get(act.act()).looks().stream()
                .filter(l -> reported.contains(l.sign()))
                .toList();
    }

    private Followed go(Policy policy, Spot spot) {
        Followed decided = decided(spot);
        if (!(policy instanceof Policy.Do act) || decided.outcomes().isEmpty()) {
            return decided;
        }
        Followed on = on(act, spot);
        return on.value() > decided.value() ? on : decided;
    }

    private Followed decided(Spot spot) {
        if (total(spot.chances()) <= 0) {
            return Followed.NOWHERE;
        }
        Knowledge.Outcome known =
                new Knowledge.Outcome(spot.chances(), Math.round(spot.spent() * minor), spot.number());
        return new Followed(List.of(known), List.of(), stopping.value(known, spot.bench()));
    }

    private Followed on(Policy.Do step, Spot spot) {
        Act act = problem.acts().get(step.act());
        double asking = act.needs().stream().mapToDouble(Need::cost).sum();
        BitSet met = met(act, spot.bench().ways());
        Spot left = spot.with(within(spot.chances(), met, false), spot.spent() + asking);
        Followed on = next(step, Optional.empty()).map(p -> go(p, left)).orElseGet(() -> decided(left));
        Spot after = after(step, act, spot, within(spot.chances(), met, true), asking);
        List<Look> looks = looks(step);
        List<double[]> yes =
                looks.stream().map(l -> yes(l, after.bench().ways())).toList();
        double[] rest = new double[spot.chances().length];
        for (int report = 0; report < 1 << looks.size(); report++) {
            Map<Integer, Boolean> said = new LinkedHashMap<>();
            double[] chances = after.chances().clone();
            for (int l = 0; l < looks.size(); l++) {
                boolean so = (report >> l & 1) == 1;
                said.put(looks.get(l).sign(), so);
                for (int w = 0; w < chances.length; w++) {
                    chances[w] *= so ? yes.get(l)[w] : 1 - yes.get(l)[w];
                }
            }
            Optional<Policy> next = next(step, Optional.of(said));
            if (next.isPresent()) {
                on = on.and(go(next.get(), after.with(chances, after.spent())));
            } else {
                add(rest, chances);
            }
        }
        Followed done = new Followed(List.of(), List.of(new Done(step.act(), total(spot.chances()))), 0);
        return done.and(on).and(decided(after.with(rest, after.spent())));
    }

    /** What is planned after a report; empty if nothing is. */
    private static Optional<Policy> next(Policy.Do step, Optional<Map<Integer, Boolean>> reported) {
        return step.branches().stream()
                .filter(b -> b.reported().equals(reported))
                .map(Policy.Branch::next)
                .filter(p -> !(p instanceof Policy.Unplanned))
                .findFirst();
    }

    private Spot after(Policy.Do step, Act act, Spot spot, double[] chances, double asking) {
        double spent = spot.spent() + asking + act.cost() + problem.opening(step.opens());
        if (step.opens() == 0 && act.cures().isEmpty() && act.harms().isEmpty()) {
            return new Spot(chances, spot.bench(), spot.number(), spot.touched(), spent);
        }
        List<Integer> touched = new ArrayList<>(spot.touched());
        touched.add(step.act());
        int number = numbers.computeIfAbsent(touched, t -> {
            benches.add(touch(step, act, spot.bench()));
            return benches.size() - 1;
        });
        return new Spot(chances, benches.get(number), number, touched, spent);
    }

    /** Opens what is in the way, from the outside in, and does the act. */
    private Bench touch(Policy.Do step, Act act, Bench before) {
        Set<String> open = new LinkedHashSet<>(before.open());
        Ways ways = before.ways();
        for (int gate : inwards(act.gate())) {
            if ((step.opens() >>> gate & 1) == 1) {
                String id = guide.gates().get(gate).id();
                open.add(id);
                ways = ways.with(harmed(problem.gates().get(gate).harms(), ways, "opening " + id, Map.of()));
            }
        }
        String id = guide.acts().get(step.act()).id();
        Map<String, BitSet> cured = new HashMap<>();
        for (Cure cure : act.cures()) {
            String cause = guide.causes().get(cure.cause()).id();
            BitSet left = ways.withCause(cause);
            left.andNot(ways.happens(Leftovers.cures(id, cause), cure.chance()));
            cured.put(cause, left);
        }
        Map<String, BitSet> after = new HashMap<>(cured);
        after.putAll(harmed(act.harms(), ways, id, cured));
        Set<String> tried = new LinkedHashSet<>(before.tried());
        tried.add(id);
        return new Bench(ways.with(after), open, before.opened() || step.opens() != 0, tried);
    }

    private List<Integer> inwards(int gate) {
        List<Integer> path = new ArrayList<>();
        for (int g = gate; g != Gate.NONE; g = problem.gates().get(g).parent()) {
            path.add(0, g);
        }
        return path;
    }

    /** What was there before and is cured does not come back in the same act. */
    private Map<String, BitSet> harmed(List<Harm> harms, Ways before, String by, Map<String, BitSet> cured) {
        Map<String, BitSet> after = new HashMap<>();
        for (Harm harm : harms) {
            String cause = guide.causes().get(harm.cause()).id();
            BitSet there = before.withCause(cause);
            String where = harm.given() == 0 ? "" : " with any of " + harm.given();
            BitSet comes = before.happens(by + " brings about " + cause + where, harm.chance());
            comes.andNot(there);
            if (harm.given() != 0) {
                comes.and(any(harm.given(), before));
            }
            comes.or(after.getOrDefault(cause, cured.getOrDefault(cause, there)));
            after.put(cause, comes);
        }
        return after;
    }

    private BitSet any(long causes, Ways ways) {
        BitSet any = new BitSet();
        for (long rest = causes; rest != 0; rest &= rest - 1) {
            any.or(ways.withCause(
                    guide.causes().get(Long.numberOfTrailingZeros(rest)).id()));
        }
        return any;
    }

    private BitSet met(Act act, Ways ways) {
        BitSet met = new BitSet();
        met.set(0, ways.count());
        for (Need need : act.needs()) {
            BitSet reported = reported(need.look(), ways);
            if (need.answer()) {
                met.and(reported);
            } else {
                met.andNot(reported);
            }
        }
        return met;
    }

    /** The chance that a look reports its sign, by way. */
    private double[] yes(Look look, Ways ways) {
        return drawn.contains(look.sign())
                ? asDrawn(look, ways)
                : ways.reports(guide.signs().get(look.sign()), new PossiblePhones.Look(look.ifShown(), look.ifNot()))
                        .orElseThrow();
    }

    private double[] asDrawn(Look look, Ways ways) {
        BitSet reported = reported(look, ways);
        return IntStream.range(0, ways.count())
                .mapToDouble(w -> reported.get(w) ? 1 : 0)
                .toArray();
    }

    /** The ways in which a look reports its sign. */
    private BitSet reported(Look look, Ways ways) {
        String id = guide.signs().get(look.sign()).id();
        String reading = id + " read " + look.ifShown() + " " + look.ifNot() + " " + look.reading();
        BitSet showing = ways.showing(id);
        BitSet reported = ways.happens(reading + " where it shows", look.ifShown());
        reported.and(showing);
        BitSet not = ways.happens(reading + " where it does not", look.ifNot());
        not.andNot(showing);
        reported.or(not);
        return reported;
    }

    private static double[] within(double[] chances, BitSet ways, boolean in) {
        double[] within = chances.clone();
        for (int w = 0; w < within.length; w++) {
            within[w] = ways.get(w) == in ? within[w] : 0;
        }
        return within;
    }

    private static void add(double[] sum, double[] more) {
        for (int w = 0; w < sum.length; w++) {
            sum[w] += more[w];
        }
    }

    private static double total(double[] chances) {
        double total = 0;
        for (double chance : chances) {
            total += chance;
        }
        return total;
    }
}
