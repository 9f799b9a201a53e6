package hingewise.rulebook;

/**
 * How far a kind of evidence can be believed about one observation.
 *
 * @param sensitivity P(reported "yes" | it is so), in .001–.999
 * @param specificity P(reported "no" | it is not so), in .001–.999
 */
public record Reliability(double sensitivity, double specificity) {}
