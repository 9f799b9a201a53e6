package hingewise.rulebook.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpoiltAtRandomTest {
    private static final int BOOKS = 300;
    private static final List<String> TOKENS = List.of(
            "",
            " ",
            "  ",
            "x",
            "{",
            "}",
            "[",
            "]",
            ":",
            ": ",
            ", ",
            "- ",
            "&a ",
            "*a",
            "!x ",
            "?",
            "|",
            ">",
            "'",
            "\"",
            "#",
            "%",
            "---\n",
            "\n",
            "\r",
            "~",
            "null",
            "yes",
            "0",
            "1",
            "-1",
            "1.2",
            "1e9",
            ".5",
            "0x1F",
            "NaN",
            "format: 1",
            "because",
            "\u2028",
            "\u00e9",
            "\ud83d\ude00",
            "<<: ",
            "@",
            "=");

    @Test
    void aSpoiltBookIsReadOrReportedWithinItsLinesAndNeverThrows(@TempDir Path folder) throws IOException {
        SmallBook whole = SmallBook.whole();
        whole.readIn(folder);
        int refused = 0;
        for (int seed = 0; seed < BOOKS; seed++) {
            Random random = new Random(seed);
            String name = SmallBook.NAMES.get(random.nextInt(SmallBook.NAMES.size()));
            String text = whole.text(name);
            for (int times = 1 + random.nextInt(3); times > 0; times--) {
                text = spoil(text, random);
            }
            Files.writeString(folder.resolve(name), text);
            Reading reading = RuleBookReader.read(new Folder(folder, ""));
            Files.writeString(folder.resolve(name), whole.text(name));
            refused += reading.problems().isEmpty() ? 0 : 1;
            String about = "seed " + seed + ", " + name;
            assertThat(reading.ruleBook().isPresent())
                    .as(about)
                    .isEqualTo(reading.problems().isEmpty());
            for (Problem problem : reading.problems()) {
                String file = problem.file().equals(name) ? text : whole.text(problem.file());
                assertThat((long) problem.line())
                        .as(about + ": " + problem)
                        .isBetween(0L, file.lines().count() + 1);
                assertThat(problem.text()).as(about).doesNotContain("\n").doesNotContain("Exception");
            }
        }
        assertThat(refused).isBetween(BOOKS / 2, BOOKS - 1);
    }

    private static String spoil(String text, Random random) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        int at = random.nextInt(lines.size());
        int other = random.nextInt(lines.size());
        String line = lines.get(at);
        switch (random.nextInt(7)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(other, line);
            case 2 -> Collections.swap(lines, at, other);
            case 3 -> lines.set(at, line.replaceFirst("[0-9.]+", token(random)));
            case 4 -> lines.set(at, line.replaceFirst("[a-z-]+", token(random)));
            case 5 -> {
                int place = random.nextInt(line.length() + 1);
                lines.set(at, line.substring(0, place) + token(random) + line.substring(place));
            }
            default -> lines.set(at, " " + line);
        }
        return String.join("\n", lines);
    }

    private static String token(Random random) {
        return java.util.regex.Matcher.quoteReplacement(TOKENS.get(random.nextInt(TOKENS.size())));
    }
}
