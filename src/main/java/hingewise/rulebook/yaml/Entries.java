package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Every entry that has an id, over all files; known before anything is read that refers to it. */
final class Entries {
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    /** Two sections whose ids are used in one place, so that an id must tell them apart. */
    private static final Map<Section, Section> SHARED_NAMES =
            Map.of(Section.CHOICES, Section.OBSERVATIONS, Section.HINTS, Section.OBSERVATIONS);

    private final Map<Section, Map<String, Entry>> first = new EnumMap<>(Section.class);
    private final Map<Section, List<Entry>> all = new EnumMap<>(Section.class);

    /**
     * One entry of a section.
     *
     * @param place where its id stands
     */
    record Entry(String id, Place place, Node value) {
        /** Where a key of the entry stands, or a name within the value of that key. */
        Place placeOf(String key, String name) {
            if (!(value instanceof Node.Mapping block)) {
                return place;
            }
            return block.member(key).flatMap(m -> m.value().find(name)).orElse(block.placeOf(key));
        }
    }

    private Entries() {
        for (Section section : Section.values()) {
            first.put(section, new LinkedHashMap<>());
            all.put(section, new ArrayList<>());
        }
    }

    static Entries of(List<Document> documents, Problems problems) {
        Entries entries = new Entries();
        for (Section section : Section.values()) {
            for (Document document : documents) {
                for (Node.Member member : document.under(section.key())) {
                    entries.addSection(section, member, problems);
                }
            }
        }
        SHARED_NAMES.forEach((later, earlier) -> entries.refuseShared(later, earlier, problems));
        return entries;
    }

    /** Whether this is lower-case words joined by hyphens. */
    static boolean isId(String text) {
        return ID.matcher(text).matches();
    }

    private void addSection(Section section, Node.Member member, Problems problems) {
        if (member.value() instanceof Node.Mapping mapping) {
            mapping.members().forEach(m -> add(section, new Entry(m.key(), m.place(), m.value()), problems));
        }
    }

    private void add(Section section, Entry entry, Problems problems) {
        if (!isId(entry.id())) {
            problems.add(
                    entry.place(),
                    Quoted.of(entry.id()) + " cannot be an id",
                    "Write lower-case letters and digits, words joined by hyphens.");
        }
        Map<String, Entry> known = of(section);
        Entry before = known.putIfAbsent(entry.id(), entry);
        if (before != null) {
            problems.add(
                    entry.place(),
                    section.noun + " " + Quoted.of(entry.id()) + " is already defined at " + before.place(),
                    "Rename one of them, or put both together.");
        }
        all(section).add(entry);
    }

    private void refuseShared(Section later, Section earlier, Problems problems) {
        for (Entry entry : all(later)) {
            Optional<Entry> other = find(earlier, entry.id());
            other.ifPresent(o -> problems.add(
                    entry.place(),
                    Quoted.of(entry.id()) + " is also " + earlier.noun + ", at " + o.place(),
                    "Rename one of them: cases name both kinds by id."));
        }
    }

    Set<String> ids(Section section) {
        return of(section).keySet();
    }

    /** The entry of this id; of several, the first. */
    Optional<Entry> find(Section section, String id) {
        return Optional.ofNullable(of(section).get(id));
    }

    /** The entries as written, including those whose id was used before. */
    List<Entry> all(Section section) {
        return all.getOrDefault(section, new ArrayList<>());
    }

    /** Where each entry stands, by section and id joined by a slash. */
    Map<String, Place> places() {
        Map<String, Place> places = new LinkedHashMap<>();
        first.forEach(
                (section, byId) -> byId.forEach((id, entry) -> places.put(section.key() + "/" + id, entry.place())));
        return places;
    }

    private Map<String, Entry> of(Section section) {
        return first.getOrDefault(section, new LinkedHashMap<>());
    }
}
