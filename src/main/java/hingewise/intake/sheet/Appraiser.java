package hingewise.intake.sheet;

/** Thinks about phones of which the same is claimed. For several threads at once. */
@FunctionalInterface
public interface Appraiser {
    /**
     * What such a phone promises, whatever it is offered for.
     *
     * @throws UnappraisableException if nothing can be said of it
     */
    Prospect prospect(Claims claims);
}
