package hingewise.simulation;

import hingewise.diagnosis.PossiblePhones;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Damages;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Observation;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One phone as it truly is, and as it becomes. */
final class Specimen {
    private final PossiblePhones phones;
    private final int number;
    private final Chance chance;
    private final Set<String> present = new HashSet<>();
    private final Map<String, Integer> looks = new HashMap<>();

    /**
     * @param phones of which it is one
     * @param chance of all that happens to it
     */
    Specimen(PossiblePhones phones, int number, List<Cause> causes, Chance chance) {
        this.phones = phones;
        this.number = number;
        this.chance = chance;
        causes.stream().map(Cause::id).filter(c -> phones.with(c).get(number)).forEach(present::add);
    }

    /** Ids of the causes that are there now. */
    Set<String> present() {
        return Set.copyOf(present);
    }

    /** What somebody reports who looks now; each look is read afresh. */
    boolean reports(Observation o, EvidenceKind kind) {
        PossiblePhones.Look look = PossiblePhones.look(o, kind);
        String name = "look " + kind.id() + " " + o.id();
        return thrown(name, looks.merge(name, 1, Integer::sum)) < (shows(o.id()) ? look.ifSo() : look.ifNot());
    }

    private boolean shows(String observation) {
        PossiblePhones.Showing showing = phones.showing(observation);
        return showing.otherwise().get(number)
                || showing.by().entrySet().stream()
                        .anyMatch(e ->
                                present.contains(e.getKey()) && e.getValue().get(number));
    }

    /**
     * Something is done to it. What is cured does not come back by the same act.
     *
     * @param act names it
     * @param cures chance by cause
     * @param damages what it may bring about
     * @return ids of the causes that were brought about
     */
    Set<String> undergoes(String act, Map<String, Double> cures, Damages damages) {
        Set<String> before = present();
        Set<String> brought = new HashSet<>();
        cures.forEach((cause, share) -> {
            if (before.contains(cause) && thrown(act + " cures " + cause, 0) < share) {
                present.remove(cause);
            }
        });
        damages.causes().forEach(cause -> {
            double share = damages.to(cause).chance(before::contains);
            if (!before.contains(cause) && thrown(act + " damages " + cause, 0) < share) {
                present.add(cause);
                brought.add(cause);
            }
        });
        return brought;
    }

    /** These causes are put right. */
    void without(Set<String> causes) {
        present.removeAll(causes);
    }

    private double thrown(String name, int time) {
        return chance.of(name).of(time).thrown();
    }
}
