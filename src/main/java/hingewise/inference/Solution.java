package hingewise.inference;

import java.util.BitSet;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.random.RandomGenerator;

/** What follows from one piece of evidence. Immutable; safe for use by several threads. */
public final class Solution {
    private final Solver solver;
    private final Plan plan;
    private final Evidence evidence;
    private final Pass pass;
    private final double logEvidence;

    private final double[] marginals;
    private final Map<String, Double> probabilities;

    Solution(Solver solver, Plan plan, Evidence evidence) {
        this.solver = solver;
        this.plan = plan;
        this.evidence = evidence;
        pass = new Pass(plan, evidence);
        logEvidence = logEvidence(pass, evidence);
        marginals = pass.down();
        probabilities = Collections.unmodifiableMap(posteriors(pass, marginals));
    }

    static double logEvidence(Pass pass, Evidence evidence) {
        double log = pass.up();
        if (!(log > Double.NEGATIVE_INFINITY)) {
            throw new ImpossibleEvidenceException("the evidence has probability 0 under the network, so nothing follows"
                    + " from it: " + evidence.findings().keySet());
        }
        return log;
    }

    private Map<String, Double> posteriors(Pass of, double[] from) {
        Map<String, Double> all = new LinkedHashMap<>();
        for (Variable variable : plan.model.problem.kept()) {
            all.put(variable.name(), posterior(of, from, plan.model.problem.indexOf(variable.name())));
        }
        return all;
    }

    private double posterior(Pass of, double[] from, int i) {
        Model model = plan.model;
        return switch (model.problem.roles()[i]) {
            case YES -> 1;
            case NO -> 0;
            case FREE -> of.posterior(from, plan.step[model.variable[i]]);
            case FALLING -> fallingPosterior(of, from, i);
        };
    }

    /**
     * With m0 = the total without the report and m1 = the total with Π q in its place, P(no) = λ0·m1 / (λ1·m0 +
     * (λ0 − λ1)·m1).
     */
    private double fallingPosterior(Pass of, double[] from, int i) {
        int v = plan.step[plan.model.standIn[i]];
        Finding finding =
                evidence.findings().get(plan.model.problem.kept().get(i).name());
        double ifYes = finding == null ? 1 : finding.ifYes();
        double ifNo = finding == null ? 1 : finding.ifNo();
        double silent = plan.weights[2 * v + 1] * from[2 * v + 1];
        double no = ifNo * silent / (ifYes * from[2 * v] + (ifNo - ifYes) * silent);
        return Math.max(0, 1 - no);
    }

    /** Natural logarithm of P(evidence); with weighted findings, of its likelihood. */
    public double logEvidence() {
        return logEvidence;
    }

    /**
     * The chance that a variable is yes given the evidence.
     *
     * @param name any kept variable, or an auxiliary one of {@link Solver#expanded()}
     * @throws IllegalArgumentException when the variable was not kept
     */
    public double probability(String name) {
        Double known = probabilities.get(name);
        if (known != null) {
            return known;
        }
        Integer auxiliary = plan.model.named.get(name);
        if (auxiliary != null) {
            return pass.posterior(marginals, plan.step[auxiliary]);
        }
        Plan full = solver.fullPlan();
        Integer elsewhere = full.model.named.get(name);
        if (elsewhere == null) {
            throw new IllegalArgumentException(
                    "'" + name + "' is not among the variables kept for this question; add it"
                            + " to the wanted or the observed variables");
        }
        Pass all = new Pass(full, evidence);
        all.up();
        return all.posterior(all.down(), full.step[elsewhere]);
    }

    /**
     * Natural logarithm of P(yes) : P(no) given the evidence. Keeps its digits where the chance itself rounds to 1.
     *
     * @param name as for {@link #probability}
     * @throws IllegalArgumentException when the variable was not kept
     */
    public double logOdds(String name) {
        if (probabilities.containsKey(name)) {
            int i = plan.model.problem.indexOf(name);
            if (plan.model.problem.roles()[i] == Role.FREE) {
                return pass.logOdds(marginals, plan.step[plan.model.variable[i]]);
            }
        }
        double p = probability(name);
        return Math.log(p) - Math.log1p(-p);
    }

    /** The chance of yes of every kept variable of the network, parents before children; cannot be changed. */
    public Map<String, Double> probabilities() {
        return probabilities;
    }

    /**
     * The most probable assignments of some variables, everything else summed out, most probable first.
     *
     * @param over kept variables; observed ones must have been named as wanted too
     * @param count how many, at least 1; fewer are returned when fewer are possible
     */
    public List<Combination> mostProbable(Set<String> over, int count) {
        if (count < 1) {
            throw new IllegalArgumentException("asked for " + count + " combinations; at least 1 is needed");
        }
        return new CombinationSearch(pass, marginals, logEvidence, evidence, over).best(count);
    }

    /**
     * Joint draws of all kept variables given the evidence.
     *
     * @param random where the randomness comes from
     * @param count how many draws, at least 0
     */
    public List<Map<String, Boolean>> sample(RandomGenerator random, int count) {
        return new Sampler(plan, pass, evidence).draw(random, count);
    }

    /**
     * Joint draws as {@link #sample} makes them, variable by variable: for each kept variable the draws in which it is yes.
     *
     * @param random where the randomness comes from
     * @param count how many draws, at least 0
     */
    public Map<String, BitSet> columns(RandomGenerator random, int count) {
        return new Sampler(plan, pass, evidence).columns(random, count);
    }

    /**
     * What looking at a further variable would show and teach. "No" is one more pass, in which the links fold into
     * their causes; "yes" is the complement, so its posteriors carry an error of about 1e-15 / P(yes): below 1e-9
     * wherever the leak is at least 1e-5.
     *
     * @param unobserved a noisy-OR outside the kept variables, all of whose parents are kept
     * @throws IllegalArgumentException when it is anything else
     */
    public Outlook outlook(String unobserved) {
        if (!(solver.network().variable(unobserved).mechanism() instanceof NoisyOr or)) {
            throw new IllegalArgumentException("'" + unobserved + "' is not a noisy-OR, so it has no outlook");
        }
        if (probabilities.containsKey(unobserved)) {
            throw new IllegalArgumentException(
                    "'" + unobserved + "' is already part of the question; ask its probability");
        }
        Problem problem = plan.model.problem;
        Pass no = new Pass(pass);
        double log = Math.log1p(-or.leak());
        for (Link link : or.links()) {
            int parent = problem.indexOf(link.parent());
            if (problem.roles()[parent] == Role.YES) {
                log += Math.log1p(-link.strength());
            } else if (problem.roles()[parent] == Role.FREE) {
                no.multiplyWeights(plan.step[plan.model.variable[parent]], 1, 1 - link.strength());
            }
        }
        double share = Math.min(1, Math.exp(log + no.up() - logEvidence));
        return outlook(share, no);
    }

    private Outlook outlook(double share, Pass no) {
        Map<String, Double> ifYes = new LinkedHashMap<>();
        Map<String, Double> ifNo = new LinkedHashMap<>();
        double[] found = share > 0 ? no.down() : new double[0];
        for (String name : solver.wanted()) {
            double now = probability(name);
            double lower = share > 0 ? posterior(no, found, plan.model.problem.indexOf(name)) : now;
            ifNo.put(name, lower);
            ifYes.put(name, share < 1 ? Math.min(1, Math.max(0, (now - share * lower) / (1 - share))) : now);
        }
        return new Outlook(1 - share, Collections.unmodifiableMap(ifYes), Collections.unmodifiableMap(ifNo));
    }
}
