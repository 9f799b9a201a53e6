package hingewise.simulation;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Phone;
import hingewise.casefile.Report;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.Diagnostician;
import hingewise.planning.Concern;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Question;
import hingewise.rulebook.RuleBook;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The first look at a phone drawn from a rule book, still closed: some of the questions with several answers are gone
 * through and every answer is recorded, yes or no. Which questions are asked does not hang on the phone, so what is not
 * recorded says nothing.
 */
final class Intake {
    /** Chance that a question is asked. */
    private static final double ASKED = .5;
    /** Phones are drawn until one shows something; a rule book in which none of so many does has no case. */
    private static final int PHONES = 200;

    private final RuleBook truth;
    private final String family;
    private final List<Observation> looks;

    Intake(RuleBook truth, String family) {
        this.truth = truth;
        this.family = family;
        this.looks = truth.observationsOf(family).stream()
                .filter(o -> o.access().isEmpty() && o.moments().contains(Moment.ARRIVAL))
                .toList();
    }

    /** Whose look it is. */
    static Report look(CaseFile file, EvidenceKind kind, Observation o, boolean yes) {
        return new Report(
                file.nextId(),
                Instant.EPOCH,
                kind.id(),
                kind,
                o.id(),
                yes ? Question.YES : Question.NO,
                Optional.empty(),
                "");
    }

    /** A case about which there is a complaint; empty if no phone that was drawn shows any. */
    Optional<CaseFile> file(Chance chance) {
        CaseFile nothing = new CaseFile("drawn", true, new Phone(family, ""), List.of());
        Diagnostician diagnostician = new Diagnostician(truth);
        Diagnosis before = diagnostician.chances(nothing);
        var phones = before.possiblePhones(
                PHONES, Double.doubleToLongBits(chance.of("phones").thrown()));
        for (int i = 0; i < PHONES; i++) {
            Chance own = chance.of(i);
            Specimen phone = new Specimen(phones, i, truth.causesOf(family), own.of("intake"));
            CaseFile file = nothing;
            for (Observation o : asked(own)) {
                Map<String, Boolean> latest =
                        hingewise.diagnosis.Readings.of(truth, file).latest();
                if (o.askable(latest) && latest.keySet().containsAll(o.needs().keySet())) {
                    file = file.with(look(file, EvidenceKind.LOOK, o, phone.reports(o, EvidenceKind.LOOK)));
                }
            }
            if (!Concern.of(diagnostician.chances(file)).complaints().isEmpty()) {
                return Optional.of(file);
            }
        }
        return Optional.empty();
    }

    /** What is looked at, each after what must be known before it. */
    private Set<Observation> asked(Chance chance) {
        Set<Observation> asked = new LinkedHashSet<>();
        truth.choices().values().stream()
                .filter(c -> chance.of("asks " + c.id()).thrown() < ASKED)
                .flatMap(c -> truth.question(c.id()).stream())
                .flatMap(q -> q.answers().values().stream())
                .flatMap(a -> a.settles().keySet().stream())
                .flatMap(id -> looks.stream().filter(o -> o.id().equals(id)))
                .forEach(o -> withNeeds(o, asked));
        return asked;
    }

    private void withNeeds(Observation o, Set<Observation> asked) {
        o.needs().keySet().stream()
                .sorted()
                .flatMap(id -> looks.stream().filter(n -> n.id().equals(id)))
                .filter(n -> !asked.contains(n))
                .forEach(n -> withNeeds(n, asked));
        asked.add(o);
    }
}
