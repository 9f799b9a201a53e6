package hingewise.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The states a cause goes through: version 0 until it is first touched, one more after each touch. Observations made
 * while their causes have the same versions are observations of the same thing.
 */
final class Versions {
    private record Turned(int position, Turn turn) {}

    private final Map<String, List<Turned>> turns = new LinkedHashMap<>();
    private final Parents parents;

    Versions(Parents parents, List<Happening> happenings) {
        this.parents = parents;
        for (int i = 0; i < happenings.size(); i++) {
            if (happenings.get(i) instanceof Touch touch) {
                int position = i;
                touch.turns()
                        .forEach((cause, turn) -> turns.computeIfAbsent(cause, c -> new ArrayList<>())
                                .add(new Turned(position, turn)));
            }
        }
    }

    /** What happened to a cause, in order: turn k leads from version k to k + 1. */
    List<Turn> turnsOf(String cause) {
        return turns.getOrDefault(cause, List.of()).stream().map(Turned::turn).toList();
    }

    /** The version a cause has at a position of the timeline. */
    int of(String cause, int position) {
        return (int) turns.getOrDefault(cause, List.of()).stream()
                .filter(t -> t.position() < position)
                .count();
    }

    /** The version a cause has when another goes through its turn k. */
    int before(String cause, String turned, int k) {
        return turns.getOrDefault(turned, List.of()).stream()
                .skip(k)
                .findFirst()
                .map(t -> of(cause, t.position()))
                .orElse(0);
    }

    /** The versions of all causes that show an observation, in the order of its parents. */
    List<Integer> seenBy(String observation, int position) {
        return parents.of(observation).stream()
                .map(p -> p.cause() ? of(p.id(), position) : 0)
                .toList();
    }
}
