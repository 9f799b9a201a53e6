package hingewise.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import hingewise.casefile.Story;
import hingewise.costing.Offer;
import hingewise.costing.PriceBook;
import hingewise.costing.RepairCosts;
import hingewise.costing.Shops;
import hingewise.diagnosis.Diagnostician;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Moment;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Rules;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Figures worked by hand: labour costs 30.00 an hour, a failure 50.00. */
class FirstStepsTest {
    private static final PriceBook DISPLAY_FOR_40 =
            new PriceBook(List.of(new Offer("display", "Invented", Money.parse("EUR 40.00"), "service", 2, .05)));
    private static final PriceBook NO_OFFERS = new PriceBook(List.of());

    private static List<Step> steps(Rules rules, Story story, PriceBook prices) {
        RuleBook book = rules.book();
        return new FirstSteps(
                        book,
                        new RepairCosts(book, prices, Shops.plain(), Rules.FAMILY),
                        Rules.FAMILY,
                        new Diagnostician(book).diagnose(story.told()))
                .ranked();
    }

    private static Story nothingKnown() {
        return new Story(Rules.FAMILY);
    }

    private static Step only(List<Step> steps) {
        assertThat(steps).hasSize(1);
        return steps.get(0);
    }

    private static void amounts(Step step, String saves, String net) {
        assertThat(step.saves().getAmount()).isEqualByComparingTo(new BigDecimal(saves));
        assertThat(step.net().getAmount()).isEqualByComparingTo(new BigDecimal(net));
    }

    /** Left alone it costs .2 × 50; the try cures half of that. Five minutes are 2.50. */
    @Test
    void aTrySavesWhatItCures() {
        Rules rules = new Rules().cause("x", .2).tryOut("reseat", Map.of("x", .5), Map.of());
        amounts(only(steps(rules, nothingKnown(), NO_OFFERS)), "5.00", "2.50");
    }

    /** To repair costs 40.00 and half an hour; left alone .2 × (55 + 50) = 21, after the try .1 × 105. */
    @Test
    void aTrySavesTheRepairToo() {
        Rules rules = new Rules().cause("x", .2).partFor("display", "x").tryOut("reseat", Map.of("x", .5), Map.of());
        amounts(only(steps(rules, nothingKnown(), DISPLAY_FOR_40)), "10.50", "8.00");
    }

    /** What was not broken may become so: .1 × .9 × 50. */
    @Test
    void whatATryMayDamageIsPaidFor() {
        Rules rules = new Rules().cause("x", .2).cause("y", .1).tryOut("reseat", Map.of("x", .5), Map.of("y", .1));
        amounts(only(steps(rules, nothingKnown(), NO_OFFERS)), "5.00", "-2.00");
    }

    /** Twenty minutes of opening are 10.00, its damage .02 × .8 × 50; once open neither is paid again. */
    @Test
    void openingIsPaidUntilItIsOpen() {
        Rules rules = new Rules()
                .cause("x", .2)
                .access("back-off", Map.of("x", .02))
                .tryOut("reseat", Optional.of("back-off"), Map.of("x", .5), Map.of());
        Step closed = only(steps(rules, nothingKnown(), NO_OFFERS));
        amounts(closed, "5.00", "-8.30");
        assertThat(closed.minutes()).isEqualTo(25);
        assertThat(closed.opens()).containsExactly("back-off");

        Step open = only(steps(rules, nothingKnown().opened("back-off"), NO_OFFERS));
        assertThat(open.minutes()).isEqualTo(5);
        assertThat(open.opens()).isEmpty();
    }

    /**
     * The seller says yes with chance .46 × .75 + .54 × .1 = .399, and then x is .79 likely and repaired for 55; else x
     * is left at .1835 / .601. Deciding now costs 52.50, then .399 × 55 + .1835 × 105.
     */
    @Test
    void aQuestionSavesByDecidingBetter() {
        Rules rules = new Rules()
                .cause("x", .5)
                .observation("dark", .1)
                .sign("x", "dark", .8)
                .partFor("display", "x")
                .question("ask", "dark", Map.of(), Set.of(Moment.LISTING));
        Step ask = only(steps(rules, nothingKnown(), DISPLAY_FOR_40));
        amounts(ask, "11.29", "10.29");
        assertThat(ask.why()).isEqualTo("x: 79 % if yes, 31 % if no.");
    }

    @Test
    void whatIsNotPossibleNowIsNotProposed() {
        Rules rules = new Rules()
                .cause("x", .5)
                .observation("dark", .1)
                .observation("dead", .1)
                .sign("x", "dark", .8)
                .sign("x", "dead", .5)
                .partFor("display", "x")
                .question("once-bought", "dark", Map.of(), Set.of(Moment.ARRIVAL))
                .question("if-alive", "dark", Map.of("dead", false), Set.of(Moment.LISTING));
        assertThat(steps(rules, nothingKnown(), DISPLAY_FOR_40))
                .extracting(s -> s.confirmation().id(), Step::askFirst)
                .containsExactly(tuple("if-alive", List.of("dead")));
        assertThat(steps(rules, nothingKnown().report(EvidenceKind.CLAIM, "seller", "dead", "yes"), DISPLAY_FOR_40))
                .isEmpty();
        assertThat(steps(rules, nothingKnown().look("dead", "no"), DISPLAY_FOR_40))
                .extracting(s -> s.confirmation().id())
                .containsExactly("once-bought");
    }

    @Test
    void whatSavesMoreNetComesFirstAndWhatWasTriedNotAgain() {
        Rules rules = new Rules()
                .cause("x", .2)
                .cause("y", .6)
                .tryOut("a", Map.of("x", .5), Map.of())
                .tryOut("b", Map.of("y", .5), Map.of())
                .tryOut("c", Map.of("y", .5), Map.of());
        assertThat(steps(rules, nothingKnown(), NO_OFFERS))
                .extracting(s -> s.confirmation().id())
                .containsExactly("b", "c", "a");
        assertThat(steps(rules, nothingKnown().tried("b"), NO_OFFERS))
                .extracting(s -> s.confirmation().id())
                .startsWith("c")
                .doesNotContain("b");
    }
}
