package hingewise.offer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.casefile.Story;
import hingewise.decision.Act;
import hingewise.decision.Cure;
import hingewise.decision.Ending;
import hingewise.decision.Gate;
import hingewise.decision.Harm;
import hingewise.decision.Look;
import hingewise.decision.Need;
import hingewise.decision.Policy;
import hingewise.decision.Problem;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.Diagnostician;
import hingewise.diagnosis.PossiblePhones;
import hingewise.planning.BenchPolicy;
import hingewise.rulebook.Access;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Rules;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * A policy followed in all ways a phone may be: fault a in four of ten phones, fault b in one of a thousand; sign s shows
 * with .9 under a and with .1 without a fault. Compared with sums over all that may happen.
 */
class FollowingTest {
    private static final RuleBook BOOK = new Rules()
            .cause("a", .4)
            .cause("b", .001)
            .observation("s", .1)
            .sign("a", "s", .9)
            .access("back-off", Map.of())
            .tryOut("look", Map.of(), Map.of())
            .tryOut("try", Optional.of("back-off"), Map.of("a", .7), Map.of())
            .book();

    private static final Diagnosis DIAGNOSIS = new Diagnostician(BOOK).diagnose(new Story(Rules.FAMILY).told());
    private static final Ways WAYS = new Ways(DIAGNOSIS, 11);
    private static final Bench NOW = Bench.of(DIAGNOSIS, WAYS);
    private static final double IF_SHOWN = .95;
    private static final double IF_NOT = 1 - .98;
    /** What a look says yes to: 1 - .9 * .1 shows under the fault, .1 else. */
    private static final double YES_IF_A = .91 * IF_SHOWN + .09 * IF_NOT;

    private static final double YES_ELSE = .1 * IF_SHOWN + .9 * IF_NOT;

    private static Look look(int reading) {
        return new Look(0, IF_SHOWN, IF_NOT, reading);
    }

    private static Act looking(double cost, Need... needs) {
        return new Act("look", cost, Gate.NONE, List.of(needs), List.of(look(0)), List.of(), List.of());
    }

    private static Act trying(double cost) {
        return new Act("try", cost, 0, List.of(), List.of(look(1)), List.of(new Cure(0, .7)), List.of());
    }

    private static Policy decide() {
        return new Policy.Decide(1, 0, 0);
    }

    private static Policy.Branch said(boolean yes, Policy next) {
        return new Policy.Branch(Optional.of(Map.of(0, yes)), 0, next);
    }

    private static Policy step(int act, long opens, Policy.Branch... branches) {
        return new Policy.Do(1, 0, act, opens, List.of(branches));
    }

    private static BenchPolicy guide(Policy policy, Act... acts) {
        Problem problem = new Problem(
                3,
                0,
                List.of(0.0, 0.0),
                1,
                List.of(new Gate(Gate.NONE, 12, List.of(new Harm(1, .1, 0)), true)),
                List.of(acts),
                List.of(Ending.flat("end", 0, false)));
        return new BenchPolicy(
                problem,
                policy,
                List.of(BOOK.causes().get("a"), BOOK.causes().get("b")),
                List.of(BOOK.observations().get("s")),
                Arrays.stream(acts).map(a -> confirmation(a.id())).toList(),
                List.of(access()));
    }

    private static Confirmation confirmation(String id) {
        return Optional.ofNullable(BOOK.confirmations().get(id)).orElseThrow();
    }

    private static Access access() {
        return Optional.ofNullable(BOOK.access().get("back-off")).orElseThrow();
    }

    /** Repairing pays where fault a is there by now, selling brings the same in any way. */
    private static List<Choice> choices(Bench bench, long repaired) {
        BitSet a = bench.ways().withCause("a");
        long[] repair = IntStream.range(0, WAYS.count())
                .mapToLong(w -> a.get(w) ? repaired : 0)
                .toArray();
        long[] sell = new long[repair.length];
        Arrays.fill(sell, 4_000);
        return List.of(new Choice("repair", repair), new Choice("sell", sell));
    }

    private static Knowledge follow(BenchPolicy guide, long repaired) {
        return new Following(
                        guide,
                        NOW,
                        2,
                        (known, bench) ->
                                new State(known.chances(), choices(bench, repaired), known.spent()).expected(0))
                .after(List.of());
    }

    private static Knowledge always(BenchPolicy guide) {
        return new Following(guide, NOW, 2, (known, bench) -> known.spent() + 1).after(List.of());
    }

    private static Deal deal(Knowledge knowledge, long repaired) {
        return Lottery.deal(knowledge.states(b ->
                choices(b == Knowledge.UNTOUCHED ? NOW : knowledge.benches().get(b), repaired)));
    }

    private static double chance(Knowledge.Outcome outcome) {
        return Arrays.stream(outcome.chances()).sum();
    }

    @Test
    void whereTheBestRouteDiffersByFindingTheCeilingIsThatOfTheEnumeration() {
        Knowledge sheet = follow(guide(step(0, 0, said(true, decide()), said(false, decide())), looking(.5)), 10_000);
        double exact = .4 * YES_IF_A * 10_000 + (.4 * (1 - YES_IF_A) + .6 * (1 - YES_ELSE)) * 4_000 - 50;
        Deal deal = deal(sheet, 10_000);
        assertThat(deal.ceiling()).hasValue((long) exact);
        assertThat(deal(Knowledge.none(WAYS.weights()), 10_000).ceiling()).hasValue(4_000);
        assertThat(deal.withPerfectInformation(choices(NOW, 10_000)).ceiling()).hasValue(6_400);
        assertThat(sheet.sheet()).containsExactly("look");
    }

    @Test
    void whereDecidingIsWorthMoreThePolicyIsLeft() {
        Knowledge sheet = follow(guide(step(0, 0, said(true, decide()), said(false, decide())), looking(25)), 10_000);
        assertThat(sheet.outcomes()).hasSize(1);
        assertThat(sheet.sheet()).isEmpty();
        assertThat(deal(sheet, 10_000).ceiling()).hasValue(4_000);
    }

    @Test
    void aReportAfterWhichNothingIsPlannedIsNotGoneBy() {
        Knowledge sheet = follow(
                guide(step(0, 0, said(true, new Policy.Unplanned(.1, 0, 0)), said(false, decide())), looking(.5)),
                1_000_000);
        assertThat(sheet.outcomes()).hasSize(1);
        assertThat(chance(sheet.outcomes().get(0))).isCloseTo(1, within(1e-9));
    }

    /** Whether the fault shows is drawn once: what a failed try left shows again. */
    @Test
    void aTryCuresInItsShareAndWhatItLeftShowsAgain() {
        Policy afterYes = step(1, 1, said(true, decide()), said(false, decide()));
        Knowledge sheet =
                always(guide(step(0, 0, said(true, afterYes), said(false, decide())), looking(.5), trying(1)));
        double both = 0;
        double left = 0;
        for (int i = 0; i < 16; i++) {
            boolean a = (i & 1) == 1;
            boolean link = (i & 2) == 2;
            boolean leak = (i & 4) == 4;
            boolean cured = (i & 8) == 8;
            double chance = (a ? .4 : .6) * (link ? .9 : .1) * (leak ? .1 : .9) * (cured ? .7 : .3);
            chance *= a && link || leak ? IF_SHOWN : IF_NOT;
            chance *= a && link && !cured || leak ? IF_SHOWN : IF_NOT;
            both += chance;
            left += a && !cured ? chance : 0;
        }
        List<Knowledge.Outcome> tried = sheet.outcomes().stream()
                .filter(o -> o.bench() != Knowledge.UNTOUCHED)
                .toList();
        assertThat(tried).hasSize(2);
        Knowledge.Outcome again = tried.get(1);
        BitSet there = sheet.benches().get(again.bench()).ways().withCause("a");
        double within = there.stream().mapToDouble(w -> again.chances()[w]).sum();
        assertThat(chance(again)).isCloseTo(both, within(5 * Math.sqrt(both * (1 - both) / WAYS.count())));
        assertThat(within).isCloseTo(left, within(5 * Math.sqrt(left * (1 - left) / WAYS.count())));
    }

    @Test
    void openingIsSpentClosesTheReturnAndMayHarm() {
        Policy policy = step(0, 1, said(true, decide()), said(false, decide()));
        Knowledge sheet = always(guide(policy, trying(1)));
        Bench opened = sheet.benches().get(0);
        assertThat(sheet.outcomes()).allSatisfy(o -> assertThat(o.spent()).isEqualTo(1_300));
        assertThat(opened.opened()).isTrue();
        assertThat(opened.open()).containsExactly("back-off");
        assertThat(opened.tried()).containsExactly("try");
        assertThat(opened.ways().withCause("b").cardinality() / (double) WAYS.count())
                .isCloseTo(.1, within(.01));
        assertThat(WAYS.withCause("b").cardinality()).isLessThan(20);
    }

    /** b comes by a throw that always holds and, where a is there, by another of its own. */
    @Test
    void harmThatHangsOnAnotherFaultComesWhereThatIs() {
        Act fold = new Act(
                "try",
                1,
                Gate.NONE,
                List.of(),
                List.of(look(0)),
                List.of(),
                List.of(new Harm(1, .3, 0), new Harm(1, .3, 0b01)));
        Knowledge sheet = always(guide(step(0, 0, said(true, decide()), said(false, decide())), fold));
        Ways after = sheet.benches().get(0).ways();
        BitSet both = after.withCause("b");
        both.and(after.withCause("a"));
        double withA = after.withCause("a").cardinality();
        double without = after.count() - withA;
        assertThat(both.cardinality() / withA).isCloseTo(1 - .7 * .7, within(5 * Math.sqrt(.25 / withA)));
        assertThat((after.withCause("b").cardinality() - both.cardinality()) / without)
                .isCloseTo(.3, within(5 * Math.sqrt(.25 / without)));
    }

    @Test
    void whatMustBeAnsweredFirstIsPaidForAloneWhereTheActIsLeft() {
        Need need = new Need(look(0), true, .25);
        Policy policy = step(
                0, 0, said(true, decide()), said(false, decide()), new Policy.Branch(Optional.empty(), 0, decide()));
        Knowledge sheet = always(guide(policy, looking(2, need)));
        assertThat(sheet.outcomes()).extracting(Knowledge.Outcome::spent).containsExactlyInAnyOrder(25L, 225L);
        double met = sheet.outcomes().stream()
                .filter(o -> o.spent() == 225)
                .mapToDouble(FollowingTest::chance)
                .sum();
        assertThat(met)
                .as("asked and looked at alike, it reads alike")
                .isCloseTo(.4 * YES_IF_A + .6 * YES_ELSE, within(5 * Math.sqrt(.25 / WAYS.count())));
    }

    @Test
    void theCeilingLiesBetweenAFixedRouteAndPerfectInformation() {
        int between = 0;
        for (long seed = 1; seed <= 40; seed++) {
            Random random = new Random(seed);
            long repaired = 4_000 + random.nextInt(16_000);
            List<Policy.Branch> branches = new ArrayList<>(List.of(
                    said(true, step(1, 1, said(true, decide()), said(false, decide()))), said(false, decide())));
            BenchPolicy guide = guide(
                    step(0, 0, branches.toArray(Policy.Branch[]::new)),
                    looking(10 * random.nextDouble()),
                    trying(5 * random.nextDouble()));
            Deal deal = deal(follow(guide, repaired), repaired);
            long fixed =
                    deal(Knowledge.none(WAYS.weights()), repaired).ceiling().orElse(-1);
            long perfect = deal.withPerfectInformation(choices(NOW, repaired))
                    .ceiling()
                    .orElse(-1);
            assertThat(deal.ceiling().orElse(-1)).as("seed %d", seed).isBetween(fixed, perfect);
            between += deal.ceiling().orElse(-1) > fixed ? 1 : 0;
        }
        assertThat(between).isGreaterThan(10);
    }

    @Test
    void aLookOnTheDeskReadsLikeThatOfTheSheet() {
        BenchPolicy guide = guide(step(0, 0, said(true, decide()), said(false, decide())), looking(.5));
        Looks.Look desk = new Looks.Look(
                confirmation("try"),
                guide.signs().get(0),
                WAYS.reports(guide.signs().get(0), new PossiblePhones.Look(IF_SHOWN, IF_NOT))
                        .orElseThrow(),
                0);
        Knowledge all = new Following(guide, NOW, 2, (known, bench) -> known.spent() + 1).after(List.of(desk));
        assertThat(all.outcomes())
                .as("the second look says what the first said")
                .hasSize(2);
        assertThat(all.looks()).containsExactly("try");
        assertThat(all.sheet()).containsExactly("look");
    }
}
