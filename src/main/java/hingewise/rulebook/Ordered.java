package hingewise.rulebook;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** Copies that keep the order in which the rule book was written. */
final class Ordered {
    private Ordered() {}

    static <V> Map<String, V> copyOf(Map<String, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    static Set<String> copyOf(Set<String> set) {
        return Collections.unmodifiableSet(new LinkedHashSet<>(set));
    }
}
