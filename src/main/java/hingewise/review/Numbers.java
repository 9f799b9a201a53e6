package hingewise.review;

import hingewise.rulebook.ByFamily;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.History;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Raise;
import hingewise.rulebook.Reliability;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Sign;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The numbers of a rule book that rest on judgement: base rates, rates of histories, links, leaks, cures and
 * reliabilities. A reliability that an observation takes from the rule book at large is one number, wherever it is used.
 */
final class Numbers {
    private final RuleBook rules;
    private final Move move;

    private Numbers(RuleBook rules, Move move) {
        this.rules = rules;
        this.move = move;
    }

    /** What becomes of a number. */
    interface Move {
        /** The new value; it is held within the scale afterwards. */
        double of(String name, double value);
    }

    /** Where a number may lie. */
    private enum Scale {
        LINK(.001, .999),
        RATE(1e-5, .5);

        private final double low;
        private final double high;

        Scale(double low, double high) {
            this.low = low;
            this.high = high;
        }

        double hold(double value) {
            return Math.max(low, Math.min(high, value));
        }
    }

    /** The names of all numbers, in the order of the rule book. */
    static List<String> names(RuleBook rules) {
        Map<String, Double> names = new LinkedHashMap<>();
        moved(rules, (name, value) -> {
            names.put(name, value);
            return value;
        });
        return List.copyOf(names.keySet());
    }

    /** The rule book with every number moved. A number used in several places is moved by the same name in each. */
    static RuleBook moved(RuleBook rules, Move move) {
        return new Numbers(rules, move).rules();
    }

    private RuleBook rules() {
        Map<String, History> histories = new LinkedHashMap<>();
        rules.histories().forEach((id, h) -> histories.put(id, history(h)));
        Map<String, Cause> causes = new LinkedHashMap<>();
        rules.causes().forEach((id, c) -> causes.put(id, cause(c)));
        Map<String, Observation> observations = new LinkedHashMap<>();
        rules.observations().forEach((id, o) -> observations.put(id, observation(o)));
        Map<String, Confirmation> confirmations = new LinkedHashMap<>();
        rules.confirmations().forEach((id, c) -> confirmations.put(id, confirmation(c)));
        return new RuleBook(
                rules.title(),
                rules.bench(),
                rules.words(),
                reliability("", rules.reliability()),
                rules.components(),
                rules.tools(),
                rules.families(),
                histories,
                causes,
                observations,
                rules.choices(),
                confirmations,
                rules.access(),
                rules.parts(),
                rules.cautions(),
                rules.lapses(),
                rules.grades(),
                rules.marginals(),
                rules.languages(),
                rules.hints(),
                rules.cases());
    }

    private double link(String name, double value) {
        return Scale.LINK.hold(move.of(name, value));
    }

    private double rate(String name, double value) {
        return Scale.RATE.hold(move.of(name, value));
    }

    private ByFamily byFamily(String name, ByFamily rate) {
        Map<String, Double> exceptions = new LinkedHashMap<>();
        rates(rate).forEach((family, value) -> exceptions.put(family, rate(name + " in " + family, value)));
        return new ByFamily(rate(name, rate.common()), exceptions);
    }

    /** In the order of the families, which the map of exceptions does not keep. */
    private Map<String, Double> rates(ByFamily rate) {
        Map<String, Double> rates = new LinkedHashMap<>();
        rules.families().keySet().stream()
                .filter(rate.exceptions()::containsKey)
                .forEach(f -> rates.put(f, rate.in(f)));
        return rates;
    }

    private History history(History h) {
        return new History(
                h.id(), h.label(), byFamily("rate of " + h.id(), h.rate()), signs(h.id(), h.signs()), h.grounds());
    }

    private Cause cause(Cause c) {
        return new Cause(
                c.id(),
                c.label(),
                c.component(),
                byFamily("base rate of " + c.id(), c.baseRate()),
                c.raisedBy().stream()
                        .map(r -> new Raise(
                                r.history(), link(c.id() + " raised by " + r.history(), r.strength()), r.because()))
                        .toList(),
                signs(c.id(), c.signs()),
                c.grounds());
    }

    private List<Sign> signs(String owner, List<Sign> signs) {
        List<Sign> moved = new ArrayList<>();
        for (Sign s : signs) {
            moved.add(new Sign(s.observation(), link(owner + " shows " + s.observation(), s.strength()), s.because()));
        }
        return moved;
    }

    private Observation observation(Observation o) {
        return new Observation(
                o.id(),
                o.label(),
                o.question(),
                o.look(),
                o.whenYes(),
                o.whenNo(),
                o.moments(),
                o.needs(),
                o.askedIf(),
                o.access(),
                rate("leak of " + o.id(), o.leak()),
                o.fitful(),
                o.repeat(),
                reliability(o.id(), o.reliability()),
                o.families(),
                o.pictures(),
                o.phrases(),
                o.grounds());
    }

    /** A yes must not speak against itself: the two together stay at least 1. */
    private Map<EvidenceKind, Reliability> reliability(String observation, Map<EvidenceKind, Reliability> given) {
        Map<EvidenceKind, Reliability> moved = new EnumMap<>(EvidenceKind.class);
        for (EvidenceKind kind : EvidenceKind.values()) {
            Reliability r = given.get(kind);
            if (r != null) {
                boolean own =
                        !observation.isEmpty() && !r.equals(rules.reliability().get(kind));
                String name = "reliability of " + kind.id() + (own ? " on " + observation : "");
                double yes = link(name + ", yes", r.sensitivity());
                double no = link(name + ", no", r.specificity());
                moved.put(kind, new Reliability(Math.max(yes, 1 - no), no));
            }
        }
        return moved;
    }

    private Confirmation confirmation(Confirmation c) {
        Map<String, Double> cures = new LinkedHashMap<>();
        c.cures().forEach((cause, chance) -> cures.put(cause, link(c.id() + " cures " + cause, chance)));
        return new Confirmation(
                c.id(),
                c.kind(),
                c.label(),
                c.how(),
                c.minutes(),
                c.cost(),
                c.access(),
                c.needs(),
                c.settles(),
                cures,
                c.damages(),
                c.tools(),
                c.cautions(),
                c.moments(),
                c.families(),
                c.grounds());
    }
}
