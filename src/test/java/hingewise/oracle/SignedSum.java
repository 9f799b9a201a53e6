package hingewise.oracle;

import hingewise.inference.Evidence;
import hingewise.inference.Finding;
import hingewise.inference.Network;
import hingewise.inference.NoisyOr;
import hingewise.inference.Variable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The textbook sum for two-layer noisy-OR networks (Heckerman 1990, A tractable inference algorithm for diagnosing
 * multiple diseases) over all subsets of the positive findings, with alternating signs. In floating point it loses every
 * digit, so it is done in decimals of any length here.
 */
public final class SignedSum {
    private final MathContext digits;
    private final List<BigDecimal> priors = new ArrayList<>();
    private final Map<String, Integer> causes = new HashMap<>();
    private final List<NoisyOr> positives = new ArrayList<>();
    private final List<BigDecimal> start = new ArrayList<>();
    private BigDecimal negativeLeaks = BigDecimal.ONE;
    private final BigDecimal[] sums;

    /** Evidence is certain and only on findings. */
    public SignedSum(Network network, Evidence evidence, int precision) {
        digits = new MathContext(precision);
        for (Variable variable : network.variables()) {
            if (variable.mechanism().parents().isEmpty()) {
                causes.put(variable.name(), priors.size());
                priors.add(new BigDecimal(((NoisyOr) variable.mechanism()).leak()));
                start.add(BigDecimal.ONE);
            }
        }
        evidence.findings()
                .forEach(
                        (name, finding) -> sort((NoisyOr) network.variable(name).mechanism(), finding));
        sums = new BigDecimal[priors.size() + 1];
        java.util.Arrays.fill(sums, BigDecimal.ZERO);
        descend(0, negativeLeaks, start.toArray(BigDecimal[]::new));
    }

    private void sort(NoisyOr or, Finding finding) {
        if (finding.ifNo() == 0) {
            positives.add(or);
        } else {
            negativeLeaks = negativeLeaks.multiply(silent(or.leak()), digits);
            or.links()
                    .forEach(link -> start.set(
                            causes.get(link.parent()),
                            start.get(causes.get(link.parent())).multiply(silent(link.strength()), digits)));
        }
    }

    private static BigDecimal silent(double chance) {
        return BigDecimal.ONE.subtract(new BigDecimal(chance));
    }

    private void descend(int depth, BigDecimal sign, BigDecimal[] kept) {
        if (depth == positives.size()) {
            leaf(sign, kept);
            return;
        }
        descend(depth + 1, sign, kept);
        NoisyOr or = positives.get(depth);
        BigDecimal[] next = kept.clone();
        or.links().forEach(link -> {
            int cause = causes.get(link.parent());
            next[cause] = next[cause].multiply(silent(link.strength()), digits);
        });
        descend(depth + 1, sign.multiply(silent(or.leak()), digits).negate(), next);
    }

    private void leaf(BigDecimal sign, BigDecimal[] kept) {
        int count = kept.length;
        BigDecimal[] yes = new BigDecimal[count];
        BigDecimal[] both = new BigDecimal[count];
        BigDecimal[] before = new BigDecimal[count + 1];
        before[0] = sign;
        for (int c = 0; c < count; c++) {
            yes[c] = priors.get(c).multiply(kept[c], digits);
            both[c] = yes[c].add(BigDecimal.ONE).subtract(priors.get(c), digits);
            before[c + 1] = before[c].multiply(both[c], digits);
        }
        sums[count] = sums[count].add(before[count], digits);
        BigDecimal after = BigDecimal.ONE;
        for (int c = count - 1; c >= 0; c--) {
            sums[c] = sums[c].add(before[c].multiply(after, digits).multiply(yes[c], digits), digits);
            after = after.multiply(both[c], digits);
        }
    }

    /** P(evidence). */
    public BigDecimal evidence() {
        return sums[priors.size()];
    }

    /** Posterior of a cause. */
    public double posterior(String cause) {
        return sums[causes.get(cause)].divide(evidence(), digits).doubleValue();
    }
}
