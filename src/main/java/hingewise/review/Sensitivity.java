package hingewise.review;

import java.util.List;

/**
 * How firmly the answers of a rule book stand when all its numbers are moved at once.
 *
 * @param deviation standard deviation of the noise, in log10-odds
 * @param vignetteDraws cases times disturbed rule books
 * @param sameFirst part of them in which the likeliest cause stays, in 0–1
 * @param sameThree in which the three likeliest stay, in whatever order
 * @param amongThree in which the likeliest cause stays among the three likeliest
 * @param sameTry in which what to try first stays
 * @param sameOrder in which it stays whether any part is to be ordered
 * @param cases how often each case keeps its likeliest cause, what to try first and its order, least firm first
 * @param influences the numbers that matter most, first those that matter most
 * @param orderInfluences the same for whether a part is ordered
 */
public record Sensitivity(
        double deviation,
        long vignetteDraws,
        double sameFirst,
        double sameThree,
        double amongThree,
        double sameTry,
        double sameOrder,
        List<Firmness> cases,
        List<Influence> influences,
        List<Influence> orderInfluences) {
    public Sensitivity {
        cases = List.copyOf(cases);
        influences = List.copyOf(influences);
        orderInfluences = List.copyOf(orderInfluences);
    }

    /** How often one case keeps its answers, each in 0–1. */
    public record Firmness(String name, double sameFirst, double sameTry, double sameOrder) {
        double least() {
            return Math.min(sameFirst, sameOrder);
        }
    }

    /**
     * How much one number matters: the square of its correlation with the outcome over the disturbed rule books, less
     * what chance alone gives, 1 / (draws − 1), and averaged over the cases. For the likeliest cause the outcome is the
     * log-odds of the cause that leads undisturbed; for the order it is whether a part is ordered, 0 or 1.
     *
     * @param share the average, at most 1
     * @param mostIn the case in which it matters most
     */
    public record Influence(String number, double share, String mostIn) {}
}
