package hingewise.planning;

import hingewise.costing.RepairCosts;
import hingewise.costing.Terms;
import hingewise.decision.Planner;
import hingewise.decision.Policy;
import hingewise.decision.Problem;
import hingewise.diagnosis.Diagnosis;
import hingewise.rulebook.Access;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.List;

/**
 * What is done with a phone that is here, and after each report what then: the bench sheet's policy. Of a phone that is only
 * listed it is the policy that would be followed on arrival, as far as it is known now.
 *
 * @param problem amounts in the shop's currency
 * @param causes what the problem's causes stand for, by number
 * @param signs what its signs stand for
 * @param acts what its acts stand for
 * @param gates what its gates stand for
 */
public record BenchPolicy(
        Problem problem,
        Policy policy,
        List<Cause> causes,
        List<Observation> signs,
        List<Confirmation> acts,
        List<Access> gates) {
    public BenchPolicy {
        causes = List.copyOf(causes);
        signs = List.copyOf(signs);
        acts = List.copyOf(acts);
        gates = List.copyOf(gates);
    }

    /**
     * The policy for a case.
     *
     * @param terms what the seller gives back as long as the phone is unopened counts
     */
    public static BenchPolicy of(RuleBook rules, RepairCosts costs, Diagnosis diagnosis, Terms terms) {
        CaseProblem problem = new CaseProblem(
                rules,
                costs,
                diagnosis,
                diagnosis.possiblePhones(Planner.WORLDS, Planning.PHONES),
                Moments.here(diagnosis),
                terms,
                c -> true,
                Concern.of(diagnosis));
        return new BenchPolicy(
                problem.problem(),
                Planner.policy(problem.problem(), problem.worlds(), 0, Planning.THROWS, Sheet.LEAST_CHANCE),
                problem.counted(),
                problem.signs(),
                problem.confirmations(),
                problem.gates());
    }
}
