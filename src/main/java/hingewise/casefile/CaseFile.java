package hingewise.casefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The case of one phone.
 *
 * @param title what the user calls it
 * @param invented whether this is a made-up example
 * @param entries the timeline, in the order recorded
 */
public record CaseFile(String title, boolean invented, Phone phone, List<Entry> entries) {
    /** @throws TimelineException if the entries contradict each other's order or names */
    public CaseFile {
        entries = List.copyOf(entries);
        TimelineException.ifAny(Timeline.problems(entries));
    }

    /** This case with one more entry at the end. */
    public CaseFile with(Entry entry) {
        List<Entry> longer = new ArrayList<>(entries);
        longer.add(entry);
        return new CaseFile(title, invented, phone, longer);
    }

    /** The entries that stand: neither withdrawn nor a withdrawal. */
    public List<Entry> standing() {
        Set<String> withdrawn = entries.stream()
                .flatMap(e -> e instanceof Withdrawal w
                        ? Optional.of(w.withdraws()).stream()
                        : Optional.<String>empty().stream())
                .collect(Collectors.toSet());
        return entries.stream()
                .filter(e -> !(e instanceof Withdrawal) && !withdrawn.contains(e.id()))
                .toList();
    }

    /** The entry by which the phone was closed, if it was closed after it was last opened. */
    public Optional<Closed> closed() {
        Optional<Closed> closed = Optional.empty();
        for (Entry entry : standing()) {
            if (entry instanceof Closed c) {
                closed = Optional.of(c);
            } else if (entry instanceof Opened) {
                closed = Optional.empty();
            }
        }
        return closed;
    }

    /**
     * The case as it was once this entry had been recorded.
     *
     * @throws IllegalArgumentException if there is no such entry
     */
    public CaseFile asOf(String entry) {
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i).id().equals(entry)) {
                return new CaseFile(title, invented, phone, entries.subList(0, i + 1));
            }
        }
        throw new IllegalArgumentException("the case has no entry \"" + entry + "\"");
    }

    /** An entry id that is not taken: e1, e2, … */
    public String nextId() {
        Set<String> taken = entries.stream().map(Entry::id).collect(Collectors.toSet());
        int n = entries.size() + 1;
        while (taken.contains("e" + n)) {
            n++;
        }
        return "e" + n;
    }
}
