package hingewise.rulebook.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class CirclesTest {
    @Test
    void aDiamondIsNoCircle() {
        Map<String, List<String>> arrows = new LinkedHashMap<>();
        arrows.put("a", List.of("b", "c"));
        arrows.put("b", List.of("d"));
        arrows.put("c", List.of("d"));
        arrows.put("d", List.of());
        assertThat(Circles.in(arrows)).isEmpty();
    }

    @Test
    void twoCirclesThroughOneIdAreBothNamed() {
        Map<String, List<String>> arrows = new LinkedHashMap<>();
        arrows.put("a", List.of("b", "c"));
        arrows.put("b", List.of("a"));
        arrows.put("c", List.of("a", "gone"));
        assertThat(Circles.in(arrows)).containsExactly(List.of("a", "b"), List.of("a", "c"));
    }

    @Test
    void aChainOfAHundredThousandDoesNotExhaustTheStack() {
        Map<String, List<String>> arrows = new LinkedHashMap<>();
        for (int i = 0; i < 100_000; i++) {
            arrows.put("n" + i, List.of("n" + (i + 1) % 100_000));
        }
        assertThat(Circles.in(arrows))
                .singleElement()
                .satisfies(c -> assertThat(c).hasSize(100_000));
    }

    /** The other way to decide it: a graph has no circle exactly if taking out ids without arrows empties it. */
    @Test
    void circlesAreFoundExactlyWhereTakingOutEndsLeavesSomething() {
        for (int seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            Map<String, List<String>> arrows = new LinkedHashMap<>();
            int size = 2 + random.nextInt(8);
            for (int i = 0; i < size; i++) {
                List<String> next = new ArrayList<>();
                for (int j = 0; j < size; j++) {
                    if (random.nextInt(size) == 0) {
                        next.add("n" + j);
                    }
                }
                arrows.put("n" + i, next);
            }
            TreeSet<String> left = new TreeSet<>(arrows.keySet());
            while (left.removeIf(id -> arrows.get(id).stream().noneMatch(left::contains))) {}
            List<List<String>> circles = Circles.in(arrows);
            assertThat(circles.isEmpty()).as("seed %d, %s", seed, arrows).isEqualTo(left.isEmpty());
            for (List<String> circle : circles) {
                for (int i = 0; i < circle.size(); i++) {
                    assertThat(arrows.get(circle.get(i)))
                            .as("seed %d, %s", seed, circle)
                            .contains(circle.get((i + 1) % circle.size()));
                }
            }
        }
    }
}
