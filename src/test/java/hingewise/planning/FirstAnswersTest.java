package hingewise.planning;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.casefile.Story;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Rules;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What must be answered before something is opened or asked; the expectations follow from the rules, worked by hand. */
class FirstAnswersTest {
    /** A plug behind a back that may be opened only if it does not bulge. */
    private static Rules plug() {
        return new Rules()
                .cause("x", .5)
                .cause("swollen", .05)
                .observation("dark", .0001)
                .observation("bulge", .0001)
                .sign("x", "dark", .999)
                .sign("swollen", "bulge", .9)
                .access("back-off", Map.of())
                .access("deep", Optional.of("back-off"), Map.of())
                .openedOnlyIf("back-off", "bulge", false)
                .tryOut("press-x", Optional.of("deep"), Map.of("x", .9), Map.of())
                .seenBy("press-x", "dark")
                .check("look-along", "bulge");
    }

    private static Story dark() {
        return new Story(Rules.FAMILY).look("dark", "yes");
    }

    private static Planning plan(Rules rules, Story story) {
        return Planned.of(rules, story, Planned.DISPLAY_FOR_40);
    }

    @Test
    void whatOpensAPhoneIsAskedForFirstWhereTheAnswerIsUnknown() {
        Plan plan = plan(plug(), dark()).plan();
        assertThat(plan.steps().get(0).confirmation().id()).isEqualTo("press-x");
        assertThat(plan.steps().get(0).askFirst()).containsExactly("bulge");
    }

    @Test
    void onceItIsAnsweredAsNeededNothingIsAskedFirst() {
        Plan plan = plan(plug(), dark().look("bulge", "no")).plan();
        assertThat(plan.steps().get(0).confirmation().id()).isEqualTo("press-x");
        assertThat(plan.steps().get(0).askFirst()).isEmpty();
    }

    @Test
    void onceItIsAnsweredOtherwiseNothingThatOpensIsPlanned() {
        Rules rules = plug().partFor("display", "x", Optional.of("deep"));
        Planning planning = plan(rules, dark().look("bulge", "yes"));
        assertThat(planning.plan().steps()).allMatch(s -> s.opens().isEmpty());
        assertThat(planning.plan().decision().kind()).isEqualTo(Decision.Kind.LEAVE);
        assertThat(planning.sheet().parts()).isEmpty();
        // Without the answer the same part would be fitted.
        assertThat(plan(rules, dark()).sheet().parts()).isNotEmpty();
    }

    @Test
    void whatIsOpenAlreadyNeedsNoAnswer() {
        Plan plan = plan(plug(), dark().opened("deep")).plan();
        assertThat(plan.steps().get(0).confirmation().id()).isEqualTo("press-x");
        assertThat(plan.steps().get(0).askFirst()).isEmpty();
    }

    @Test
    void aDecisionThatOpensAPhoneSaysWhatMustBeAnsweredFirst() {
        Rules rules = new Rules()
                .cause("x", .9)
                .observation("dark", .0001)
                .observation("bulge", .0001)
                .sign("x", "dark", .999)
                .access("back-off", Map.of())
                .openedOnlyIf("back-off", "bulge", false)
                .partFor("display", "x", Optional.of("back-off"))
                .check("look-along", "bulge");
        Planning planning = plan(rules, dark());
        assertThat(planning.plan().decision().kind()).isEqualTo(Decision.Kind.REPAIR);
        assertThat(planning.plan().askFirst()).containsExactly("bulge");
        assertThat(planning.beforeOpening(planning.sheet()))
                .extracting(n -> n.observation().id())
                .containsExactly("bulge");
        assertThat(planning.check(rules.book().observations().get("bulge")))
                .map(Confirmation::id)
                .contains("look-along");
    }

    /** A try that makes sense only if the fault came with an opening, which is asked only of a phone that was opened. */
    private static Rules reopening() {
        return new Rules()
                .cause("x", .5)
                .observation("dark", .0001)
                .observation("opened", .3)
                .observation("since-then", .3)
                .sign("x", "dark", .999)
                .askedOnlyIf("since-then", "opened", true)
                .question("ask-x", "dark", Map.of("since-then", true), Set.of(Moment.ARRIVAL))
                .tryOut("press-x", Map.of("x", .9), Map.of());
    }

    private static List<Sheet.Need> needs(Story story) {
        Rules rules = reopening();
        return Planned.of(rules, story, Planned.NO_OFFERS)
                .asking()
                .needs(rules.book().confirmations().get("ask-x"));
    }

    @Test
    void aQuestionThatMakesSenseOnlyAfterAnotherComesBehindIt() {
        assertThat(needs(dark())).extracting(n -> n.observation().id()).containsExactly("opened", "since-then");
        assertThat(needs(dark().look("opened", "yes")))
                .extracting(n -> n.observation().id())
                .containsExactly("since-then");
    }

    @Test
    void whatCannotBeAskedForbids() {
        var book = reopening().book();
        Confirmation ask = book.confirmations().get("ask-x");
        assertThat(book.possible(ask, Map.of("dark", true, "opened", false), Set.of()))
                .isFalse();
        assertThat(book.possible(ask, Map.of("dark", true), Set.of())).isTrue();
    }

    @Test
    void aRecordedAnswerStandsHoweverTheOtherWas() {
        var book = reopening().book();
        Confirmation ask = book.confirmations().get("ask-x");
        assertThat(book.possible(ask, Map.of("opened", false, "since-then", true), Set.of()))
                .isTrue();
        assertThat(needs(dark().look("opened", "no").look("since-then", "yes"))).isEmpty();
    }
}
