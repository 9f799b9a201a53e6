package hingewise.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.casefile.Story;
import hingewise.decision.Planner;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Rules;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Figures worked by hand: labour costs 30.00 an hour, a failure 50.00; shares may be off by a few standard errors. */
class SheetTest {
    private static final double ERRORS = 5 * .5 / Math.sqrt(Planner.WORLDS);

    private static Planning planning(Rules rules, Story story) {
        return Planned.of(rules, story, Planned.DISPLAY_FOR_40);
    }

    private static Sheet sheet(Rules rules, Story story) {
        return planning(rules, story).sheet();
    }

    private static Story arrived() {
        return new Story(Rules.FAMILY).look("dark", "yes");
    }

    /** Two plugs may be loose, each behind the same back, and each is pressed home by a try of its own. */
    private static Rules twoPlugs() {
        return new Rules()
                .cause("x", .3)
                .cause("y", .3)
                .observation("dark", .0001)
                .sign("x", "dark", .999)
                .sign("y", "dark", .999)
                .access("back-off", Map.of())
                .tryOut("press-x", Optional.of("back-off"), Map.of("x", .9), Map.of())
                .tryOut("press-y", Optional.of("back-off"), Map.of("y", .9), Map.of())
                .seenBy("press-x", "dark")
                .seenBy("press-y", "dark");
    }

    private static Sheet.Branch when(Sheet.Station station, boolean dark) {
        return station.branches().stream()
                .filter(b -> b.reports().contains(Map.of("dark", dark)))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aTryThatFailsGoesOnAndOneThatHelpsIsTheEnd() {
        Sheet sheet = sheet(twoPlugs(), arrived());
        assertThat(sheet.stations()).hasSize(2);
        Sheet.Station first = sheet.stations().get(0);
        assertThat(when(first, true).way()).isEqualTo(new Sheet.Way.Go(2));
        assertThat(when(first, false).way()).isEqualTo(new Sheet.Way.Stop(1));
        assertThat(sheet.ends().get(0).decision().kind()).isEqualTo(Decision.Kind.LEAVE);
        // One plug of two is loose with chance .21 + .21 of .51, both with .09: one try cures .9 of half of the former.
        assertThat(when(first, false).chance()).isCloseTo(.9 * .21 / .51, within(ERRORS + .03));
    }

    @Test
    void whatWasOpenedOnTheWayIsOpenedOnce() {
        Sheet sheet = sheet(twoPlugs(), arrived());
        assertThat(sheet.stations().get(0).opens()).extracting(a -> a.id()).containsExactly("back-off");
        assertThat(sheet.stations().get(0).minutes()).isEqualTo(25);
        assertThat(sheet.stations().get(1).opens()).isEmpty();
        assertThat(sheet.stations().get(1).minutes()).isEqualTo(5);
        assertThat(sheet.longest()).isEqualTo(30);
        assertThat(sheet.minutes()).isCloseTo(25 + 5 * sheet.stations().get(1).chance(), within(1e-9));
    }

    @Test
    void aPhoneThatIsOpenPaysNoOpening() {
        Sheet sheet = sheet(twoPlugs(), arrived().opened("back-off"));
        assertThat(sheet.stations()).isNotEmpty().allMatch(s -> s.opens().isEmpty() && s.minutes() == 5);
    }

    @Test
    void theSheetCostsWhatItsBranchesCostAndWhatThePlanSays() {
        Planning planning = planning(twoPlugs(), arrived());
        Sheet sheet = planning.sheet();
        Sheet.Station first = sheet.stations().get(0);
        Sheet.Station second = sheet.stations().get(1);
        double labour = (25 * first.chance() + 5 * second.chance()) / 2;
        assertThat(sheet.expected().getAmount().doubleValue()).isGreaterThan(labour);
        assertThat(sheet.expected().getAmount().doubleValue())
                .isCloseTo(planning.plan().expected().getAmount().doubleValue(), within(.5));
    }

    @Test
    void theSameCaseGetsTheSameSheet() {
        assertThat(sheet(twoPlugs(), arrived())).isEqualTo(sheet(twoPlugs(), arrived()));
    }

    /** Whatever the seller says, before anybody here has looked nothing but an offer can be decided. */
    @Test
    void beforeAnybodyHasLookedEveryEndIsAnOffer() {
        Rules rules = new Rules()
                .cause("x", .5)
                .observation("dark", .1)
                .sign("x", "dark", .8)
                .partFor("display", "x")
                .question("ask", "dark", Map.of(), Set.of(Moment.LISTING));
        Sheet sheet = sheet(rules, new Story(Rules.FAMILY));
        assertThat(sheet.stations()).hasSize(1);
        assertThat(sheet.ends()).hasSize(1);
        assertThat(sheet.ends().get(0).decision().kind()).isEqualTo(Decision.Kind.OFFER);
        assertThat(sheet.stations().get(0).branches()).hasSize(1);
        assertThat(sheet.parts()).isEmpty();
    }

    @Test
    void whatMustBeAnsweredFirstHasABranchOfItsOwn() {
        Rules rules = new Rules()
                .cause("x", .5)
                .observation("dark", .1)
                .observation("dead", .1)
                .sign("x", "dark", .8)
                .sign("x", "dead", .5)
                .partFor("display", "x")
                .question("if-alive", "dark", Map.of("dead", false), Set.of(Moment.LISTING));
        Sheet sheet = sheet(rules, new Story(Rules.FAMILY));
        Sheet.Station station = sheet.stations().get(0);
        assertThat(station.first()).hasSize(1);
        assertThat(station.first().get(0).observation().id()).isEqualTo("dead");
        assertThat(station.first().get(0).answer()).isFalse();
        assertThat(station.branches()).filteredOn(Sheet.Branch::left).hasSize(1);
        assertThat(station.minutes()).isEqualTo(3);
    }

    /** x is left as it is more cheaply than anything that could be done, and the only part costs more than failing. */
    @Test
    void whereNothingIsWorthDoingThereIsOneEndAndNoStation() {
        Rules rules = new Rules()
                .cause("x", .01)
                .observation("dark", .1)
                .sign("x", "dark", .5)
                .tryOut("a", Map.of("x", .1), Map.of())
                .seenBy("a", "dark");
        Sheet sheet = sheet(rules, new Story(Rules.FAMILY).report(EvidenceKind.LOOK, "bench", "dark", "no"));
        assertThat(sheet.stations()).isEmpty();
        assertThat(sheet.ends()).hasSize(1);
        assertThat(sheet.ends().get(0).chance()).isEqualTo(1);
        assertThat(sheet.minutes()).isZero();
    }
}
