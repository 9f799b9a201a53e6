package hingewise.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Small problems by chance: 2 to 6 causes, one or several at a time; 3 to 8 acts, tries that cure several causes and tests
 * that err; two gates, side by side or one behind the other; acts and openings that harm; giving up, a return while
 * unopened, repairs.
 */
final class RandomModels {
    private final SplittableRandom random;

    RandomModels(long seed) {
        this.random = new SplittableRandom(seed);
    }

    private double between(double from, double to) {
        return from + random.nextDouble() * (to - from);
    }

    private boolean chance(double p) {
        return random.nextDouble() < p;
    }

    Small next() {
        int causes = 2 + random.nextInt(5);
        int acts = 3 + random.nextInt(6);
        double[] works = new double[causes];
        java.util.Arrays.fill(works, 1);
        List<Small.Sign> signs = new ArrayList<>(List.of(new Small.Sign(0, works)));
        List<Gate> gates = List.of(
                new Gate(Gate.NONE, between(2, 30), harms(causes, .25, .1), chance(.7)),
                new Gate(chance(.4) ? 0 : Gate.NONE, between(2, 30), harms(causes, .25, .1), chance(.7)));
        List<Act> all = new ArrayList<>();
        for (int a = 0; a < acts; a++) {
            int gate = random.nextInt(3) - 1;
            all.add(chance(.6) ? attempt(a, gate, causes) : test(a, gate, causes, signs));
        }
        List<Double> leftover = new ArrayList<>();
        for (int c = 0; c < causes; c++) {
            leftover.add(chance(.5) ? 0.0 : between(0, 60));
        }
        Problem problem =
                new Problem((1L << causes) - 1, between(60, 600), leftover, signs.size(), gates, all, endings(causes));
        return new Small(problem, signs, belief(causes));
    }

    private List<Harm> harms(int causes, double chance, double most) {
        return chance(chance) ? List.of(new Harm(random.nextInt(causes), between(.005, most), 0)) : List.of();
    }

    private Act attempt(int a, int gate, int causes) {
        List<Cure> cures = new ArrayList<>();
        int first = random.nextInt(causes);
        int count = 1 + random.nextInt(Math.min(3, causes));
        for (int i = 0; i < count; i++) {
            cures.add(new Cure((first + i) % causes, chance(.3) ? 1 : between(.3, .98)));
        }
        Look look = chance(.75) ? new Look(0, 1, 0, a) : new Look(0, between(.85, .99), between(.01, .1), a);
        return new Act("try " + a, between(2, 60), gate, List.of(), List.of(look), cures, harms(causes, .25, .1));
    }

    private Act test(int a, int gate, int causes, List<Small.Sign> signs) {
        double[] strengths = new double[causes];
        for (int c = 0; c < causes; c++) {
            strengths[c] = chance(.5) ? between(.3, .99) : 0;
        }
        signs.add(new Small.Sign(between(.001, .1), strengths));
        Look look = new Look(signs.size() - 1, between(.8, .99), between(.01, .2), a);
        return new Act(
                "test " + a, between(.5, 15), gate, List.of(), List.of(look), List.of(), harms(causes, .15, .05));
    }

    private List<Ending> endings(int causes) {
        List<Ending> endings = new ArrayList<>(List.of(new Ending("leave", 0, 0, 0, false)));
        endings.add(Ending.flat("service", between(100, 600), chance(.2)));
        if (chance(.4)) {
            endings.add(Ending.flat("return", between(30, 200), true));
        }
        int repairs = random.nextInt(5);
        for (int r = 0; r < repairs; r++) {
            long covers = random.nextInt(1, 1 << causes);
            long opens = random.nextInt(4);
            endings.add(new Ending("repair " + covers, Long.bitCount(covers) * between(20, 120), opens, covers, false));
        }
        return endings;
    }

    /** One fault, or independent ones of which there is at least one; sometimes possibly none. */
    private double[] belief(int causes) {
        double[] belief = new double[1 << causes];
        double[] p = new double[causes];
        for (int c = 0; c < causes; c++) {
            p[c] = between(.05, .5);
        }
        boolean one = chance(.4);
        boolean none = chance(.2);
        double total = 0;
        for (int x = 0; x < belief.length; x++) {
            belief[x] = 1;
            for (int c = 0; c < causes; c++) {
                belief[x] *= (x >>> c & 1) != 0 ? p[c] : 1 - p[c];
            }
            boolean possible = one ? Integer.bitCount(x) == 1 : x != 0 || none;
            belief[x] = possible ? belief[x] : 0;
            total += belief[x];
        }
        for (int x = 0; x < belief.length; x++) {
            belief[x] /= total;
        }
        return belief;
    }
}
