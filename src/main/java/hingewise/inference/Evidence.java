package hingewise.inference;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Everything that is known in one situation: findings on variables, in the order they were added. Immutable. */
public final class Evidence {
    private static final Evidence NONE = new Evidence(Map.of());

    private final Map<String, Finding> findings;

    private Evidence(Map<String, Finding> findings) {
        this.findings = findings;
    }

    /** Nothing is known. */
    public static Evidence none() {
        return NONE;
    }

    /** This and: the variable is yes. */
    public Evidence yes(String name) {
        return and(name, new Hard(true));
    }

    /** This and: the variable is no. */
    public Evidence no(String name) {
        return and(name, new Hard(false));
    }

    /**
     * This and a report on the variable. Several reports on one variable are independent given the variable, so their
     * likelihoods multiply.
     *
     * @param ifYes P(report | yes), at least 0
     * @param ifNo P(report | no), at least 0; not both are 0
     */
    public Evidence weighted(String name, double ifYes, double ifNo) {
        return and(name, new Weighted(ifYes, ifNo));
    }

    private Evidence and(String name, Finding added) {
        Map<String, Finding> copy = new LinkedHashMap<>(findings);
        @Nullable Finding before = copy.get(name);
        copy.put(
                name,
                before == null || before.equals(added) && added instanceof Hard ? added : product(name, before, added));
        return new Evidence(Collections.unmodifiableMap(copy));
    }

    private static Finding product(String name, Finding a, Finding b) {
        double ifYes = a.ifYes() * b.ifYes();
        double ifNo = a.ifNo() * b.ifNo();
        if (ifYes == 0 && ifNo == 0) {
            throw new ImpossibleEvidenceException(
                    "the findings on '" + name + "' contradict each other: " + a + " and " + b + " cannot both hold");
        }
        return new Weighted(ifYes, ifNo);
    }

    /** Everything but what is known about that variable. */
    public Evidence without(String name) {
        Map<String, Finding> copy = new LinkedHashMap<>(findings);
        copy.remove(name);
        return new Evidence(Collections.unmodifiableMap(copy));
    }

    /** What is known, by variable name, in the order added; cannot be changed. */
    public Map<String, Finding> findings() {
        return findings;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Evidence evidence && findings.equals(evidence.findings);
    }

    @Override
    public int hashCode() {
        return findings.hashCode();
    }

    @Override
    public String toString() {
        return "Evidence" + findings;
    }
}
