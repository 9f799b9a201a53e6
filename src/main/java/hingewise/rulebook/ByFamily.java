package hingewise.rulebook;

import java.util.Map;

/**
 * A number that may differ by family.
 *
 * @param common the value where no exception is named
 * @param exceptions the value by family id
 */
public record ByFamily(double common, Map<String, Double> exceptions) {
    public ByFamily {
        exceptions = Map.copyOf(exceptions);
    }

    public static ByFamily always(double value) {
        return new ByFamily(value, Map.of());
    }

    public double in(String family) {
        return exceptions.getOrDefault(family, common);
    }
}
