package hingewise.casefile;

import hingewise.plain.Quoted;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What must hold between the entries of any case. */
final class Timeline {
    private Timeline() {}

    static List<String> problems(List<Entry> entries) {
        List<String> problems = new ArrayList<>();
        Map<String, Entry> before = new LinkedHashMap<>();
        Set<String> withdrawn = new HashSet<>();
        Optional<Entry> previous = Optional.empty();
        for (Entry entry : entries) {
            if (before.containsKey(entry.id())) {
                problems.add("two entries have the id " + Quoted.of(entry.id()) + ". Give one of them another id.");
            }
            if (previous.isPresent() && entry.at().isBefore(previous.get().at())) {
                problems.add("entry " + Quoted.of(entry.id()) + " is dated " + entry.at() + ", before entry "
                        + Quoted.of(previous.get().id()) + " (" + previous.get().at()
                        + ") which stands before it. Correct the date or the computer's clock.");
            }
            if (entry instanceof Withdrawal w) {
                problems.addAll(withdrawal(w, before, withdrawn));
            } else if (entry instanceof Report r && r.resultOf().isPresent()) {
                problems.addAll(result(r, r.resultOf().get(), before));
            }
            before.put(entry.id(), entry);
            previous = Optional.of(entry);
        }
        return problems;
    }

    private static List<String> withdrawal(Withdrawal w, Map<String, Entry> before, Set<String> withdrawn) {
        Entry target = before.get(w.withdraws());
        if (target == null) {
            return List.of("entry " + Quoted.of(w.id()) + " withdraws " + Quoted.of(w.withdraws())
                    + ", but no earlier entry has that id. Name an earlier entry.");
        }
        if (target instanceof Withdrawal) {
            return List.of("entry " + Quoted.of(w.id()) + " withdraws " + Quoted.of(w.withdraws())
                    + ", itself a withdrawal. Record the answer again instead.");
        }
        return withdrawn.add(w.withdraws())
                ? List.of()
                : List.of("entry " + Quoted.of(w.id()) + " withdraws " + Quoted.of(w.withdraws())
                        + ", which is withdrawn already. Remove one of the two.");
    }

    private static List<String> result(Report report, String of, Map<String, Entry> before) {
        return before.get(of) instanceof Try
                ? List.of()
                : List.of("entry " + Quoted.of(report.id()) + " is the result of " + Quoted.of(of)
                        + ", but no earlier try has that id. Record the try first, then its result.");
    }
}
