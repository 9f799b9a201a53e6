package hingewise.rulebook;

import java.util.Map;
import java.util.Set;

/**
 * One make of phone: what differs from its family.
 *
 * @param family id of the family it refines
 * @param lacks what the family has and the model has not
 * @param baseRates base rates of causes that are other than the family's, in 1e-5–.5
 * @param signs strengths of links that are other than the family's, by cause and observation, in .001–.999
 * @param opens what must be open for what, where that is other than the family's
 */
public record Model(
        String id,
        String label,
        String family,
        Lacks lacks,
        Map<String, Double> baseRates,
        Map<String, Map<String, Double>> signs,
        Opens opens,
        Grounds grounds) {
    public Model {
        baseRates = Map.copyOf(baseRates);
        signs = Map.copyOf(signs);
    }

    /** Ids of what the model has not, by section. */
    public record Lacks(
            Set<String> components,
            Set<String> observations,
            Set<String> choices,
            Set<String> confirmations,
            Set<String> parts) {
        public static final Lacks NOTHING = new Lacks(Set.of(), Set.of(), Set.of(), Set.of(), Set.of());

        public Lacks {
            components = Set.copyOf(components);
            observations = Set.copyOf(observations);
            choices = Set.copyOf(choices);
            confirmations = Set.copyOf(confirmations);
            parts = Set.copyOf(parts);
        }
    }

    /** The access state that an entry needs on this model, by id of the entry; of a state, the one before it. */
    public record Opens(
            Map<String, String> observations,
            Map<String, String> confirmations,
            Map<String, String> parts,
            Map<String, String> states) {
        public static final Opens NOTHING = new Opens(Map.of(), Map.of(), Map.of(), Map.of());

        public Opens {
            observations = Map.copyOf(observations);
            confirmations = Map.copyOf(confirmations);
            parts = Map.copyOf(parts);
            states = Map.copyOf(states);
        }
    }
}
