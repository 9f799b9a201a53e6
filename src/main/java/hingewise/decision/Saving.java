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
}
