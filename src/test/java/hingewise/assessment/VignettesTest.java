package hingewise.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.costing.PriceBook;
import hingewise.costing.csv.PriceBookReader;
import hingewise.costing.yaml.ShopReader;
import hingewise.diagnosis.RankedCause;
import hingewise.diagnosis.Readings;
import hingewise.rulebook.Cause;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/**
 * How well the shipped rules answer whole cases that were written without sight of their numbers. The expectations are
 * the bench's common practice, no source; every case is invented.
 *
 * <p>The rates are measured, not wished for. A floor may only be raised: change a rule that loses a case, not the floor.
 * Rules are mended after misses of the mending part alone, so that the held-out part still says how well they answer
 * cases that nobody fitted them to; for that reason its misses are not printed.
 */
class VignettesTest {
    private static final String MENDING = "mending.yaml";
    private static final String HELD_OUT = "held-out.yaml";

    /** Faults of these can be put right without tools or parts. */
    private static final Set<String> NOT_HARDWARE = Set.of(
            "settings",
            "software",
            "accessory",
            "charger-and-cable",
            "added-protector",
            "sim-card",
            "embedded-sim",
            "account-lock",
            "network-lock",
            "identity",
            "device-management",
            "part-pairing",
            "no-fault");

    /**
     * Hits of the mending part, as measured; a floor may only be raised. When looking ahead took the place of looking one
     * step ahead, right first things went from 46 to 42 here and from 16 to 19 in the held-out part; when what is left
     * was charged with all of its later repair, to 44 and 20; when
     * nothing was opened any more before it was asked whether it may be, to 46 and 21.
     */
    private static final Map<Asked, Integer> MENDING_FLOORS = Map.of(
            Asked.CAUSES, 63, Asked.FIRST_TRY, 46, Asked.PARTS, 66, Asked.STOPS, 3, Asked.GOES_ON, 63, Asked.SOUND, 9);

    /** Hits of the held-out part, as measured; a floor may only be raised. */
    private static final Map<Asked, Integer> HELD_OUT_FLOORS = Map.of(
            Asked.CAUSES, 29, Asked.FIRST_TRY, 21, Asked.PARTS, 32, Asked.STOPS, 2, Asked.GOES_ON, 29, Asked.SOUND, 2);

    private final RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
    private final PriceBook prices =
            PriceBookReader.readShipped(rules).priceBook().orElseThrow();
    private final Assessor assessor =
            new Assessor(rules, prices, ShopReader.readShipped(rules).shop().orElseThrow());

    /** What is asked of an answer; each is counted over those vignettes that say something of it. */
    private enum Asked {
        CAUSES("causes in the first three"),
        FIRST_TRY("right first thing to do"),
        PARTS("nothing ordered that must not be"),
        STOPS("stops where it must"),
        GOES_ON("goes on where nothing must stop it"),
        SOUND("sound hardware left in peace");

        private final String label;

        Asked(String label) {
            this.label = label;
        }
    }

    /** Outcome of one thing asked of one vignette. */
    private record Outcome(String vignette, Asked asked, boolean hit, String instead) {}

    @Test
    void everyVignetteSpeaksTheRuleBooksLanguage() throws IOException {
        assertThat(rules.components()).containsKeys(NOT_HARDWARE.toArray(String[]::new));
        SoftAssertions softly = new SoftAssertions();
        Set<String> ids = new HashSet<>();
        for (Vignette v : all()) {
            softly.assertThat(ids.add(v.id())).as("%s stands once", v.id()).isTrue();
            softly.assertThat(v.told().split("[.!?](\\s+|$)"))
                    .as("%s: told in sentences", v.id())
                    .hasSizeBetween(2, 5);
            softly.assertThat(rules.families()).as(v.id()).containsKey(v.family());
            softly.assertThat(v.seen()).as("%s: seen", v.id()).hasSizeBetween(4, 12);
            softly.assertThat(v.among()).as("%s: among", v.id()).hasSizeBetween(v.nothingWrong() ? 0 : 1, 3);
            softly.assertThat(v.firstTry()).as("%s: first try", v.id()).hasSizeBetween(v.stops() ? 0 : 1, 4);
            softly.assertThat(rules.causesOf(v.family()).stream().map(Cause::id))
                    .as("%s: causes of the family", v.id())
                    .containsAll(v.among());
            softly.assertThat(unknown(v.notOrdered(), rules.parts().keySet()))
                    .as("%s: parts", v.id())
                    .isEmpty();
            softly.assertThat(unknown(v.firstTry(), rules.confirmations().keySet()))
                    .as("%s: confirmations", v.id())
                    .isEmpty();
            for (Vignette.Seen seen : v.seen()) {
                softly.assertThat(rules.question(seen.about())
                                .filter(q -> q.families().contains(v.family()))
                                .map(q -> q.answers().keySet())
                                .orElse(Set.of()))
                        .as("%s: answers of %s", v.id(), seen.about())
                        .contains(seen.answer());
            }
        }
        softly.assertAll();
    }

    @Test
    void nothingAVignetteRecordsIsLeftOutOfTheReckoning() throws IOException {
        SoftAssertions softly = new SoftAssertions();
        for (Vignette v : all()) {
            softly.assertThat(Readings.of(rules, v.caseFile()).skipped())
                    .as(v.id())
                    .isEmpty();
        }
        softly.assertAll();
    }

    @Test
    void theVignettesAreManyAndOfManyKinds() throws IOException {
        List<Vignette> mending = Vignette.read(MENDING);
        List<Vignette> heldOut = Vignette.read(HELD_OUT);
        assertThat(mending).hasSizeGreaterThanOrEqualTo(66);
        assertThat(heldOut).hasSizeGreaterThanOrEqualTo(32);
        for (List<Vignette> part : List.of(mending, heldOut)) {
            assertThat(part.stream().map(Vignette::family).distinct())
                    .containsAll(rules.waysOfFolding().stream().map(f -> f.id()).toList());
            assertThat(part).anyMatch(Vignette::nothingWrong).anyMatch(Vignette::stops);
        }
        assertThat(all())
                .anyMatch(v -> v.among().size() == 3)
                .anyMatch(v -> v.among().size() == 2);
    }

    @Test
    void mendingVignettesAreAnsweredNoWorseThanBefore() throws IOException {
        List<Outcome> outcomes = answer(Vignette.read(MENDING));
        print("mending", outcomes);
        outcomes.stream()
                .filter(o -> !o.hit())
                .forEach(o ->
                        System.out.println("  miss " + o.vignette() + ": " + o.asked().label + ": " + o.instead()));
        holds(outcomes, MENDING_FLOORS);
    }

    @Test
    void heldOutVignettesAreAnsweredNoWorseThanBefore() throws IOException {
        List<Outcome> outcomes = answer(Vignette.read(HELD_OUT));
        print("held out", outcomes);
        holds(outcomes, HELD_OUT_FLOORS);
    }

    private static List<Vignette> all() throws IOException {
        List<Vignette> all = new ArrayList<>(Vignette.read(MENDING));
        all.addAll(Vignette.read(HELD_OUT));
        return all;
    }

    private static List<String> unknown(Collection<String> ids, Set<String> known) {
        return ids.stream().filter(id -> !known.contains(id)).toList();
    }

    private List<Outcome> answer(List<Vignette> vignettes) {
        return vignettes.stream()
                .flatMap(v -> answer(v, assessor.assess(v.caseFile())))
                .toList();
    }

    private static Stream<Outcome> answer(Vignette v, Assessment answer) {
        List<RankedCause> ranked = answer.diagnosis().causes();
        List<String> three = ranked.stream().limit(3).map(c -> c.cause().id()).toList();
        Optional<String> first =
                answer.tryFirst().stream().findFirst().map(s -> s.confirmation().id());
        List<String> wrongParts = answer.parts().order().stream()
                .map(p -> p.part().id())
                .filter(v.notOrdered()::contains)
                .toList();
        List<String> blamed = ranked.stream()
                .filter(c -> c.probability() > 0.5)
                .filter(c -> !NOT_HARDWARE.contains(c.cause().component()))
                .map(VignettesTest::chance)
                .toList();
        Asked stop = v.stops() ? Asked.STOPS : Asked.GOES_ON;
        List<Outcome> outcomes = new ArrayList<>();
        if (!v.among().isEmpty()) {
            outcomes.add(new Outcome(
                    v.id(),
                    Asked.CAUSES,
                    three.containsAll(v.among()),
                    "wanted " + v.among() + ", answered "
                            + ranked.stream()
                                    .limit(3)
                                    .map(VignettesTest::chance)
                                    .toList()
                            + ", where wanted ones have "
                            + ranked.stream()
                                    .filter(c -> v.among().contains(c.cause().id()))
                                    .map(VignettesTest::chance)
                                    .toList()));
        }
        if (!v.firstTry().isEmpty()) {
            outcomes.add(new Outcome(
                    v.id(),
                    Asked.FIRST_TRY,
                    first.filter(v.firstTry()::contains).isPresent(),
                    "wanted one of " + v.firstTry() + ", answered "
                            + answer.tryFirst().stream()
                                    .limit(3)
                                    .map(s -> s.confirmation().id())
                                    .toList()));
        }
        if (!v.notOrdered().isEmpty()) {
            outcomes.add(new Outcome(v.id(), Asked.PARTS, wrongParts.isEmpty(), "ordered " + wrongParts));
        }
        outcomes.add(new Outcome(
                v.id(),
                stop,
                answer.stopped() == v.stops(),
                "standing "
                        + answer.cautions().stream()
                                .filter(ShownCaution::stops)
                                .map(c -> c.caution().id())
                                .toList()));
        if (v.nothingWrong()) {
            outcomes.add(new Outcome(v.id(), Asked.SOUND, blamed.isEmpty(), "blamed " + blamed));
        }
        return outcomes.stream();
    }

    private static String chance(RankedCause cause) {
        return String.format(Locale.ROOT, "%s %.3f", cause.cause().id(), cause.probability());
    }

    private static void print(String part, List<Outcome> outcomes) {
        System.out.println("Vignettes, " + part + ":");
        for (Asked asked : Asked.values()) {
            long of = outcomes.stream().filter(o -> o.asked() == asked).count();
            long hits = hits(outcomes, asked);
            System.out.printf(Locale.ROOT, "  %-36s %2d of %2d (%.0f %%)%n", asked.label, hits, of, 100.0 * hits / of);
        }
    }

    private static long hits(List<Outcome> outcomes, Asked asked) {
        return outcomes.stream().filter(o -> o.asked() == asked && o.hit()).count();
    }

    private static void holds(List<Outcome> outcomes, Map<Asked, Integer> floors) {
        assertThat(floors).containsOnlyKeys(Asked.values());
        SoftAssertions softly = new SoftAssertions();
        floors.forEach((asked, floor) ->
                softly.assertThat(hits(outcomes, asked)).as(asked.label).isGreaterThanOrEqualTo(floor));
        softly.assertAll();
    }
}
