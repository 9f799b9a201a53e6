package hingewise.diagnosis;

import hingewise.casefile.Entry;
import java.util.Map;

/**
 * Something that may have changed causes.
 *
 * @param label what was done, in a few words
 * @param turns what it may have done to each cause it touches
 */
public record Touch(Entry entry, String label, Map<String, Turn> turns) implements Happening {
    public Touch {
        turns = Map.copyOf(turns);
    }
}
