package hingewise.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class NetworkTest {
    private static Variable or(String name, String... parents) {
        return new Variable(
                name,
                new NoisyOr(
                        .1,
                        List.of(parents).stream()
                                .map(parent -> new Link(parent, .5))
                                .toList()));
    }

    @Test
    void parentsComeFirstWhateverTheOrderGiven() {
        Network network = Network.of(List.of(or("c", "b"), or("b", "a"), or("a"), or("d")));
        assertThat(network.variables()).extracting(Variable::name).containsExactly("a", "b", "c", "d");
        assertThatThrownBy(() -> network.variable("x"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'x'");
    }

    @Test
    void mistakesAreNamed() {
        assertThatThrownBy(() -> Network.of(List.of(or("a"), or("a"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'a' is declared twice");
        assertThatThrownBy(() -> Network.of(List.of(or("a", "b"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'a' names an unknown parent 'b'");
        assertThatThrownBy(() -> Network.of(List.of(or("x"), or("a", "c", "x"), or("b", "a"), or("c", "b"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("circle: b -> c -> a -> b");
        assertThatThrownBy(() -> or(" ")).hasMessageContaining("blank");
    }

    @Test
    void chancesOutsideZeroToOneAreNamed() {
        assertThatThrownBy(() -> new Link("a", 1.5)).hasMessageContaining("'a'").hasMessageContaining("1.5");
        assertThatThrownBy(() -> NoisyOr.root(Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> NoisyOr.root(-.1)).hasMessageContaining("-0.1");
        assertThatThrownBy(() -> or("c", "a", "a")).hasMessageContaining("'a' has two links");
    }

    @Test
    void tablesCheckTheirShape() {
        assertThatThrownBy(() -> Table.of(List.of("a"), .5)).hasMessageContaining("needs 2 rows, not 1");
        assertThatThrownBy(() -> Table.of(List.of("a", "a"), .1, .1, .1, .1)).hasMessageContaining("twice");
        assertThatThrownBy(() -> Table.of(List.of("a"), .5, 2))
                .hasMessageContaining("row 1")
                .hasMessageContaining("2.0");
        List<String> nine = IntStream.range(0, 9).mapToObj(i -> "p" + i).toList();
        assertThatThrownBy(() -> Table.of(nine, new double[512])).hasMessageContaining("9 parents");
        assertThat(Table.of(nine.subList(0, 8), new double[256]).rows()).isEqualTo(256);
    }

    @Test
    void aTableKeepsItsNumbersToItself() {
        double[] given = {.25, .75};
        Table table = Table.of(List.of("a"), given);
        given[0] = 1;
        assertThat(table.yes(0)).isEqualTo(.25);
        assertThat(table)
                .isEqualTo(Table.of(List.of("a"), .25, .75))
                .isNotEqualTo(Table.of(List.of("a"), .25, .5))
                .hasToString("Table[a][0.25, 0.75]");
        assertThat(table).hasSameHashCodeAs(Table.of(List.of("a"), .25, .75));
    }
}
