package hingewise.inference;

/**
 * One yes/no variable of a network.
 *
 * @param name unique in its network, not blank
 * @param mechanism how it depends on its parents
 */
public record Variable(String name, Mechanism mechanism) {
    /** @throws IllegalArgumentException when the name is blank */
    public Variable {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a variable has a blank name");
        }
    }
}
