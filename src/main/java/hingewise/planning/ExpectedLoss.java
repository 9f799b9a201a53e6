package hingewise.planning;

import hingewise.costing.RepairCosts;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.RankedCause;
import hingewise.rulebook.Cause;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What deciding now is expected to cost, cause by cause: either it is repaired, which is paid whether or not it was
 * broken, or left, and then with chance p the repair is still to do and the failure is paid besides. A cause that no
 * part repairs can only be left or tried. While there is a complaint only causes that may show it count: the rest is
 * looked at in the round of functions.
 */
final class ExpectedLoss {
    private final double failure;
    private final Map<String, Double> repair = new LinkedHashMap<>();
    private final Set<String> background = new HashSet<>();

    ExpectedLoss(Diagnosis diagnosis, RepairCosts costs) {
        this.failure = costs.priceOfFailure().getAmount().doubleValue();
        Set<String> complaints = diagnosis.readings().latest().entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
        for (RankedCause ranked : diagnosis.causes()) {
            if (!complaints.isEmpty() && !mayShow(ranked.cause(), complaints)) {
                background.add(ranked.cause().id());
            }
            repair.put(
                    ranked.cause().id(),
                    costs.toRenew(ranked.cause().component())
                            .map(m -> m.getAmount().doubleValue())
                            .orElse(Double.POSITIVE_INFINITY));
        }
    }

    private static boolean mayShow(Cause cause, Set<String> complaints) {
        return cause.signs().stream().anyMatch(s -> complaints.contains(s.observation()));
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

    /** How undecided the causes are, in bits summed over them (Shannon's entropy of each). */
    double bits(Map<String, Double> chances) {
        return chances.entrySet().stream()
                .filter(e -> !background.contains(e.getKey()))
                .mapToDouble(e -> entropy(e.getValue()) + entropy(1 - e.getValue()))
                .sum();
    }

    private static double entropy(double p) {
        return p <= 0 ? 0 : -p * Math.log(p) / Math.log(2);
    }

    /** What it costs to bring a cause about. */
    double ofDamage(String cause) {
        double toRepair = repair.getOrDefault(cause, Double.POSITIVE_INFINITY);
        return Double.isInfinite(toRepair) ? failure : toRepair;
    }
}
