package hingewise.oracle;

import hingewise.inference.Evidence;
import hingewise.inference.Link;
import hingewise.inference.Network;
import hingewise.inference.NoisyOr;
import hingewise.inference.Table;
import hingewise.inference.Variable;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/** Seeded networks and evidence of several shapes. */
public final class RandomNetworks {
    private RandomNetworks() {}

    /**
     * A network with the evidence to solve it for.
     *
     * @param causes names of the causes
     * @param findings names of the variables that only depend on causes, observed or not
     */
    public record Puzzle(Network network, Evidence evidence, List<String> causes, List<String> findings) {}

    /** How findings choose their parents. */
    public enum Shape {
        RANDOM,
        CLUSTERED
    }

    /**
     * Causes over histories, findings over causes.
     *
     * @param positives findings seen, the first ones
     * @param negatives findings seen absent, the next ones
     * @param weighted whether the findings are reports with errors instead of certain
     */
    public record Layers(
            Shape shape,
            int histories,
            int causes,
            int findings,
            int fewestParents,
            int mostParents,
            int positives,
            int negatives,
            boolean weighted,
            double smallestLeak) {}

    /** Builds a layered network and evidence on it. */
    public static Puzzle layered(Layers layers, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Variable> variables = new ArrayList<>();
        for (int h = 0; h < layers.histories; h++) {
            variables.add(new Variable("h" + h, NoisyOr.root(random.nextDouble(.05, .5))));
        }
        List<String> causes = new ArrayList<>();
        for (int c = 0; c < layers.causes; c++) {
            List<Link> links = new ArrayList<>();
            for (int h = 0; h < layers.histories; h++) {
                if (random.nextDouble() * layers.histories < 1.5) {
                    links.add(new Link("h" + h, random.nextDouble(.01, .4)));
                }
            }
            variables.add(new Variable("c" + c, new NoisyOr(.002 * Math.pow(30, random.nextDouble()), links)));
            causes.add("c" + c);
        }
        List<String> findings = new ArrayList<>();
        for (int f = 0; f < layers.findings; f++) {
            List<Link> links = new ArrayList<>();
            for (int parent : parents(layers, random)) {
                links.add(new Link("c" + parent, random.nextDouble(.1, .99)));
            }
            double leak = layers.smallestLeak * Math.pow(100, random.nextDouble());
            variables.add(new Variable("f" + f, new NoisyOr(leak, links)));
            findings.add("f" + f);
        }
        return new Puzzle(Network.of(variables), evidence(layers, random), causes, findings);
    }

    private static Set<Integer> parents(Layers layers, SplittableRandom random) {
        int count = random.nextInt(layers.fewestParents, layers.mostParents + 1);
        int cluster = random.nextInt(Math.max(1, layers.causes / 8)) * 8;
        Set<Integer> parents = new LinkedHashSet<>();
        while (parents.size() < Math.min(count, layers.causes)) {
            boolean inside = layers.shape == Shape.CLUSTERED && random.nextDouble() < .9;
            int width = Math.max(8, layers.mostParents + 2);
            parents.add(inside ? (cluster + random.nextInt(width)) % layers.causes : random.nextInt(layers.causes));
        }
        return parents;
    }

    private static Evidence evidence(Layers layers, SplittableRandom random) {
        Evidence evidence = Evidence.none();
        for (int f = 0; f < layers.positives + layers.negatives; f++) {
            boolean positive = f < layers.positives;
            double right = random.nextDouble(.6, .99);
            double wrong = random.nextDouble(.01, .3);
            if (!layers.weighted) {
                evidence = positive ? evidence.yes("f" + f) : evidence.no("f" + f);
            } else if (positive) {
                evidence = evidence.weighted("f" + f, right, wrong);
            } else {
                evidence = evidence.weighted("f" + f, 1 - right, 1 - wrong);
            }
        }
        return evidence;
    }

    /** A network without layers: any variable may depend on earlier ones by a noisy-OR or a table; mixed evidence. */
    public static Puzzle tangled(int size, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Variable> variables = new ArrayList<>();
        List<String> names = new ArrayList<>();
        Evidence evidence = Evidence.none();
        for (int v = 0; v < size; v++) {
            Set<String> parents = new LinkedHashSet<>();
            int count = Math.min(v, random.nextInt(5));
            while (parents.size() < count) {
                parents.add("v" + random.nextInt(v));
            }
            String name = "v" + v;
            names.add(name);
            variables.add(random.nextInt(3) == 0 ? table(name, parents, random) : or(name, parents, random));
            switch (random.nextInt(8)) {
                case 0 -> evidence = evidence.yes(name);
                case 1 -> evidence = evidence.no(name);
                case 2, 3 ->
                    evidence = evidence.weighted(name, random.nextDouble(.01, .99), random.nextDouble(.01, .99));
                default -> {}
            }
        }
        return new Puzzle(Network.of(variables), evidence, names, List.of());
    }

    private static Variable table(String name, Set<String> parents, SplittableRandom random) {
        double[] yes = random.doubles(1L << parents.size(), .01, .99).toArray();
        return new Variable(name, Table.of(List.copyOf(parents), yes));
    }

    private static Variable or(String name, Set<String> parents, SplittableRandom random) {
        List<Link> links = new ArrayList<>();
        parents.forEach(parent -> links.add(new Link(parent, random.nextDouble(.01, .99))));
        return new Variable(name, new NoisyOr(random.nextDouble(.001, .5), links));
    }
}
