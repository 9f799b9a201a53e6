package hingewise.listings;

import static java.util.stream.Collectors.toMap;
import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;

import hingewise.rulebook.Moment;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The labelled texts are sound measures: every label can be given, and each file holds enough of everything. */
class LabelledTextsTest {
    private static final Pattern APART = Pattern.compile("[^\\p{L}\\p{N}]+");

    private final RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
    private final List<LabelledText> written = LabelledText.read("written.yaml");
    private final List<LabelledText> fresh = LabelledText.read("fresh.yaml");
    private final List<LabelledText> added = LabelledText.readAdded();
    private final List<LabelledText> kept = LabelledText.read("held-out.yaml");

    LabelledTextsTest() throws IOException {}

    @Test
    void everyLabelIsSomethingAListingOfThatFamilyMaySay() {
        for (LabelledText text : all().toList()) {
            List<String> sayable = rules.observationsOf(text.family()).stream()
                    .filter(o -> o.moments().contains(Moment.LISTING))
                    .map(Observation::id)
                    .toList();
            assertThat(sayable).as(text.id()).containsAll(text.labels().keySet());
        }
    }

    @Test
    void noLabelRulesOutAnother() {
        for (LabelledText text : all().toList()) {
            Map<String, Observation> asked =
                    rules.observationsOf(text.family()).stream().collect(toMap(Observation::id, Function.identity()));
            assertThat(text.labels().keySet())
                    .as(text.id())
                    .allMatch(id -> asked.get(id).askable(text.labels()));
        }
    }

    /** The couplings that the guide at the head of written.yaml lays down. */
    @ParameterizedTest
    @CsvSource({
        "charges-only-wirelessly, charges-only-by-cable, false",
        "charges-only-wirelessly, charges-not-at-all, false",
        "charges-only-by-cable, charges-only-wirelessly, false",
        "charges-only-by-cable, charges-not-at-all, false",
        "vibrates-no-image, no-sign-of-life, false",
        "buzzes-repeatedly, no-sign-of-life, false",
        "cover-lines, dead-cover-screen, false",
        "cover-touch-dead, dead-cover-screen, false",
        "was-repaired, was-opened, true",
        "new-fault-after-closing, was-opened, true",
        "film-missing, film-was-peeled, true",
        "back-cracked-board, back-cracked, true",
        "back-cracked-port, back-cracked, true",
    })
    void whatSettlesTwoThingsIsLabelledWithBoth(String told, String other, boolean answer) {
        assertThat(all().filter(t -> t.labels().getOrDefault(told, false)))
                .isNotEmpty()
                .allSatisfy(t -> assertThat(t.labels()).as(t.id()).containsEntry(other, answer));
    }

    @Test
    void noTextStandsTwiceNotEvenAcrossTheFiles() {
        assertThat(all().map(LabelledText::id)).doesNotHaveDuplicates();
        assertThat(all().map(t -> APART.matcher(t.text().toLowerCase(Locale.ROOT))
                        .replaceAll(" ")
                        .strip()))
                .doesNotHaveDuplicates()
                .allMatch(words -> !words.isEmpty());
    }

    /** What the later hands keep apart has an id of its own kind, and their heaps are counted by themselves. */
    @Test
    void aThirdIsKeptApart() {
        long first = kept.stream().filter(t -> !t.id().startsWith("kept3-")).count();
        long heap = written.size() + fresh.size() + first;
        assertThat(heap).isGreaterThanOrEqualTo(240);
        assertThat((double) first / heap).isBetween(1.0 / 3, .37);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de", "en"})
    void aThirdOfWhatAFurtherHandWroteIsKeptApart(String hand) {
        long apart =
                kept.stream().filter(t -> t.id().startsWith("kept3-" + hand)).count();
        long shown =
                added.stream().filter(t -> t.id().startsWith("fresh-" + hand)).count();
        assertThat((double) apart / (shown + apart)).isBetween(.3, .37);
    }

    @Test
    void eachFileHoldsBothLanguagesAndTextsThatSayNothing() {
        for (List<LabelledText> file : List.of(written, fresh, kept)) {
            assertThat(file).extracting(LabelledText::language).containsOnly("en", "de");
            assertThat(share(file, t -> t.language().equals("de"))).isBetween(.18, .32);
            assertThat(share(file, t -> t.labels().isEmpty())).isBetween(.06, .14);
            assertThat(share(file, t -> t.family().equals("book"))).isBetween(.35, .65);
        }
    }

    @Test
    void nineInTenObservationsOfTheListingMomentAreLabelledSomewhere() {
        Set<String> labelled = all().flatMap(t -> t.labels().keySet().stream()).collect(toSet());
        List<String> sayable = rules.observations().values().stream()
                .filter(o -> o.moments().contains(Moment.LISTING))
                .map(Observation::id)
                .toList();
        List<String> silent =
                sayable.stream().filter(id -> !labelled.contains(id)).toList();
        assertThat((double) silent.size() / sayable.size()).as("%s", silent).isLessThan(.1);
    }

    private Stream<LabelledText> all() {
        return Stream.of(written, fresh, added, kept).flatMap(List::stream);
    }

    private static double share(List<LabelledText> texts, Predicate<LabelledText> which) {
        return (double) texts.stream().filter(which).count() / texts.size();
    }
}
