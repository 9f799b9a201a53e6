package hingewise.simulation;

import hingewise.planning.Decision;

/**
 * What became of one phone.
 *
 * @param cost in the shop's currency, against a phone that works and was never opened
 * @param minutes hands-on
 * @param days of waiting for parts or for the maker's repair
 * @param fitted parts fitted, consumables not counted
 * @param needless of those, parts of which nothing that they renew was faulty
 * @param openings steps of opening
 * @param inVain of those, steps behind which nothing that counts was wrong
 * @param left whether it was sold as working and was not
 * @param end how it ended
 */
record Outcome(
        double cost,
        double minutes,
        int days,
        int fitted,
        int needless,
        int openings,
        int inVain,
        boolean left,
        Decision.Kind end) {}
