package hingewise.simulation;

/** A way to go about a phone until a decision is taken. */
interface Way {
    Outcome with(Work work);
}
