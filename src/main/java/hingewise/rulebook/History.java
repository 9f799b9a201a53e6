package hingewise.rulebook;

import java.util.List;

/**
 * Something that happened to the phone and raises many causes at once.
 *
 * @param rate chance before anything is known, in 1e-5–.5
 * @param signs what it shows by itself
 */
public record History(String id, String label, ByFamily rate, List<Sign> signs, Grounds grounds) {
    public History {
        signs = List.copyOf(signs);
    }
}
