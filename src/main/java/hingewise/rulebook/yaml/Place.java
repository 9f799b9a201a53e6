package hingewise.rulebook.yaml;

/**
 * Where something stands.
 *
 * @param line from 1; 0 for the file as a whole
 */
public record Place(String file, int line) {
    @Override
    public String toString() {
        return line > 0 ? file + ":" + line : file;
    }
}
