package hingewise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Story;
import hingewise.rulebook.ByFamily;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Rules;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ExtremeEvidenceTest {
    /** By Bayes' rule each look multiplies the odds of .25 by one ratio; after seven the chance rounds to 1. */
    @Test
    void reasonsStayFiniteWhereTheChanceRoundsToOne() {
        Rules rules = new Rules().reliability(EvidenceKind.LOOK, .999, .999).cause("x", .2);
        Story story = new Story(Rules.FAMILY);
        for (int i = 0; i < 14; i++) {
            rules.observation("sign" + i, 1e-5).sign("x", "sign" + i, .999);
            story.look("sign" + i, "yes");
        }
        double shown = 1 - (1 - 1e-5) * (1 - .999);
        double ratio = (shown * .999 + (1 - shown) * .001) / (1e-5 * .999 + (1 - 1e-5) * .001);

        RankedCause x =
                new Diagnostician(rules.book()).diagnose(story.told()).causes().get(0);

        assertThat(x.probability()).isEqualTo(1);
        assertThat(x.reasons())
                .hasSize(14)
                .allSatisfy(r -> assertThat(r.weight()).isCloseTo(Math.log(ratio), within(1e-9)));
    }

    /** One person who goes back and forth says next to nothing; many people who disagree half and half say nothing. */
    @Test
    void aThousandReportsThatContradictEachOtherAreWeighed() {
        Rules rules = new Rules()
                .reliability(EvidenceKind.LOOK, .9, .9)
                .cause("x", .2)
                .observation("dark", .01)
                .sign("x", "dark", .9);
        Story one = new Story(Rules.FAMILY);
        Story many = new Story(Rules.FAMILY);
        for (int i = 0; i < 1000; i++) {
            one.look("dark", i % 2 == 0 ? "yes" : "no");
            many.report(EvidenceKind.LOOK, "person " + i, "dark", i % 2 == 0 ? "yes" : "no");
        }
        assertThat(chance(rules.book(), one.told())).isCloseTo(.2, within(1e-9));
        assertThat(chance(rules.book(), many.told())).isCloseTo(.2, within(1e-9));
    }

    /** Without the reasons, which would take an inference for each report. */
    private static double chance(RuleBook rules, CaseFile file) {
        Readings readings = Readings.of(rules, file);
        return new Situations(rules, Rules.FAMILY, readings.happenings())
                .solve(file.entries())
                .probability(Names.cause("x"));
    }

    @Test
    void thereIsNoCombinationWhereNoCauseIsLikelyEnough() {
        Rules rules = new Rules().cause("x", .05).cause("y", .02);
        assertThat(new Diagnostician(rules.book())
                        .diagnose(new Story(Rules.FAMILY).told())
                        .combinations())
                .isEmpty();
    }

    /** A part of a grade of which .2 are bad, split 3 : 1 as the family's own base rates are. */
    @Test
    void whatABadPartHasIsSplitByTheFamilysBaseRates() {
        Rules rules = new Rules()
                .cause("cracked", .01)
                .cause("dead", new ByFamily(.09, Map.of(Rules.FAMILY, .03)), "cracked")
                .partFor("display", "cracked")
                .grade("pulled", .2);
        Diagnosis fitted = new Diagnostician(rules.book())
                .diagnose(new Story(Rules.FAMILY).repaired("display", "pulled").told());
        assertThat(fitted.chanceOf("cracked")).isCloseTo(.05, within(1e-12));
        assertThat(fitted.chanceOf("dead")).isCloseTo(.15, within(1e-12));
    }
}
