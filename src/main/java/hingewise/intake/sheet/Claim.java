package hingewise.intake.sheet;

/**
 * An answer that a listing's text gives.
 *
 * @param observation id of the observation it answers
 */
public record Claim(String observation, boolean yes) {
    /** As {@code assess --seen} takes it. */
    public String written() {
        return observation + (yes ? "=yes" : "=no");
    }
}
