package hingewise.report;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Closed;
import hingewise.casefile.Entry;
import hingewise.casefile.Opened;
import hingewise.casefile.Phone;
import hingewise.casefile.Repair;
import hingewise.casefile.Report;
import hingewise.casefile.Try;
import hingewise.casefile.Withdrawal;
import hingewise.report.ConditionNote.Section;
import hingewise.report.ConditionNote.Sentence;
import hingewise.report.ConditionNote.Topic;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Question;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class NoteWriterTest {
    private static final Instant AT = Instant.parse("2026-11-20T10:00:00Z");
    private final RuleBook rules = RuleBookReader.read(Path.of("src/test/resources/rules-small"))
            .ruleBook()
            .orElseThrow();

    private static Report report(String id, EvidenceKind kind, String about, String answer) {
        return new Report(id, AT, "bench", kind, about, answer, Optional.empty(), "");
    }

    private ConditionNote note(Entry... entries) {
        return NoteWriter.write(rules, new CaseFile("test", true, new Phone("clamshell", ""), List.of(entries)));
    }

    private static List<String> texts(ConditionNote note, Topic topic) {
        return note.sections().stream()
                .filter(s -> s.topic() == topic)
                .flatMap(s -> s.sentences().stream())
                .map(Sentence::text)
                .toList();
    }

    @Test
    void whatWasTestedSaysHowByWhomAndWhen() {
        ConditionNote note = note(
                report("a", EvidenceKind.LOOK, "dead-cover-screen", "no"),
                report("b", EvidenceKind.METER, "crease-blobs", "yes"));
        assertThat(texts(note, Topic.WORKS))
                .containsExactly("The outer screen works. (looked at by bench, 2026-11-20)");
        assertThat(texts(note, Topic.FAULTY))
                .containsExactly("Dark blobs at the fold of the inner screen. (measured by bench, 2026-11-20)");
        assertThat(note.invented()).isTrue();
    }

    @Test
    void aClaimIsNeverCalledTested() {
        ConditionNote note = note(report("a", EvidenceKind.CLAIM, "dead-cover-screen", "no"));
        assertThat(texts(note, Topic.CLAIMED)).hasSize(1);
        assertThat(texts(note, Topic.WORKS)).isEmpty();
        assertThat(note.notTested()).contains("outer screen dead");
    }

    @Test
    void aClaimThatWasFoundWrongIsToldWithWhatWasFound() {
        ConditionNote note = note(
                report("a", EvidenceKind.CLAIM, "dead-cover-screen", "no"),
                report("b", EvidenceKind.LOOK, "dead-cover-screen", "yes"));
        assertThat(texts(note, Topic.FAULTY)).hasSize(1);
        assertThat(texts(note, Topic.DISPUTED))
                .containsExactly(
                        "The outer screen works. (said by bench, 2026-11-20) Against it: The outer screen stays"
                                + " dark. (looked at by bench, 2026-11-20)");
    }

    @Test
    void whatWasFoundBeforeTheWorkIsNotSaidOfThePhoneAsItIs() {
        ConditionNote note = note(
                report("a", EvidenceKind.LOOK, "dead-cover-screen", "yes"),
                report("b", EvidenceKind.LOOK, "crease-blobs", "no"),
                new Opened("c", AT, "bench", "back-off", ""),
                new Try("d", AT, "bench", "reseat-cover-cable", ""));
        assertThat(texts(note, Topic.BEFORE)).hasSize(1).allMatch(t -> t.contains("outer screen"));
        assertThat(texts(note, Topic.FAULTY)).isEmpty();
        assertThat(texts(note, Topic.WORKS)).hasSize(1);
        assertThat(note.notTested()).contains("outer screen dead").doesNotContain("dark blobs at the fold");
    }

    @Test
    void afterAnOpeningWaterResistanceIsNotVerified() {
        String warning = "Water resistance is not verified after opening.";
        assertThat(texts(note(new Opened("a", AT, "bench", "back-off", "")), Topic.OPENING))
                .containsExactly("Opened: back off. (by bench, 2026-11-20)", warning);
        assertThat(texts(note(report("a", EvidenceKind.LOOK, "cover-plug-out", "no")), Topic.OPENING))
                .contains(warning);
        assertThat(note(report("a", EvidenceKind.LOOK, "back-loose", "no")).openingRecorded())
                .isFalse();
    }

    @Test
    void severalOpeningsAreWarnedOfOnce() {
        ConditionNote note = note(
                new Opened("a", AT, "bench", "back-off", ""),
                report("b", EvidenceKind.LOOK, "cover-plug-out", "yes"),
                new Closed("c", AT, "bench", ""));
        assertThat(note.sections().stream()
                        .filter(s -> s.topic() == Topic.OPENING)
                        .flatMap(s -> s.sentences().stream()))
                .extracting(Sentence::entries)
                .containsExactly(List.of("b", "a"), List.of("c"), List.of("b", "a"));
    }

    @Test
    void whatTheWorkMendedIsNoContradiction() {
        ConditionNote note = note(
                report("a", EvidenceKind.LOOK, "dead-cover-screen", "yes"),
                new Opened("b", AT, "bench", "back-off", ""),
                new Try("c", AT, "bench", "reseat-cover-cable", ""),
                report("d", EvidenceKind.LOOK, "dead-cover-screen", "no"));
        assertThat(texts(note, Topic.DISPUTED)).isEmpty();
        assertThat(texts(note, Topic.CHANGED)).hasSize(1).allMatch(t -> t.startsWith("The outer screen stays dark."));
        assertThat(texts(note, Topic.WORKS)).hasSize(1);
    }

    @Test
    void whatWasNotRepeatedAfterARepairIsNotTested() {
        ConditionNote note = note(
                report("a", EvidenceKind.LOOK, "crease-blobs", "yes"),
                report("b", EvidenceKind.LOOK, "back-bulges", "no"),
                new Opened("c", AT, "bench", "back-off", ""),
                new Repair("d", AT, "bench", List.of("inner-assembly"), "service", ""),
                report("e", EvidenceKind.LOOK, "dead-cover-screen", "no"),
                report("f", EvidenceKind.CLAIM, "crease-blobs", "no"));
        assertThat(note.notTestedHeading()).isEqualTo("Not tested since the repair");
        assertThat(note.notTested())
                .contains("dark blobs at the fold")
                .doesNotContain("outer screen dead")
                .doesNotHaveDuplicates();
        assertThat(texts(note, Topic.WORKS)).singleElement().asString().startsWith("The outer screen works.");
        assertThat(texts(note, Topic.BEFORE)).hasSize(2);
        assertThat(note(report("a", EvidenceKind.LOOK, "crease-blobs", "yes")).notTestedHeading())
                .isEqualTo("Not tested");
    }

    @Test
    void daysOfTheSameSourceAreNamedTogether() {
        ConditionNote note = note(
                report("a", EvidenceKind.LOOK, "crease-blobs", "yes"),
                new Report(
                        "b",
                        AT.plusSeconds(90_000),
                        "bench",
                        EvidenceKind.LOOK,
                        "crease-blobs",
                        "yes",
                        Optional.empty(),
                        ""));
        assertThat(texts(note, Topic.FAULTY))
                .containsExactly(
                        "Dark blobs at the fold of the inner screen. (looked at by bench, 2026-11-20, 2026-11-21)");
    }

    @Test
    void whatComesAndGoesIsNotInOrderAfterAQuietLook() {
        RuleBook shipped = RuleBookReader.readShipped().ruleBook().orElseThrow();
        ConditionNote note = NoteWriter.write(
                shipped,
                new CaseFile(
                        "test",
                        true,
                        new Phone("clamshell", ""),
                        List.of(
                                report("a", EvidenceKind.LOOK, "image-flickers", "yes"),
                                report("b", EvidenceKind.LOOK, "image-flickers", "no"))));
        assertThat(texts(note, Topic.FAULTY)).singleElement().asString().startsWith("The inner image flickers.");
        assertThat(texts(note, Topic.WORKS)).isEmpty();
        assertThat(texts(note, Topic.DISPUTED)).hasSize(1);
    }

    @Test
    void aWithdrawnEntryIsNotToldOf() {
        ConditionNote note = note(
                report("a", EvidenceKind.LOOK, "dead-cover-screen", "yes"), new Withdrawal("b", AT, "bench", "a", ""));
        assertThat(note.sections()).isEmpty();
    }

    @Test
    void everySentenceOfARandomCaseIsSaidByTheEntriesItCites() {
        for (long seed = 0; seed < 200; seed++) {
            CaseFile file = random(new Random(seed));
            Map<String, Entry> standing =
                    file.standing().stream().collect(Collectors.toMap(Entry::id, Function.identity()));
            for (Section section : NoteWriter.write(rules, file).sections()) {
                assertThat(section.sentences()).as("seed %d", seed).isNotEmpty();
                for (Sentence sentence : section.sentences()) {
                    assertThat(standing.keySet())
                            .as("seed %d: %s", seed, sentence)
                            .containsAll(sentence.entries());
                    Set<String> sayable = sentence.entries().stream()
                            .map(id -> Optional.ofNullable(standing.get(id)).orElseThrow())
                            .flatMap(e -> sayings(e).stream())
                            .collect(Collectors.toCollection(LinkedHashSet::new));
                    assertThat(sayable)
                            .as("seed %d: %s", seed, sentence)
                            .anyMatch(s -> sentence.text().startsWith(s));
                }
            }
        }
    }

    /** Everything that an entry may be cited for, worked out from the entry alone. */
    private List<String> sayings(Entry entry) {
        if (entry instanceof Try t) {
            return List.of(
                    "Tried: " + rules.confirmations().get(t.confirmation()).label());
        }
        if (entry instanceof Repair r) {
            return List.of("Fitted: " + rules.parts().get(r.parts().get(0)).label());
        }
        if (entry instanceof Opened) {
            return List.of("Opened: back off", "Water resistance is not verified");
        }
        Report report = (Report) entry;
        Question question = rules.question(report.about()).orElseThrow();
        if (report.answer().equals(Report.CANT_TELL)) {
            return List.of(question.label());
        }
        List<String> sayings = new ArrayList<>();
        question.answers().get(report.answer()).settles().forEach((id, yes) -> {
            var observation = rules.observations().get(id);
            sayings.add(yes ? observation.whenYes() : observation.whenNo());
            if (observation.access().isPresent()) {
                sayings.addAll(List.of("Opened: back off", "Water resistance is not verified"));
            }
        });
        return sayings;
    }

    private CaseFile random(Random random) {
        List<Question> questions = rules.questions();
        List<Entry> entries = new ArrayList<>();
        entries.add(new Opened("e0", AT, "x", "back-off", ""));
        int length = random.nextInt(1, 15);
        for (int i = 1; i < length; i++) {
            String id = "e" + i;
            int sort = random.nextInt(10);
            if (sort == 0) {
                entries.add(new Try(id, AT, "x", "reseat-cover-cable", ""));
            } else if (sort == 1) {
                entries.add(new Repair(id, AT, "x", List.of("inner-assembly"), "service", ""));
            } else if (sort == 2 && i > 1 && !(entries.get(i - 1) instanceof Withdrawal)) {
                entries.add(new Withdrawal(id, AT, "x", entries.get(i - 1).id(), ""));
            } else {
                Question question = questions.get(random.nextInt(questions.size()));
                List<String> answers = new ArrayList<>(question.answers().keySet());
                answers.add(Report.CANT_TELL);
                entries.add(report(
                        id,
                        EvidenceKind.values()[random.nextInt(4)],
                        question.id(),
                        answers.get(random.nextInt(answers.size()))));
            }
        }
        return new CaseFile("random", true, new Phone("clamshell", ""), entries);
    }
}
