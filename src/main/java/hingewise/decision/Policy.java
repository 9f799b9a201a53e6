package hingewise.decision;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What to do, and after each report what then. Amounts are expected for a case that gets here, from here on. */
public sealed interface Policy {
    /** Share of all cases that get here, in 0–1. */
    double chance();

    /** What following it costs. */
    double expected();

    /**
     * Do something and go on by what is reported.
     *
     * @param opens gates (one bit each) that are opened for it
     * @param branches by report, those that occur
     */
    record Do(double chance, double expected, int act, long opens, List<Branch> branches) implements Policy {
        public Do {
            branches = List.copyOf(branches);
        }
    }

    /**
     * Nothing more is worth doing.
     *
     * @param ending number of the decision to take
     */
    record Decide(double chance, double expected, int ending) implements Policy {}

    /**
     * Too unlikely to be looked into.
     *
     * @param ending number of the decision that would be taken if nothing more were done
     */
    record Unplanned(double chance, double expected, int ending) implements Policy {}

    /**
     * What follows a report.
     *
     * @param reported by sign, whether it was reported; empty if the act was left because a need was not met
     * @param cost of the act with this report, opening included
     */
    record Branch(Optional<Map<Integer, Boolean>> reported, double cost, Policy next) {
        public Branch {
            reported = reported.map(r -> Collections.unmodifiableMap(new LinkedHashMap<>(r)));
        }
    }
}
