package hingewise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.casefile.Story;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Rules;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a try does to what was seen before it and to what is seen after. */
class KeptDrawsTest {
    /**
     * X .1 shows the symptom with .95, Y .1 with .3, leak .01; a try cures X in .3 of cases. Looks are believed all
     * but wholly, so that the chances can be worked by hand.
     */
    private static Rules oneTry() {
        return new Rules()
                .reliability(EvidenceKind.LOOK, 1 - 1e-12, 1 - 1e-12)
                .cause("x", .1)
                .cause("y", .1)
                .observation("symptom", .01)
                .sign("x", "symptom", .95)
                .sign("y", "symptom", .3)
                .tryOut("reseat", Map.of("x", .3), Map.of());
    }

    private static double chance(Rules rules, Story story, String cause) {
        return new Diagnostician(rules.book()).diagnose(story.told()).chanceOf(cause);
    }

    private static Story seen() {
        return new Story(Rules.FAMILY).look("symptom", "yes");
    }

    /** Worked by enumeration: P(symptom) = 1 − .99·(1 − .95·.1)·(1 − .3·.1). */
    @Test
    void aFailedTryLowersItsOwnCause() {
        double none = .99 * (1 - .3 * .1);
        double seen = 1 - none * (1 - .95 * .1);
        double before = (1 - none * .05) * .1 / seen;
        // Y and leak alone: u. The symptom is there both times if u holds, or X shows it and stays.
        double u = 1 - none;
        double stays = .1 * .7;
        double both = u + (1 - u) * stays * .95;
        double now = (u + (1 - u) * .95) * stays / both;
        double past = now + u * (.1 - stays) / both;
        Diagnosis diagnosis = new Diagnostician(oneTry().book())
                .diagnose(seen().tried("reseat").look("symptom", "yes").told());

        assertThat(before).isCloseTo(.727, within(5e-4));
        assertThat(chance(oneTry(), seen(), "x")).isCloseTo(before, within(1e-9));
        assertThat(past).as("drawing links afresh would give .883").isCloseTo(.655, within(5e-4));
        assertThat(diagnosis.solution().probability("cause.x.v0")).isCloseTo(past, within(1e-9));
        assertThat(diagnosis.chanceOf("x")).isCloseTo(now, within(1e-9));
    }

    @Test
    void reseatingExplainsThePastWithoutBlamingThePresent() {
        Story cured = seen().tried("reseat").look("symptom", "no");
        Diagnosis diagnosis = new Diagnostician(oneTry().book()).diagnose(cured.told());

        assertThat(diagnosis.chanceOf("x")).isLessThan(1e-9);
        assertThat(diagnosis.solution().probability("cause.x.v0")).isGreaterThan(.999);
        assertThat(diagnosis.chanceOf("y")).isLessThan(.1);
    }

    @Test
    void lookingAgainAfterAnIrrelevantTryMovesNothingWhenTheReadingIsRepeated() {
        Rules rules = new Rules()
                .cause("x", .1)
                .cause("y", .2)
                .observation("symptom", .01, OptionalDouble.empty(), 1)
                .sign("x", "symptom", .9)
                .tryOut("other", Map.of("y", .5), Map.of("y", .01));
        double before = chance(rules, new Story(Rules.FAMILY).look("symptom", "yes"), "x");
        double after = chance(
                rules,
                new Story(Rules.FAMILY).look("symptom", "yes").tried("other").look("symptom", "yes"),
                "x");

        assertThat(after).isCloseTo(before, within(1e-12));
    }

    @Test
    void aDamagingTryCanAddACause() {
        Rules rules = oneTry().cause("z", .001).sign("z", "symptom", .9).tryOut("pry", Map.of(), Map.of("z", .2));

        assertThat(chance(rules, new Story(Rules.FAMILY).tried("pry"), "z")).isCloseTo(.001 + .999 * .2, within(1e-12));
        assertThat(chance(
                        rules,
                        new Story(Rules.FAMILY)
                                .look("symptom", "no")
                                .tried("pry")
                                .look("symptom", "yes"),
                        "z"))
                .isGreaterThan(.9);
    }

    @Test
    void aRepairedCauseIsLowAfterACleanLookAndHighAgainWhenTheSymptomReturns() {
        Rules rules = oneTry().partFor("display", "x").grade("pulled", .15);
        Story clean = seen().repaired("display", "pulled").look("symptom", "no");

        assertThat(chance(rules, seen().repaired("display", "pulled"), "x")).isCloseTo(.15, within(1e-9));
        assertThat(chance(rules, clean, "x")).isLessThan(.02);
        assertThat(chance(rules, clean.meanwhile("in-use").look("symptom", "yes"), "x", "in-use"))
                .isGreaterThan(.1);
    }

    private static double chance(Rules rules, Story story, String cause, String lapse) {
        return chance(rules.lapse(lapse, Map.of(cause, .05), Map.of()), story, cause);
    }

    @Test
    void aNewPartCanBeBad() {
        Rules rules = oneTry().partFor("display", "x").grade("pulled", .15);

        assertThat(chance(rules, seen().repaired("display", "pulled").look("symptom", "yes"), "x"))
                .isGreaterThan(.15);
    }

    @Test
    void oneNotSeenIsWeakEvidenceAgainstAFitfulFault() {
        Rules steady = new Rules().cause("x", .3).observation("flicker", .001).sign("x", "flicker", .95);
        Rules fitful = new Rules()
                .cause("x", .3)
                .observation("flicker", .001, OptionalDouble.of(.3), .9)
                .sign("x", "flicker", .95);
        Story notSeen = new Story(Rules.FAMILY).look("flicker", "no");

        assertThat(chance(steady, notSeen, "x")).isLessThan(.05);
        assertThat(chance(fitful, notSeen, "x")).isBetween(.2, .3);
        assertThat(chance(fitful, notSeen.look("flicker", "no"), "x"))
                .isLessThan(chance(fitful, new Story(Rules.FAMILY).look("flicker", "no"), "x"));
    }

    @Test
    void aClaimMovesLessThanALookAndALookLessThanAMeasurement() {
        Rules rules = new Rules().cause("x", .1).observation("symptom", .01).sign("x", "symptom", .9);
        double[] chances = Arrays.stream(EvidenceKind.values())
                .mapToDouble(
                        kind -> chance(rules, new Story(Rules.FAMILY).report(kind, "anyone", "symptom", "yes"), "x"))
                .toArray();

        assertThat(chances).isSorted().doesNotHaveDuplicates();
        assertThat(chances[0]).isGreaterThan(.1);
    }

    @Test
    void cannotTellChangesNothing() {
        Rules rules = oneTry();

        assertThat(chance(rules, seen().look("symptom", "cant-tell"), "x")).isEqualTo(chance(rules, seen(), "x"));
    }

    @Test
    void withdrawingRestoresTheEarlierAnswerToTheLastBit() {
        Rules rules = oneTry();

        assertThat(chance(
                        rules,
                        seen().tried("reseat")
                                .look("symptom", "yes")
                                .withdrawn("e3")
                                .withdrawn("e2"),
                        "x"))
                .isEqualTo(chance(rules, seen(), "x"));
    }

    @Test
    void entriesThatCommuteMayBeRecordedInEitherOrder() {
        Rules rules =
                oneTry().observation("other", .02).sign("y", "other", .8).tryOut("wipe", Map.of("y", .4), Map.of());
        Story oneWay = seen().look("other", "yes").tried("reseat").tried("wipe").look("symptom", "yes");
        Story other = new Story(Rules.FAMILY)
                .look("other", "yes")
                .look("symptom", "yes")
                .tried("wipe")
                .tried("reseat")
                .look("symptom", "yes");

        for (String cause : new String[] {"x", "y"}) {
            assertThat(chance(rules, oneWay, cause)).isCloseTo(chance(rules, other, cause), within(1e-12));
        }
    }

    /** y is brought about by the throw that always holds or, where x is there, by either of two. */
    @Test
    void whatIsTheMatterAlreadyMakesDamageLikelier() {
        Rules rules = worsening();
        double given = 1 - (1 - .05) * (1 - .4);

        assertThat(chance(rules, new Story(Rules.FAMILY).tried("fold"), "y"))
                .isCloseTo(.1 + .9 * (.2 * given + .8 * .05), within(1e-12));
    }

    /** Once y is seen the fold is the likelier culprit, and it breaks mostly what x had weakened. */
    @Test
    void damageThatIsSeenSpeaksForWhatMadeItLikelier() {
        double given = 1 - (1 - .05) * (1 - .4);
        double yWithX = .1 + .9 * given;
        double yWithout = .1 + .9 * .05;
        double seen = .2 * (.01 + .99 * .8 * yWithX);
        double otherwise = .8 * (.01 + .99 * .8 * yWithout);
        double so = .95 * seen + .02 * (.2 - seen);
        double not = .95 * otherwise + .02 * (.8 - otherwise);

        assertThat(chance(worsening(), new Story(Rules.FAMILY).tried("fold").look("symptom", "yes"), "x"))
                .isCloseTo(so / (so + not), within(1e-9));
        assertThat(so / (so + not)).isGreaterThan(.35);
    }

    private static Rules worsening() {
        return new Rules()
                .cause("x", .2)
                .cause("y", .1)
                .observation("symptom", .01)
                .sign("y", "symptom", .8)
                .tryOut("fold", Map.of(), Map.of("y", .05))
                .damagesWhere("fold", "x", "y", .4);
    }

    /** The first step breaks x in half of all phones, and only where it did does the second bring about y. */
    @Test
    void aStepOfOpeningFindsThePhoneAsTheStepBeforeLeftIt() {
        Rules rules = new Rules()
                .cause("x", .001)
                .cause("y", .001)
                .access("back-off", Map.of("x", .5))
                .access("lid-off", Optional.of("back-off"), Map.of())
                .openingDamagesWhere("lid-off", "x", "y", .6);
        double broken = .001 + .999 * .5;

        assertThat(chance(rules, new Story(Rules.FAMILY).opened("lid-off"), "y"))
                .isCloseTo(.001 + .999 * broken * .6, within(1e-12));
        assertThat(chance(rules, new Story(Rules.FAMILY).opened("back-off").opened("lid-off"), "y"))
                .isCloseTo(.001 + .999 * broken * .6, within(1e-12));
    }
}
