package hingewise.wizard.model;

import hingewise.casefile.CaseFile;
import hingewise.rulebook.EvidenceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The open case and where the person is in it.
 *
 * @param occasion when the questions are asked
 * @param question the question shown; empty when nothing is left to ask at this occasion
 * @param kind whose evidence the next answer is
 * @param setAside questions left unchecked in this sitting
 * @param trail questions shown before, the last one last
 * @param acknowledged what is remembered of the cautions the person said to have read
 */
public record Sitting(
        CaseFile file,
        Occasion occasion,
        Optional<String> question,
        EvidenceKind kind,
        Set<String> setAside,
        List<String> trail,
        Set<String> acknowledged) {
    public Sitting {
        setAside = Set.copyOf(setAside);
        trail = List.copyOf(trail);
        acknowledged = Set.copyOf(acknowledged);
    }

    static Sitting of(CaseFile file) {
        Occasion occasion = Occasion.of(file);
        return new Sitting(file, occasion, Optional.empty(), occasion.usualEvidence(), Set.of(), List.of(), Set.of());
    }

    Sitting with(CaseFile changed) {
        return new Sitting(changed, occasion, question, kind, setAside, trail, acknowledged);
    }

    Sitting at(Occasion other) {
        return new Sitting(file, other, Optional.empty(), other.usualEvidence(), setAside, trail, acknowledged);
    }

    Sitting by(EvidenceKind other) {
        return new Sitting(file, occasion, question, other, setAside, trail, acknowledged);
    }

    /** Shows another question and remembers the one shown before. */
    Sitting on(Optional<String> next) {
        List<String> longer = new ArrayList<>(trail);
        question.filter(q -> !next.equals(question)).ifPresent(longer::add);
        return new Sitting(file, occasion, next, kind, setAside, longer, acknowledged);
    }

    /** Shows another question in the place of this one, which was not looked at. */
    Sitting instead(Optional<String> next) {
        return new Sitting(file, occasion, next, kind, setAside, trail, acknowledged);
    }

    /** Shows the question shown before. */
    Sitting back() {
        return trail.isEmpty()
                ? this
                : new Sitting(
                        file,
                        occasion,
                        Optional.of(trail.get(trail.size() - 1)),
                        kind,
                        setAside,
                        trail.subList(0, trail.size() - 1),
                        acknowledged);
    }

    Sitting leaving(String unchecked) {
        Set<String> more = new TreeSet<>(setAside);
        more.add(unchecked);
        return new Sitting(file, occasion, question, kind, more, trail, acknowledged);
    }

    /** Takes up again all that was left unchecked. */
    Sitting leavingNothing() {
        return new Sitting(file, occasion, question, kind, Set.of(), trail, acknowledged);
    }

    Sitting acknowledging(Set<String> read) {
        return new Sitting(file, occasion, question, kind, setAside, trail, read);
    }
}
