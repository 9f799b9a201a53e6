package hingewise.casefile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The case of one phone.
 *
 * @param title what the user calls it
 * @param invented whether this is a made-up example
 * @param entries the timeline, in the order recorded
 */
public record CaseFile(String title, boolean invented, Phone phone, List<Entry> entries) {
    /** @throws IllegalArgumentException if two entries have the same id */
    public CaseFile {
        entries = List.copyOf(entries);
        Set<String> ids = new HashSet<>();
        for (Entry entry : entries) {
            if (!ids.add(entry.id())) {
                throw new IllegalArgumentException("two entries have the id \"" + entry.id() + "\"");
            }
        }
    }

    /** This case with one more entry at the end. */
    public CaseFile with(Entry entry) {
        List<Entry> longer = new ArrayList<>(entries);
        longer.add(entry);
        return new CaseFile(title, invented, phone, longer);
    }
}
