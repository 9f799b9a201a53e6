package hingewise.rulebook.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AllAtOnceTest {
    @Test
    void mistakesInDifferentFilesAreReportedTogetherByFileAndLine(@TempDir Path folder) throws IOException {
        SmallBook book = SmallBook.whole();
        List<String> expected = new ArrayList<>();
        for (Mistake mistake : Mistake.all(SmallBook.resource("mistakes-references.txt"))
                .filter(m -> List.of(
                                "an unknown component of a part",
                                "an unknown access state",
                                "an unknown history",
                                "an unknown word for a rate",
                                "an unknown moment")
                        .contains(m.title()))
                .toList()) {
            book = mistake.spoil(book);
            expected.addAll(mistake.said());
        }
        Reading reading = book.readIn(folder);
        assertThat(expected).hasSize(5);
        assertThat(reading.problems())
                .extracting(Problem::text)
                .containsExactlyInAnyOrderElementsOf(expected)
                .isSorted();
    }

    @Test
    void anIdDefinedInTwoFilesNamesTheFirstPlace(@TempDir Path folder) throws IOException {
        String more = """
                format: 1
                components:
                  hinge: {label: hinge}
                  spine: {label: spine}
                """;
        Reading reading = SmallBook.whole().with("more.yaml", more).readIn(folder);
        assertThat(reading.problems())
                .extracting(Problem::text)
                .containsExactly("phone.yaml:5: a component \"hinge\" is already defined at more.yaml:3. "
                        + "Rename one of them, or put both together.");
    }

    @Test
    void whatMustBeSaidOnceIsMissedWhenNobodySaysIt(@TempDir Path folder) throws IOException {
        Reading reading = SmallBook.whole().without("book.yaml").readIn(folder);
        assertThat(reading.problems())
                .extracting(Problem::text)
                .containsExactly(
                        "book.yaml: the rule book has no \"title\". Add it to book.yaml.",
                        "book.yaml: the rule book has no \"words\". Add it to book.yaml.",
                        "book.yaml: the rule book has no \"bench\". Add it to book.yaml.",
                        "book.yaml: the rule book has no \"reliability\". Add it to book.yaml.");
    }

    @Test
    void theTextOfAProblemNamesFileLineAndWhatToDo() {
        assertThat(new Problem(Severity.WARNING, "rules/a.yaml", 3, "\"x\" is never used", "Use it, or take it out."))
                .hasToString("rules/a.yaml:3: warning: \"x\" is never used. Use it, or take it out.");
    }
}
