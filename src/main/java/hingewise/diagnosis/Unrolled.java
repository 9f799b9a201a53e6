package hingewise.diagnosis;

import hingewise.diagnosis.Parents.Parent;
import hingewise.inference.Evidence;
import hingewise.inference.Link;
import hingewise.inference.Network;
import hingewise.inference.NoisyOr;
import hingewise.inference.Table;
import hingewise.inference.Variable;
import hingewise.inference.Weighted;
import hingewise.rulebook.Cause;
import hingewise.rulebook.History;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The rule book of one family as a network, unrolled over a timeline. Histories raise causes, both show observations.
 * Whether this phone's cause shows a sign is drawn once per phone: a touched cause gets a new version, and what it
 * showed before it goes on showing as long as it stays. Drawing afresh after each touch would make a failed try raise
 * its own cause.
 */
final class Unrolled {
    private final RuleBook rules;
    private final String family;
    private final Parents parents;
    private final Versions versions;
    private final List<Happening> happenings;
    private final List<Variable> variables = new ArrayList<>();
    private final Map<Reading, String> variableOf = new HashMap<>();
    private final Set<String> wanted = new LinkedHashSet<>();

    Unrolled(RuleBook rules, String family, Parents parents, List<Happening> happenings) {
        this.rules = rules;
        this.family = family;
        this.parents = parents;
        this.happenings = happenings;
        this.versions = new Versions(parents, happenings);
        rules.histories().values().forEach(this::add);
        rules.causesOf(family).forEach(this::add);
        rules.observationsOf(family).forEach(this::add);
    }

    Network network() {
        return Network.of(variables);
    }

    /** Variables that readings are about. */
    Set<String> observed() {
        return new LinkedHashSet<>(variableOf.values());
    }

    /** Variables whose chances are asked for: histories, causes as they are now, and what any new look depends on. */
    Set<String> wanted() {
        return wanted;
    }

    /** Some of the readings as weighted evidence. */
    Evidence evidence(List<Reading> readings) {
        Evidence evidence = Evidence.none();
        for (Map.Entry<String, Weighted> e :
                Likelihoods.of(readings, r -> variableOf.getOrDefault(r, "")).entrySet()) {
            evidence = evidence.weighted(
                    e.getKey(), e.getValue().ifYes(), e.getValue().ifNo());
        }
        return evidence;
    }

    private void add(History history) {
        String name = Names.history(history.id());
        variables.add(new Variable(name, NoisyOr.root(history.rate().in(family))));
        wanted.add(name);
    }

    private void add(Cause cause) {
        List<Turn> turns = versions.turnsOf(cause.id());
        List<Link> raises = cause.raisedBy().stream()
                .map(r -> new Link(Names.history(r.history()), r.strength()))
                .toList();
        variables.add(new Variable(
                version(cause.id(), 0), new NoisyOr(cause.baseRate().in(family), raises)));
        for (int v = 0; v < turns.size(); v++) {
            String after = version(cause.id(), v + 1);
            if (turns.get(v) instanceof Turn.Change change) {
                variables.add(new Variable(after, table(cause.id(), v, change)));
            } else if (turns.get(v) instanceof Turn.Renewal renewal) {
                variables.add(new Variable(after, NoisyOr.root(renewal.bad())));
            }
        }
        wanted.add(Names.cause(cause.id()));
    }

    /** What a cause is after a touch, by what it was before and by what made damage likelier then. */
    private Table table(String cause, int turn, Turn.Change change) {
        List<String> states = List.copyOf(change.damage().where().keySet());
        List<String> before = new ArrayList<>(List.of(version(cause, turn)));
        states.forEach(s -> before.add(version(s, versions.before(s, cause, turn))));
        double[] yes = new double[2 << states.size()];
        for (int row = 0; row < yes.length; row++) {
            int there = row;
            yes[row] = (row >> states.size() & 1) == 1
                    ? 1 - change.cured()
                    : change.damage().chance(s -> (there >> states.size() - 1 - states.indexOf(s) & 1) == 1);
        }
        return Table.of(before, yes);
    }

    private void add(Observation observation) {
        String id = observation.id();
        Map<List<Integer>, List<Reading>> looks = new LinkedHashMap<>();
        for (int i = 0; i < happenings.size(); i++) {
            if (happenings.get(i) instanceof Reading reading
                    && reading.observation().id().equals(id)) {
                looks.computeIfAbsent(versions.seenBy(id, i), v -> new ArrayList<>())
                        .add(reading);
            }
        }
        List<Integer> now = versions.seenBy(id, happenings.size());
        List<List<Integer>> states = new ArrayList<>(looks.keySet());
        if (!states.contains(now)) {
            states.add(now);
        }
        if (states.size() == 1) {
            variables.add(new Variable(Names.observation(id), fresh(observation, now)));
        } else {
            addKept(observation, states);
        }
        looks.forEach((state, readings) ->
                readings.forEach(r -> variableOf.put(r, name(id, states.indexOf(state), states))));
    }

    private static String name(String observation, int which, List<List<Integer>> states) {
        return which == states.size() - 1 ? Names.observation(observation) : Names.past(observation, which);
    }

    private NoisyOr fresh(Observation observation, List<Integer> state) {
        List<Link> links = new ArrayList<>();
        List<Parent> own = parents.of(observation.id());
        for (int k = 0; k < own.size(); k++) {
            links.add(new Link(name(own.get(k), state.get(k)), own.get(k).strength()));
        }
        return new NoisyOr(observation.leak(), links);
    }

    /** An observation made in several states: what it showed is kept where its cause is. */
    private void addKept(Observation observation, List<List<Integer>> states) {
        String id = observation.id();
        List<Parent> own = parents.of(id);
        List<Link> untouched = new ArrayList<>();
        List<List<Link>> shown = new ArrayList<>();
        states.forEach(s -> shown.add(new ArrayList<>(List.of(new Link(Names.otherwise(id), 1)))));
        for (int k = 0; k < own.size(); k++) {
            int which = k;
            Parent parent = own.get(k);
            TreeMap<Integer, List<Integer>> byVersion = new TreeMap<>();
            for (int s = 0; s < states.size(); s++) {
                byVersion
                        .computeIfAbsent(states.get(s).get(which), v -> new ArrayList<>())
                        .add(s);
            }
            if (byVersion.size() == 1) {
                untouched.add(new Link(name(parent, byVersion.firstKey()), parent.strength()));
            } else {
                addShows(parent, id, byVersion.firstKey(), byVersion.lastKey());
                byVersion.forEach((version, in) ->
                        in.forEach(s -> shown.get(s).add(new Link(Names.shows(parent.id(), id, version), 1))));
            }
        }
        variables.add(new Variable(Names.otherwise(id), new NoisyOr(observation.leak(), untouched)));
        for (int s = 0; s < states.size(); s++) {
            variables.add(new Variable(name(id, s, states), new NoisyOr(0, shown.get(s))));
        }
        shown.get(states.size() - 1).forEach(link -> wanted.add(link.parent()));
    }

    /** Whether each version of a cause shows a sign: as before while it stays, drawn afresh when it comes anew. */
    private void addShows(Parent parent, String observation, int first, int last) {
        double strength = parent.strength();
        List<Turn> turns = versions.turnsOf(parent.id());
        for (int v = first; v <= last; v++) {
            String present = version(parent.id(), v);
            String name = Names.shows(parent.id(), observation, v);
            if (v == first || turns.get(v - 1) instanceof Turn.Renewal) {
                variables.add(new Variable(name, new NoisyOr(0, List.of(new Link(present, strength)))));
            } else {
                variables.add(new Variable(
                        name,
                        Table.of(
                                List.of(
                                        version(parent.id(), v - 1),
                                        present,
                                        Names.shows(parent.id(), observation, v - 1)),
                                0,
                                0,
                                strength,
                                strength,
                                0,
                                0,
                                0,
                                1)));
            }
        }
    }

    private String name(Parent parent, int version) {
        return parent.cause() ? version(parent.id(), version) : Names.history(parent.id());
    }

    private String version(String cause, int version) {
        return Names.cause(cause, version, versions.turnsOf(cause).size());
    }
}
