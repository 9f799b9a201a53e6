package hingewise.rulebook.yaml;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Circles among entries that depend on each other. */
final class Circles {
    private Circles() {}

    private record Step(String id, Iterator<String> next) {}

    /**
     * One circle for each arrow that closes one, in the order of the map; each begins at its member that was reached
     * first. Arrows to ids that are no key are passed over.
     *
     * @param arrows what each id depends on
     */
    static List<List<String>> in(Map<String, ? extends Collection<String>> arrows) {
        List<List<String>> circles = new ArrayList<>();
        Set<String> done = new HashSet<>();
        for (String start : arrows.keySet()) {
            Deque<Step> path = new ArrayDeque<>();
            Set<String> onPath = new HashSet<>();
            enter(start, arrows, done, path, onPath);
            while (!path.isEmpty()) {
                Step last = path.getLast();
                if (!last.next().hasNext()) {
                    onPath.remove(path.removeLast().id());
                    continue;
                }
                String next = last.next().next();
                if (onPath.contains(next)) {
                    circles.add(path.stream()
                            .map(Step::id)
                            .dropWhile(id -> !id.equals(next))
                            .toList());
                } else {
                    enter(next, arrows, done, path, onPath);
                }
            }
        }
        return circles;
    }

    private static void enter(
            String id,
            Map<String, ? extends Collection<String>> arrows,
            Set<String> done,
            Deque<Step> path,
            Set<String> onPath) {
        Collection<String> next = arrows.get(id);
        if (next != null && done.add(id)) {
            path.addLast(new Step(id, next.iterator()));
            onPath.add(id);
        }
    }
}
