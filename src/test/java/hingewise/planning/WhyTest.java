package hingewise.planning;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.casefile.Story;
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
        return new Why(book, new Diagnostician(book).diagnose(new Story(Rules.FAMILY).told()))
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
}
