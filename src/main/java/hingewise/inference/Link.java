package hingewise.inference;

/**
 * One noisy-OR link: when {@code parent} is yes, it alone brings about its child with chance {@code strength}.
 *
 * @param parent name of the parent variable
 * @param strength chance in [0, 1]
 */
public record Link(String parent, double strength) {
    /** @throws IllegalArgumentException when the strength is not a number in [0, 1] */
    public Link {
        Chances.check(strength, "the strength of the link from '" + parent + "'");
    }
}
