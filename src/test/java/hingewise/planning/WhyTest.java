package hingewise.planning;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.casefile.Story;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.Diagnostician;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Rules;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A try that may cure x, after which a sign of y is looked for. */
class WhyTest {
    private static final String CURES = "x is .*unlikely \\(.* %\\); this cures it in 95 % of cases\\.";

    private static String why(double x, double sign) {
        RuleBook book = new Rules()
                .cause("x", x)
                .cause("y", .6)
                .observation("odd", .05)
                .sign("y", "odd", sign)
                .tryOut("press-x", Optional.empty(), Map.of("x", .95), Map.of())
                .seenBy("press-x", "odd")
                .book();
        Diagnosis diagnosis = new Diagnostician(book).diagnose(new Story(Rules.FAMILY).told());
        return new Why(book, diagnosis, diagnosis.possiblePhones(500, 1))
                .of(
                        Objects.requireNonNull(book.confirmations().get("press-x")),
                        List.of(Objects.requireNonNull(book.observations().get("odd"))),
                        book.causesOf(Rules.FAMILY),
                        EvidenceKind.LOOK);
    }

    @Test
    void aTryIsToldByWhatItCuresEvenIfThatIsSeldomThere() {
        assertThat(why(.03, .9)).matches(CURES);
    }

    @Test
    void aTryThatHardlyCuresIsToldByTheSignThatTellsMuch() {
        assertThat(why(.002, .9)).matches("y: \\d\\d % with \"odd\", \\d\\d? % without\\.");
    }

    @Test
    void aTryThatHardlyCuresAndAfterWhichLittleIsToldIsStillToldByWhatItCures() {
        assertThat(why(.002, .01)).matches(CURES);
    }

    /** Both signs are looked at together; only the one that moves y farther is asked exactly. */
    @Test
    void ofSignsSeenTogetherTheOneThatMovesACauseFarthestIsTold() {
        RuleBook book = new Rules()
                .cause("y", .3)
                .observation("faint", .05)
                .observation("plain", .05)
                .sign("y", "faint", .1)
                .sign("y", "plain", .9)
                .tryOut("look", Optional.empty(), Map.of(), Map.of())
                .book();
        Diagnosis diagnosis = new Diagnostician(book).diagnose(new Story(Rules.FAMILY).told());
        assertThat(new Why(book, diagnosis, diagnosis.possiblePhones(500, 1))
                        .of(
                                Objects.requireNonNull(book.confirmations().get("look")),
                                List.copyOf(book.observations().values()),
                                book.causesOf(Rules.FAMILY),
                                EvidenceKind.LOOK))
                .startsWith("y: ")
                .contains("with \"plain\"");
    }
}
