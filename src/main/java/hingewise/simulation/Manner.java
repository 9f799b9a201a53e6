package hingewise.simulation;

import hingewise.planning.Planning;

/** Ways to go about a phone that are compared. */
public enum Manner {
    /** As the planner says. */
    PLAN(new AsPlanned(Planning.Next::step)),
    /** The part that most likely renews something faulty first. */
    LIKELIEST_PART(new Habits(false)::likeliestPart),
    /** The likeliest cause first: what cures it for least, else its part. */
    LIKELIEST_CAUSE(new Habits(false)::likeliestCause),
    /** The cheapest check first, until a cause is rather sure. */
    CHEAPEST_CHECK(new Habits(false)::cheapestCheck),
    /** The dearest part straight away. */
    DEAREST_PART(new Habits(false)::dearestPart),
    /** As {@link #LIKELIEST_PART}, giving up where that is expected to cost less. */
    THRIFTY_PART(new Habits(true)::likeliestPart),
    /** As {@link #LIKELIEST_CAUSE}, giving up where that is expected to cost less. */
    THRIFTY_CAUSE(new Habits(true)::likeliestCause),
    /** As {@link #CHEAPEST_CHECK}, giving up where that is expected to cost less. */
    THRIFTY_CHECK(new Habits(true)::cheapestCheck),
    /** As {@link #DEAREST_PART}, giving up after that where it is expected to cost less. */
    THRIFTY_DEAREST(new Habits(true)::dearestPart);

    private final Way way;

    Manner(Way way) {
        this.way = way;
    }

    Outcome with(Work work) {
        return way.with(work);
    }
}
