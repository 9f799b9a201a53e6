package hingewise.inference;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Noisy-OR: P(no | parents) = (1 − leak) · Π (1 − strength) over the parents that are yes (Pearl 1988, Probabilistic
 * Reasoning in Intelligent Systems, section 4.3.2).
 *
 * @param leak P(yes) when every parent is no, in [0, 1]
 * @param links one link for each parent
 */
public record NoisyOr(double leak, List<Link> links) implements Mechanism {
    /** @throws IllegalArgumentException when the leak is not in [0, 1] or a parent is listed twice */
    public NoisyOr {
        Chances.check(leak, "the leak");
        links = List.copyOf(links);
        Set<String> seen = new HashSet<>();
        for (Link link : links) {
            if (!seen.add(link.parent())) {
                throw new IllegalArgumentException("the parent '" + link.parent() + "' has two links");
            }
        }
    }

    /** A variable without parents that is yes with chance {@code p}. */
    public static NoisyOr root(double p) {
        return new NoisyOr(p, List.of());
    }

    @Override
    public List<String> parents() {
        String[] names = new String[links.size()];
        for (int i = 0; i < names.length; i++) {
            names[i] = links.get(i).parent();
        }
        return List.of(names);
    }
}
