package hingewise.planning;

import hingewise.costing.RepairCosts;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.RankedCause;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * What deciding now is expected to cost, cause by cause: either it is repaired, which is paid whether or not it was
 * broken, or left, and then with chance p the repair is still to do and the failure is paid besides. A cause that no
 * part repairs can only be left or tried.
 */
final class ExpectedLoss {
    /** What nothing recorded speaks for is looked at in the round of functions, not in search of the complaint. */
    private static final double RAISED = 1.25;

    private final double failure;
    private final Map<String, Double> repair = new LinkedHashMap<>();
    private final Set<String> background = new HashSet<>();

    ExpectedLoss(Diagnosis diagnosis, RepairCosts costs) {
        this.failure = costs.priceOfFailure().getAmount().doubleValue();
        boolean complaint = diagnosis.causes().stream().anyMatch(ExpectedLoss::raised);
        for (RankedCause ranked : diagnosis.causes()) {
            if (complaint && !raised(ranked)) {
                background.add(ranked.cause().id());
            }
            repair.put(
                    ranked.cause().id(),
                    costs.toRenew(ranked.cause().component())
                            .map(m -> m.getAmount().doubleValue())
                            .orElse(Double.POSITIVE_INFINITY));
        }
    }

    private static boolean raised(RankedCause cause) {
        return cause.probability() > RAISED * cause.prior();
    }

    double of(Map<String, Double> chances) {
        double loss = 0;
        for (Map.Entry<String, Double> e : chances.entrySet()) {
            if (background.contains(e.getKey())) {
                continue;
            }
            double p = e.getValue();
            double toRepair = repair.getOrDefault(e.getKey(), Double.POSITIVE_INFINITY);
            loss += Double.isInfinite(toRepair) ? p * failure : Math.min(toRepair, p * (toRepair + failure));
        }
        return loss;
    }

    /** What it costs to bring a cause about. */
    double ofDamage(String cause) {
        double toRepair = repair.getOrDefault(cause, Double.POSITIVE_INFINITY);
        return Double.isInfinite(toRepair) ? failure : toRepair;
    }
}
