package hingewise.decision;

/**
 * What an act by itself is worth in a lot, summed over its worlds.
 *
 * @param least what it must save to count
 * @param gross how much less the best decision costs after it
 * @param own what it costs itself
 * @param opening what opening the gates before it costs
 * @param opens those gates (one bit each)
 */
record Saving(int act, double least, double gross, double own, double opening, long opens) {
    boolean any() {
        return gross > least;
    }

    double cost() {
        return own + opening;
    }

    double net() {
        return gross - cost();
    }

    /** What is saved for what is spent. */
    static double efficiency(double gross, double cost) {
        return cost > 0 ? gross / cost : Double.MAX_VALUE;
    }

    /** An amount to compare by: amounts that only the order of adding up sets apart are equal. */
    static double coarse(double amount) {
        return (float) amount;
    }

    /** Whether one amount is more than another, and not just by the order of adding up. */
    static boolean more(double amount, double than) {
        return coarse(amount) > coarse(than);
    }

    /** What paying one amount instead of another saves: nothing, if only the order of adding up sets them apart. */
    static double saved(double of, double paid) {
        return coarse(of) == coarse(paid) ? 0 : of - paid;
    }
}
