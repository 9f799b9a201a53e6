package hingewise.wizard.model;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Closed;
import hingewise.casefile.Meanwhile;
import hingewise.casefile.Opened;
import hingewise.casefile.Price;
import hingewise.casefile.Repair;
import hingewise.casefile.Report;
import hingewise.casefile.TimelineException;
import hingewise.casefile.Try;
import hingewise.diagnosis.CaseException;
import hingewise.diagnosis.Readings;
import hingewise.report.EntryText;
import hingewise.rulebook.Access;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Grade;
import hingewise.rulebook.Lapse;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * Records what is done to the phone. Each command says whether it was recorded; what cannot stand changes nothing and is
 * said in words.
 */
public final class Recorder {
    private final WizardModel wizard;

    Recorder(WizardModel wizard) {
        this.wizard = wizard;
    }

    /** The states of opening that the phone has, outermost first. */
    public List<Access> openings() {
        return ofFamily(r -> r.access().values(), Access::families);
    }

    /** The tries that can be done on the phone. */
    public List<Confirmation> tries() {
        return ofFamily(r -> r.confirmations().values(), Confirmation::families).stream()
                .filter(c -> c.kind() == Confirmation.Kind.TRY)
                .toList();
    }

    /** The parts that fit the phone. */
    public List<Part> parts() {
        return ofFamily(r -> r.parts().values(), Part::families);
    }

    /** The kinds of parts. */
    public List<Grade> grades() {
        return wizard.rules().map(r -> List.copyOf(r.grades().values())).orElse(List.of());
    }

    /** The ways in which the phone may change by itself. */
    public List<Lapse> lapses() {
        return wizard.rules().map(r -> List.copyOf(r.lapses().values())).orElse(List.of());
    }

    /** What a confirmation says to look at, as far as the phone has it. */
    public List<Observation> settled(Confirmation confirmation) {
        return ofFamily(r -> r.observations().values(), Observation::families).stream()
                .filter(o -> confirmation.settles().contains(o.id()))
                .toList();
    }

    /** The states that have to be gone through for a confirmation and are closed, outermost first. */
    public List<Access> opening(Confirmation confirmation) {
        return wizard.rules()
                .flatMap(r -> file().map(f -> stillClosed(r, f, confirmation)))
                .orElse(List.of());
    }

    private static List<Access> stillClosed(RuleBook rules, CaseFile file, Confirmation confirmation) {
        Set<String> open = Readings.of(rules, file).open();
        return rules.pathTo(confirmation.access()).stream()
                .filter(a -> !open.contains(a.id()))
                .toList();
    }

    /**
     * A confirmation was carried out. Where the phone was closed and had to be opened for it, that is recorded first.
     *
     * @param seen what was seen then: answers by observation
     */
    public boolean tried(Confirmation confirmation, Map<String, String> seen) {
        EvidenceKind kind = confirmation.kind() == Confirmation.Kind.QUESTION ? EvidenceKind.CLAIM : EvidenceKind.LOOK;
        return add(before -> {
            CaseFile file = before;
            if (!opening(confirmation).isEmpty()) {
                file = opened(file, confirmation.access().orElseThrow());
            }
            String id = file.nextId();
            file = file.with(new Try(id, answers().at(file), answers().by(), confirmation.id(), ""));
            for (Observation observation : settled(confirmation)) {
                String answer = seen.get(observation.id());
                if (answer != null) {
                    file = file.with(new Report(
                            file.nextId(),
                            answers().at(file),
                            answers().by(),
                            kind,
                            observation.id(),
                            answer,
                            Optional.of(id),
                            ""));
                }
            }
            return file;
        });
    }

    /** The phone was opened as far as this state. */
    public boolean opened(String access) {
        return add(f -> opened(f, access));
    }

    private CaseFile opened(CaseFile file, String access) {
        return file.with(new Opened(file.nextId(), answers().at(file), answers().by(), access, ""));
    }

    /** A price of the phone itself, as it was written. */
    public boolean price(Price.What what, String number, String currency) {
        try {
            Money amount = Price.amount(number.strip(), currency);
            return add(
                    f -> f.with(new Price(f.nextId(), answers().at(f), answers().by(), what, amount, "")));
        } catch (IllegalArgumentException e) {
            wizard.say("This was not recorded: " + e.getMessage() + ".");
            return false;
        }
    }

    /** The currency of the shop. */
    public Optional<String> currency() {
        return wizard.state().knowledge() instanceof Knowledge.Ready ready
                ? Optional.of(ready.assessor().shop().currency().getCode())
                : Optional.empty();
    }

    /** The phone was closed again. */
    public boolean closed() {
        Optional<Closed> before = file().flatMap(CaseFile::closed);
        if (before.isPresent()) {
            wizard.say("This was not recorded: the phone is closed already; record how far it was opened first.");
            return false;
        }
        return add(f -> f.with(new Closed(f.nextId(), answers().at(f), answers().by(), "")));
    }

    /** Parts were fitted. */
    public boolean repaired(List<String> parts, Optional<String> grade) {
        if (parts.isEmpty() || grade.isEmpty()) {
            wizard.say(
                    "This was not recorded: say which parts were fitted, and what kind of parts they are; then record the"
                            + " repair.");
            return false;
        }
        return add(f -> f.with(new Repair(f.nextId(), answers().at(f), answers().by(), parts, grade.get(), "")));
    }

    /** Time passed in which the phone may have changed. */
    public boolean meanwhile(String what) {
        return add(
                f -> f.with(new Meanwhile(f.nextId(), answers().at(f), answers().by(), what, "")));
    }

    /** An entry is taken back; the file keeps that there was one. */
    public boolean takenBack(String entry) {
        return add(f -> answers().takeBack(f, entry));
    }

    private boolean add(UnaryOperator<CaseFile> entries) {
        Optional<CaseFile> open = file();
        if (open.isEmpty() || !wizard.state().unread().isEmpty()) {
            return false;
        }
        CaseFile before = open.get();
        try {
            CaseFile after = entries.apply(before);
            wizard.rules().ifPresent(r -> Readings.of(r, after));
            wizard.keep(after);
            wizard.reckon();
            wizard.rules()
                    .ifPresent(r -> wizard.say(said(r, after, before.entries().size())));
            return true;
        } catch (TimelineException | CaseException e) {
            wizard.say("This was not recorded: " + Words.of(e));
            return false;
        }
    }

    private static String said(RuleBook rules, CaseFile file, int from) {
        return file.entries().subList(from, file.entries().size()).stream()
                .map(e -> "Recorded – " + EntryText.of(rules, e))
                .reduce((a, b) -> a + "\n" + b)
                .orElse("Nothing was recorded.");
    }

    private Answers answers() {
        return wizard.answers();
    }

    private Optional<CaseFile> file() {
        return wizard.state().sitting().map(Sitting::file);
    }

    private <T> List<T> ofFamily(Function<RuleBook, Collection<T>> all, Function<T, Set<String>> families) {
        Optional<String> family = file().map(f -> f.phone().family());
        return wizard.rules().stream()
                .flatMap(r -> family.isEmpty() ? Stream.<T>empty() : all.apply(r).stream())
                .filter(t -> family.filter(families.apply(t)::contains).isPresent())
                .toList();
    }
}
