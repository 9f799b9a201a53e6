package hingewise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Story;
import hingewise.rulebook.Cause;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Rules;
import hingewise.rulebook.yaml.RuleBookReader;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Phones drawn by chance are as the exact answers say, within five standard errors. */
class PossiblePhonesTest {
    private static final int COUNT = 20_000;
    private static final long SEED = 20261125;

    /** The phones in which an observation would be so if it were made now. */
    private static BitSet showing(PossiblePhones phones, String observation) {
        PossiblePhones.Showing showing = phones.showing(observation);
        BitSet shows = (BitSet) showing.otherwise().clone();
        showing.by().forEach((cause, in) -> {
            BitSet both = (BitSet) in.clone();
            both.and(phones.with(cause));
            shows.or(both);
        });
        return shows;
    }

    private static void isNear(String what, int drawn, double chance) {
        double error = 5 * Math.sqrt(chance * (1 - chance) / COUNT) + 1.0 / COUNT;
        assertThat((double) drawn / COUNT).as(what + ", seed " + SEED).isCloseTo(chance, within(error));
    }

    private static void agree(RuleBook rules, CaseFile file, List<String> observations) {
        Diagnosis diagnosis = new Diagnostician(rules).diagnose(file);
        PossiblePhones phones = diagnosis.possiblePhones(COUNT, SEED);
        List<Cause> causes = rules.causesOf(file.phone().family());
        causes.forEach(c -> isNear(c.id(), phones.with(c.id()).cardinality(), diagnosis.chanceOf(c.id())));
        for (String observation : observations) {
            CauseOutlook outlook = diagnosis.outlook(observation);
            BitSet shows = showing(phones, observation);
            isNear(observation, shows.cardinality(), outlook.yes());
            for (Cause cause : causes) {
                BitSet both = (BitSet) shows.clone();
                both.and(phones.with(cause.id()));
                isNear(
                        cause.id() + " and " + observation,
                        both.cardinality(),
                        outlook.yes() * outlook.ifYes().getOrDefault(cause.id(), 0.0));
            }
        }
    }

    /** What was seen is so in most phones but not in all; what was not looked at follows from the causes. */
    @Test
    void drawnPhonesAreAsTheShippedRulesSay() {
        RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
        Story story = new Story("clamshell")
                .look("dead-cover-screen", "yes")
                .look("back-loose", "yes")
                .look("screws-missing", "yes")
                .look("vibrates-no-image", "no")
                .opened("batteries-off")
                .tried("reseat-cover-cable")
                .look("dead-cover-screen", "yes");
        agree(rules, story.told(), List.of("dead-cover-screen", "back-loose", "cover-cracked", "was-opened"));
    }

    private static Rules twoCauses() {
        return new Rules()
                .cause("x", .3)
                .cause("y", .2)
                .observation("dark", .05)
                .sign("x", "dark", .6)
                .sign("y", "dark", .4);
    }

    /** What a cause showed before a try that left it there it goes on showing. */
    @Test
    void drawnPhonesKeepWhatTheyShowed() {
        Rules rules = twoCauses().tryOut("reseat", Map.of("x", .3), Map.of("y", .1));
        Story story = new Story(Rules.FAMILY).look("dark", "yes").tried("reseat");
        agree(rules.book(), story.told(), List.of("dark"));
        agree(rules.book(), story.look("dark", "no").told(), List.of("dark"));
    }

    @Test
    void theSameCaseDrawsTheSamePhones() {
        Diagnosis diagnosis = new Diagnostician(twoCauses().book())
                .diagnose(new Story(Rules.FAMILY).look("dark", "yes").told());
        PossiblePhones one = diagnosis.possiblePhones(100, 3);
        PossiblePhones same = diagnosis.possiblePhones(100, 3);
        assertThat(one.with("x"))
                .isEqualTo(same.with("x"))
                .isNotEqualTo(diagnosis.possiblePhones(100, 4).with("x"));
        assertThat(one.showing("dark")).isEqualTo(same.showing("dark"));
    }

    /** What cannot be brought about is not drawn for phones without it; of those that have it nothing becomes another. */
    @Test
    void whatCannotComeAboutIsNotDrawn() {
        PossiblePhones phones = new Diagnostician(twoCauses().book())
                .diagnose(new Story(Rules.FAMILY).look("dark", "yes").told())
                .possiblePhones(COUNT, SEED);
        Map<String, BitSet> all = phones.showing("dark").by();
        Map<String, BitSet> some = phones.showing("dark", "y"::equals).by();
        BitSet shown = (BitSet) Objects.requireNonNull(all.get("x")).clone();
        assertThat(shown.intersects(some.get("x"))).isTrue();
        shown.and(phones.with("x"));
        assertThat(some.get("x")).isEqualTo(shown);
        BitSet without = (BitSet) Objects.requireNonNull(some.get("y")).clone();
        without.andNot(phones.with("y"));
        isNear(
                "y without it",
                (int) ((long) without.cardinality()
                        * COUNT
                        / (COUNT - phones.with("y").cardinality())),
                .4);
    }
}
