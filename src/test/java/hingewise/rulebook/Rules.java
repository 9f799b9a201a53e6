package hingewise.rulebook;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Small invented rule books for tests: one family "f", one component "thing" for all causes. */
public final class Rules {
    public static final String FAMILY = "f";
    private static final Grounds WHY = new Grounds("invented for a test", "invented");

    private final Map<String, History> histories = new LinkedHashMap<>();
    private final Map<String, Cause> causes = new LinkedHashMap<>();
    private final Map<String, Observation> observations = new LinkedHashMap<>();
    private final Map<String, Confirmation> confirmations = new LinkedHashMap<>();
    private final Map<String, Access> access = new LinkedHashMap<>();
    private final Map<String, Part> parts = new LinkedHashMap<>();
    private final Map<String, Component> components = new LinkedHashMap<>();
    private final Map<String, Lapse> lapses = new LinkedHashMap<>();
    private final Map<String, Grade> grades = new LinkedHashMap<>();
    private final Map<EvidenceKind, Reliability> reliability = new EnumMap<>(EvidenceKind.class);

    public Rules() {
        reliability.put(EvidenceKind.CLAIM, new Reliability(.75, .9));
        reliability.put(EvidenceKind.PHOTO, new Reliability(.85, .95));
        reliability.put(EvidenceKind.LOOK, new Reliability(.95, .98));
        reliability.put(EvidenceKind.METER, new Reliability(.99, .995));
    }

    /** Makes every report of this kind nearly certain, so that it can be compared with hard evidence. */
    public Rules reliability(EvidenceKind kind, double sensitivity, double specificity) {
        reliability.put(kind, new Reliability(sensitivity, specificity));
        return this;
    }

    public Rules history(String id, double rate) {
        histories.put(id, new History(id, id, ByFamily.always(rate), List.of(), WHY));
        return this;
    }

    public Rules cause(String id, double base) {
        String component = "part of " + id;
        components.put(component, new Component(component, component, false));
        causes.put(id, new Cause(id, id, component, ByFamily.always(base), List.of(), List.of(), WHY));
        return this;
    }

    /** Gives a cause another base rate in one family, and the same component as another cause. */
    public Rules cause(String id, ByFamily base, String sameComponentAs) {
        causes.put(id, new Cause(id, id, "part of " + sameComponentAs, base, List.of(), List.of(), WHY));
        return this;
    }

    public Rules raises(String history, String cause, double strength) {
        Cause c = causes.get(cause);
        List<Raise> raises = new ArrayList<>(c.raisedBy());
        raises.add(new Raise(history, strength, Optional.empty()));
        causes.put(cause, new Cause(c.id(), c.label(), c.component(), c.baseRate(), raises, c.signs(), WHY));
        return this;
    }

    public Rules observation(String id, double leak) {
        return observation(id, leak, OptionalDouble.empty(), .9);
    }

    public Rules observation(String id, double leak, OptionalDouble fitful, double repeat) {
        observations.put(
                id,
                new Observation(
                        id,
                        id,
                        id + "?",
                        "look",
                        id + " is seen.",
                        id + " is not seen.",
                        Set.of(Moment.values()),
                        Map.of(),
                        Map.of(),
                        Optional.empty(),
                        leak,
                        fitful,
                        repeat,
                        reliability,
                        Set.of(FAMILY),
                        false,
                        Phrases.NONE,
                        WHY));
        return this;
    }

    public Rules sign(String cause, String observation, double strength) {
        Cause c = causes.get(cause);
        List<Sign> signs = new ArrayList<>(c.signs());
        signs.add(new Sign(observation, strength, Optional.empty()));
        causes.put(cause, new Cause(c.id(), c.label(), c.component(), c.baseRate(), c.raisedBy(), signs, WHY));
        return this;
    }

    public Rules tryOut(String id, Map<String, Double> cures, Map<String, Double> damages) {
        return tryOut(id, Optional.empty(), cures, damages);
    }

    public Rules tryOut(String id, Optional<String> state, Map<String, Double> cures, Map<String, Double> damages) {
        confirmations.put(
                id,
                new Confirmation(
                        id,
                        Confirmation.Kind.TRY,
                        id,
                        "how",
                        5,
                        BigDecimal.ZERO,
                        state,
                        Map.of(),
                        Set.of(),
                        cures,
                        Damages.always(damages),
                        Set.of(),
                        Set.of(),
                        Set.of(Moment.values()),
                        Set.of(FAMILY),
                        WHY));
        return this;
    }

    /** After this try, or by this check, these are looked at. */
    public Rules seenBy(String confirmation, String... observations) {
        Confirmation c = confirmations.get(confirmation);
        return change(c, Set.of(observations), c.damages());
    }

    /** Where a cause is present, this confirmation may bring about another. */
    public Rules damagesWhere(String confirmation, String present, String brought, double chance) {
        Confirmation c = confirmations.get(confirmation);
        return change(c, c.settles(), and(c.damages(), present, brought, chance));
    }

    /** Where a cause is present, opening may bring about another. */
    public Rules openingDamagesWhere(String state, String present, String brought, double chance) {
        Access a = access.get(state);
        Damages damages = and(a.damages(), present, brought, chance);
        access.put(
                state,
                new Access(
                        a.id(),
                        a.label(),
                        a.parent(),
                        a.minutes(),
                        a.cost(),
                        a.needs(),
                        damages,
                        a.tools(),
                        a.cautions(),
                        a.families(),
                        WHY));
        return this;
    }

    private static Damages and(Damages damages, String present, String brought, double chance) {
        Map<String, Map<String, Double>> where = new LinkedHashMap<>(damages.where());
        Map<String, Double> there = new LinkedHashMap<>(where.getOrDefault(present, Map.of()));
        there.put(brought, chance);
        where.put(present, there);
        return new Damages(damages.always(), where);
    }

    private Rules change(Confirmation c, Set<String> settles, Damages damages) {
        confirmations.put(
                c.id(),
                new Confirmation(
                        c.id(),
                        c.kind(),
                        c.label(),
                        c.how(),
                        c.minutes(),
                        c.cost(),
                        c.access(),
                        c.needs(),
                        settles,
                        c.cures(),
                        damages,
                        c.tools(),
                        c.cautions(),
                        c.moments(),
                        c.families(),
                        WHY));
        return this;
    }

    /** A question to the seller that is settled by its answer to one observation. */
    public Rules question(String id, String observation, Map<String, Boolean> needs, Set<Moment> moments) {
        confirmations.put(
                id,
                new Confirmation(
                        id,
                        Confirmation.Kind.QUESTION,
                        id,
                        "how",
                        2,
                        BigDecimal.ZERO,
                        Optional.empty(),
                        needs,
                        Set.of(observation),
                        Map.of(),
                        Damages.always(Map.of()),
                        Set.of(),
                        Set.of(),
                        moments,
                        Set.of(FAMILY),
                        WHY));
        return this;
    }

    public Rules access(String id, Map<String, Double> damages) {
        return access(id, Optional.empty(), damages);
    }

    public Rules access(String id, Optional<String> parent, Map<String, Double> damages) {
        access.put(
                id,
                new Access(
                        id,
                        id,
                        parent,
                        20,
                        BigDecimal.ZERO,
                        Map.of(),
                        Damages.always(damages),
                        Set.of(),
                        Set.of(),
                        Set.of(FAMILY),
                        WHY));
        return this;
    }

    /** This state is only opened once an observation is answered so. */
    public Rules openedOnlyIf(String state, String observation, boolean answer) {
        Access a = access.get(state);
        access.put(
                state,
                new Access(
                        a.id(),
                        a.label(),
                        a.parent(),
                        a.minutes(),
                        a.cost(),
                        Map.of(observation, answer),
                        a.damages(),
                        a.tools(),
                        a.cautions(),
                        a.families(),
                        WHY));
        return this;
    }

    /** This is only asked once another observation is answered so. */
    public Rules askedOnlyIf(String observation, String before, boolean answer) {
        Observation o = observations.get(observation);
        observations.put(
                observation,
                new Observation(
                        o.id(),
                        o.label(),
                        o.question(),
                        o.look(),
                        o.whenYes(),
                        o.whenNo(),
                        o.moments(),
                        o.needs(),
                        Map.of(before, answer),
                        o.access(),
                        o.leak(),
                        o.fitful(),
                        o.repeat(),
                        o.reliability(),
                        o.families(),
                        o.pictures(),
                        o.phrases(),
                        WHY));
        return this;
    }

    /** A check from outside that answers one observation. */
    public Rules check(String id, String observation) {
        question(id, observation, Map.of(), Set.of(Moment.ARRIVAL));
        Confirmation c = confirmations.get(id);
        confirmations.put(
                id,
                new Confirmation(
                        id,
                        Confirmation.Kind.CHECK,
                        c.label(),
                        c.how(),
                        c.minutes(),
                        c.cost(),
                        c.access(),
                        c.needs(),
                        c.settles(),
                        c.cures(),
                        c.damages(),
                        c.tools(),
                        c.cautions(),
                        c.moments(),
                        c.families(),
                        WHY));
        return this;
    }

    /** A part that renews what this cause is a fault of. */
    public Rules partFor(String id, String cause) {
        return partFor(id, cause, Optional.empty());
    }

    /** The same, fitted in a state of opening. */
    public Rules partFor(String id, String cause, Optional<String> state) {
        parts.put(
                id,
                new Part(
                        id,
                        id,
                        Part.Form.SINGLE,
                        Set.of("part of " + cause),
                        Set.of(),
                        state,
                        30,
                        Set.of(FAMILY),
                        WHY));
        return this;
    }

    /** A part that renews what these causes are faults of, and needs others bought with it. */
    public Rules assembly(String id, Set<String> ofCauses, Set<String> alongside) {
        parts.put(
                id,
                new Part(
                        id,
                        id,
                        Part.Form.ASSEMBLY,
                        ofCauses.stream().map(c -> "part of " + c).collect(Collectors.toCollection(TreeSet::new)),
                        alongside,
                        Optional.empty(),
                        30,
                        Set.of(FAMILY),
                        WHY));
        return this;
    }

    public Rules grade(String id, double bad) {
        grades.put(id, new Grade(id, id, bad, WHY));
        return this;
    }

    public Rules lapse(String id, Map<String, Double> brings, Map<String, Double> clears) {
        lapses.put(id, new Lapse(id, id, brings, clears, WHY));
        return this;
    }

    public RuleBook book() {
        return new RuleBook(
                "invented",
                new Bench("EUR", WHY),
                new Words(
                        List.of(new Words.Chance(.5, "unlikely"), new Words.Chance(1, "likely")),
                        Map.of(),
                        Map.of(),
                        WHY),
                reliability,
                components,
                Map.of(),
                Map.of(FAMILY, new Family(FAMILY, FAMILY, components.keySet(), Optional.empty(), WHY)),
                histories,
                causes,
                observations,
                Map.of(),
                confirmations,
                access,
                parts,
                Map.of(),
                lapses,
                grades,
                Map.of(),
                Map.of(),
                Map.of(),
                List.of());
    }
}
