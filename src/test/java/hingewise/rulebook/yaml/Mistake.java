package hingewise.rulebook.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;

/**
 * One way to spoil the small rule book, and all that must then be said.
 *
 * <p>Written in a text file as a title after {@code ==}, the file's name, the old lines after {@code -}, the new lines
 * after {@code +}, and after {@code >} the problems.
 */
record Mistake(String title, String file, String before, String after, List<String> said) {
    static Stream<Mistake> all(String text) {
        return Stream.of(text.split("(?m)^== ")).skip(1).map(Mistake::parse);
    }

    private static Mistake parse(String block) {
        String[] lines = block.strip().split("\n");
        return new Mistake(
                lines[0],
                lines[1],
                String.join("\n", after("- ", lines)),
                String.join("\n", after("+ ", lines)),
                after("> ", lines));
    }

    private static List<String> after(String mark, String[] lines) {
        return Stream.of(lines)
                .filter(l -> (l + " ").startsWith(mark))
                .map(l -> l.length() < mark.length() ? "" : l.substring(mark.length()))
                .toList();
    }

    SmallBook spoil(SmallBook book) {
        String text = book.text(file);
        int at = text.indexOf(before);
        assertThat(at).as("place of " + title).isNotNegative();
        return book.with(file, text.substring(0, at) + after + text.substring(at + before.length()));
    }

    @Override
    public String toString() {
        return title;
    }
}
