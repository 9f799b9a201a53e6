package hingewise.assessment;

import hingewise.rulebook.Caution;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Says each caution in full the first time it applies, with a number, and calls it up by that number from there on. Places
 * are asked in the order in which they are read.
 */
public final class CareOrder {
    private final Set<Caution> above;
    private final Map<Caution, Integer> numbers = new LinkedHashMap<>();

    /** A caution and its number, from 1. */
    public record Numbered(int number, Caution caution) {}

    /**
     * What to be careful of at one place.
     *
     * @param here in full
     * @param again numbers of those that stand further up
     */
    public record Care(List<Numbered> here, List<Integer> again) {
        public Care {
            here = List.copyOf(here);
            again = List.copyOf(again);
        }
    }

    /** Nothing stands above. */
    public CareOrder() {
        this.above = Set.of();
    }

    /** What the case itself brings up stands above all else, and is not said again. */
    public CareOrder(Assessment assessment) {
        this.above = assessment.cautions().stream()
                .filter(ShownCaution::brought)
                .map(ShownCaution::caution)
                .collect(Collectors.toSet());
    }

    /** What to be careful of at the next place. */
    public Care at(Collection<Caution> cautions) {
        Set<Caution> before = new HashSet<>(numbers.keySet());
        List<Numbered> here = new ArrayList<>();
        List<Integer> again = new ArrayList<>();
        for (Caution caution : cautions) {
            if (before.contains(caution)) {
                again.add(Objects.requireNonNull(numbers.get(caution)));
            } else if (!above.contains(caution) && !numbers.containsKey(caution)) {
                numbers.put(caution, numbers.size() + 1);
                here.add(new Numbered(numbers.size(), caution));
            }
        }
        again.sort(null);
        return new Care(here, again);
    }

    /** How many stand in full by now. */
    public int count() {
        return numbers.size();
    }
}
