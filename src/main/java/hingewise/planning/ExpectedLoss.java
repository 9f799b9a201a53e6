package hingewise.planning;

import hingewise.costing.RepairCosts;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.RankedCause;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What deciding now is expected to cost, cause by cause: either it is repaired, which is paid whether or not it was
 * broken, or left, and fails with chance p. A cause that no part repairs can only be left or tried.
 */
final class ExpectedLoss {
    private final double failure;
    private final Map<String, Double> repair = new LinkedHashMap<>();

    ExpectedLoss(Diagnosis diagnosis, RepairCosts costs) {
        this.failure = costs.priceOfFailure().getAmount().doubleValue();
        for (RankedCause ranked : diagnosis.causes()) {
            repair.put(
                    ranked.cause().id(),
                    costs.toRenew(ranked.cause().component())
                            .map(m -> m.getAmount().doubleValue())
                            .orElse(Double.POSITIVE_INFINITY));
        }
    }

    double of(Map<String, Double> chances) {
        double loss = 0;
        for (Map.Entry<String, Double> e : chances.entrySet()) {
            double p = e.getValue();
            loss += Math.min(repair.getOrDefault(e.getKey(), Double.POSITIVE_INFINITY), failure * p);
        }
        return loss;
    }

    /** What it costs to bring a cause about. */
    double ofDamage(String cause) {
        double toRepair = repair.getOrDefault(cause, Double.POSITIVE_INFINITY);
        return Double.isInfinite(toRepair) ? failure : toRepair;
    }
}
