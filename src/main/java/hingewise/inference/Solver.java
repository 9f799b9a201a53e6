package hingewise.inference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A network made ready for exact inference: what does not bear on the question is dropped, noisy-ORs are divorced into
 * chains of ORs, and a cheap order of summing out is found. The structure is compiled once; {@link #solve} may then be
 * called many times with different numbers. Safe for use by several threads.
 */
public final class Solver {
    /** The most yes/no variables that may have to be considered together; beyond it the solver refuses. */
    public static final int LARGEST_CLIQUE = 22;

    private final Network network;
    private final List<Variable> kept;
    private final Set<String> observable;
    private final Set<String> wanted;
    private final int mostOrders;
    private final Plan plan;
    private final Map<Map<String, Role>, Plan> others = new ConcurrentHashMap<>();

    private Solver(Network network, Set<String> observed, Set<String> wanted, Map<String, Role> roles, int mostOrders) {
        this.network = network;
        this.wanted = Collections.unmodifiableSet(new LinkedHashSet<>(wanted));
        Set<String> all = new LinkedHashSet<>(observed);
        all.addAll(wanted);
        this.observable = Collections.unmodifiableSet(all);
        kept = Problem.relevant(network, all);
        this.mostOrders = mostOrders;
        plan = compile(roles);
    }

    /**
     * Prepares for any evidence on the observed and the wanted variables.
     *
     * @param observed variables that evidence may bear on
     * @param wanted variables whose posteriors, combinations or outlooks will be asked for
     * @throws IllegalArgumentException when a name is unknown
     * @throws CliqueLimitException when an exact answer would need tables over more than {@value #LARGEST_CLIQUE}
     *     variables
     */
    public static Solver of(Network network, Set<String> observed, Set<String> wanted) {
        return new Solver(network, observed, wanted, Map.of(), Ordering.MOST_TRIES);
    }

    /**
     * Prepares as {@link #of(Network, Set, Set)} does, with the first order that comes to hand: for networks solved only a
     * few times, where searching for a better order would cost more than it saves.
     *
     * @throws CliqueLimitException as above, where a longer search might not
     */
    public static Solver forFewSolutions(Network network, Set<String> observed, Set<String> wanted) {
        return new Solver(network, observed, wanted, Map.of(), 1);
    }

    /**
     * Prepares for evidence like the given one, which is often much quicker: certain findings are put into the tables,
     * and reports that speak for "no" need no chain. Other evidence on the same and the wanted variables is solved as well, at the price
     * of compiling again when a finding turns from certain to uncertain or from "no" towards "yes".
     *
     * @throws IllegalArgumentException when a name is unknown
     * @throws CliqueLimitException as above; also {@link #solve} may throw it when it has to compile again
     */
    public static Solver of(Network network, Evidence evidence, Set<String> wanted) {
        Map<String, Role> roles = new HashMap<>();
        evidence.findings().forEach((name, finding) -> {
            boolean mayFall = !wanted.contains(name) && !network.hasChildren(name);
            roles.put(name, Role.of(network.variable(name), finding, mayFall));
        });
        return new Solver(network, evidence.findings().keySet(), wanted, roles, Ordering.MOST_TRIES);
    }

    private Plan compile(Map<String, Role> roles) {
        Ordering ordering = Ordering.search(Problem.of(kept, roles), mostOrders);
        int size = ordering.elimination().largest();
        if (size > LARGEST_CLIQUE) {
            throw new CliqueLimitException(size);
        }
        return new Plan(ordering);
    }

    /** Yes/no variables in the largest clique; the time and memory to solve grow with two to this power. */
    public int largestClique() {
        return plan.largest;
    }

    /** Names of the variables that bear on the question, parents first; the others were dropped. */
    public Set<String> kept() {
        Set<String> names = new LinkedHashSet<>();
        kept.forEach(variable -> names.add(variable.name()));
        return names;
    }

    /**
     * Solves for the evidence. Observed variables it does not mention count as unknown.
     *
     * @throws IllegalArgumentException when it mentions a variable that was announced neither as observed nor as wanted
     * @throws ImpossibleEvidenceException when the evidence has probability 0
     * @throws CliqueLimitException when it is unlike the evidence this solver was made for and cannot be solved exactly
     */
    public Solution solve(Evidence evidence) {
        return new Solution(this, planFor(evidence), evidence);
    }

    /**
     * {@link Solution#logEvidence} of the solution for the evidence, in less time: nothing else is worked out.
     *
     * @throws IllegalArgumentException when it mentions a variable that was announced neither as observed nor as wanted
     * @throws ImpossibleEvidenceException when the evidence has probability 0
     * @throws CliqueLimitException when it is unlike the evidence this solver was made for and cannot be solved exactly
     */
    public double logEvidence(Evidence evidence) {
        return Solution.logEvidence(new Pass(planFor(evidence), evidence), evidence);
    }

    private Plan planFor(Evidence evidence) {
        for (String name : evidence.findings().keySet()) {
            if (!observable.contains(name)) {
                throw new IllegalArgumentException(
                        "'" + name + "' was announced neither as observed nor as wanted when the solver was made");
            }
        }
        Problem problem = plan.model.problem;
        Map<String, Role> roles = new HashMap<>();
        boolean serves = true;
        for (String name : observable) {
            Role role = problem.roles()[problem.indexOf(name)];
            Finding finding = evidence.findings().get(name);
            boolean fits = finding == null ? role.serves(1, 1) : role.serves(finding.ifYes(), finding.ifNo());
            roles.put(name, fits ? role : Role.FREE);
            serves &= fits;
        }
        return serves ? plan : others.computeIfAbsent(Map.copyOf(roles), this::compile);
    }

    /**
     * The network that is solved: what was kept, each noisy-OR with more than one parent divorced into a chain of ORs
     * over auxiliary variables named {@code child.upTo.parent}. It has the same distribution over the kept variables,
     * and every table has at most three variables, declared tables apart.
     */
    public Network expanded() {
        Problem problem = plan.model.problem;
        List<Variable> expanded = new ArrayList<>();
        for (Variable variable : kept) {
            if (variable.mechanism() instanceof NoisyOr or) {
                chain(variable.name(), or.leak(), problem.chained(or, plan.ordering.rank()), expanded);
            } else {
                expanded.add(variable);
            }
        }
        return Network.of(expanded);
    }

    private void chain(String name, double leak, List<Link> links, List<Variable> expanded) {
        if (links.isEmpty()) {
            expanded.add(new Variable(name, Table.of(List.of(), leak)));
        }
        String before = "";
        for (int i = 0; i < links.size(); i++) {
            Link link = links.get(i);
            double s = link.strength();
            Table table = i == 0
                    ? Table.of(List.of(link.parent()), leak, Chances.either(leak, s))
                    : Table.of(List.of(before, link.parent()), 0, s, 1, 1);
            before = i == links.size() - 1
                    ? name
                    : Problem.chainName(
                            name, link.parent(), plan.model.problem.index().keySet());
            expanded.add(new Variable(before, table));
        }
    }

    /** For auxiliary variables that the shorter plan did without: a plan that has every chain, in the same order. */
    Plan fullPlan() {
        return others.computeIfAbsent(Map.of(), none -> {
            Problem problem = plan.model.problem;
            List<Variable> chained = new ArrayList<>();
            for (Variable variable : kept) {
                chained.add(
                        variable.mechanism() instanceof NoisyOr or
                                ? new Variable(
                                        variable.name(),
                                        new NoisyOr(or.leak(), problem.chained(or, plan.ordering.rank())))
                                : variable);
            }
            Ordering ordering =
                    Ordering.of(Problem.of(chained, Map.of()), new int[kept.size()], 0, Double.POSITIVE_INFINITY);
            if (ordering.elimination().largest() > LARGEST_CLIQUE) {
                throw new CliqueLimitException(ordering.elimination().largest());
            }
            return new Plan(ordering);
        });
    }

    /** The network it was made for. */
    public Network network() {
        return network;
    }

    Set<String> wanted() {
        return wanted;
    }
}
