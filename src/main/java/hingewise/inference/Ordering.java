package hingewise.inference;

/**
 * The search for a cheap way to solve a problem: in which order the parents enter the chains of ORs, then in which order
 * variables are summed out. All chains follow one ranking of the parents, so that findings that share causes are worked
 * through side by side.
 *
 * @param rank the ranking of the problem's variables
 * @param model the tables under that ranking
 * @param elimination the order of summing out
 */
record Ordering(int[] rank, Model model, Elimination elimination) {
    /** How many table cells may be filled, over the life of a plan, for the price of one more try. */
    private static final double WORTH_A_TRY = 1 << 12;

    static final int MOST_TRIES = 12;

    /**
     * Tries several rankings and keeps the cheapest; the more the best one costs, the longer it searches. Min-fill is
     * hardly sensitive to the ranking, so a few tries come within a factor of two of hundreds.
     *
     * @param most how many tries to make; more are made only when otherwise the problem could not be solved
     */
    static Ordering search(Problem problem, int most) {
        Ordering best = of(problem, Rankings.asDeclared(problem), 0, Double.POSITIVE_INFINITY);
        for (int tries = 1; tries < MOST_TRIES && best.worthAnother(tries, most); tries++) {
            int[] rank = tries % 2 == 1
                    ? Rankings.byElimination(problem, tries / 2)
                    : Rankings.byFrontier(problem, tries / 2);
            Ordering next = of(problem, rank, tries, best.elimination.cost());
            if (next.elimination.cost() < best.elimination.cost()) {
                best = next;
            }
        }
        return best;
    }

    private boolean worthAnother(int tries, int most) {
        return tries < most && elimination.cost() > WORTH_A_TRY * tries
                || elimination.largest() > Solver.LARGEST_CLIQUE;
    }

    /** The ordering that a given ranking leads to. */
    static Ordering of(Problem problem, int[] rank, int tie, double limit) {
        Model model = new Model(problem, rank);
        return new Ordering(rank, model, Elimination.minFill(model.count(), model.scopes(), tie, limit));
    }
}
