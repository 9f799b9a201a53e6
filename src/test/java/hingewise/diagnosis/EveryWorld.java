package hingewise.diagnosis;

import hingewise.rulebook.Cause;
import hingewise.rulebook.History;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Raise;
import hingewise.rulebook.Reliability;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Sign;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Answers a case by walking through every world it may have happened in: which histories and causes there were, which
 * sign each cause shows in this phone, what each touch did. Shares nothing with the network under test; looks must be
 * independent ({@code repeat} 0).
 */
final class EveryWorld {
    private final RuleBook rules;
    private final List<Cause> causes;
    private final List<Happening> happenings;
    private final Map<String, Double> weight = new HashMap<>();
    private double total;

    private final Set<String> present = new HashSet<>();
    private final Set<String> shown = new HashSet<>();
    private final Set<String> leaked = new HashSet<>();

    private EveryWorld(RuleBook rules, String family, List<Happening> happenings) {
        this.rules = rules;
        this.causes = rules.causesOf(family);
        this.happenings = happenings;
    }

    /** Chance of each cause, as it is at the end, by id. */
    static Map<String, Double> chances(RuleBook rules, String family, List<Happening> happenings) {
        EveryWorld worlds = new EveryWorld(rules, family, happenings);
        worlds.histories(new ArrayList<>(rules.histories().values()), new HashSet<>(), 1);
        Map<String, Double> chances = new HashMap<>();
        worlds.causes.forEach(c -> chances.put(c.id(), worlds.weight.getOrDefault(c.id(), 0.0) / worlds.total));
        return chances;
    }

    private interface Then {
        void go(double p);
    }

    /** Both ways, with an element in a set or not. */
    private static void either(Set<String> set, String element, double yes, double p, Then then) {
        boolean was = set.contains(element);
        if (yes > 0) {
            set.add(element);
            then.go(p * yes);
        }
        if (yes < 1) {
            set.remove(element);
            then.go(p * (1 - yes));
        }
        if (was) {
            set.add(element);
        } else {
            set.remove(element);
        }
    }

    private void histories(List<History> left, Set<String> happened, double p) {
        if (left.isEmpty()) {
            causes(0, happened, p);
            return;
        }
        History history = left.get(0);
        either(
                happened,
                history.id(),
                history.rate().common(),
                p,
                q -> histories(left.subList(1, left.size()), happened, q));
    }

    private void causes(int k, Set<String> happened, double p) {
        if (k == causes.size()) {
            leaks(new ArrayList<>(rules.observations().values()), p);
            return;
        }
        Cause cause = causes.get(k);
        double absent = 1 - cause.baseRate().common();
        for (Raise raise : cause.raisedBy()) {
            absent *= happened.contains(raise.history()) ? 1 - raise.strength() : 1;
        }
        either(present, cause.id(), 1 - absent, p, q -> draw(cause, cause.signs(), q, r -> causes(k + 1, happened, r)));
    }

    /** Draws which signs a cause shows in this phone, if it is there. */
    private void draw(Cause cause, List<Sign> left, double p, Then then) {
        if (left.isEmpty() || !present.contains(cause.id())) {
            then.go(p);
            return;
        }
        Sign sign = left.get(0);
        either(
                shown,
                cause.id() + ">" + sign.observation(),
                sign.strength(),
                p,
                q -> draw(cause, left.subList(1, left.size()), q, then));
    }

    private void leaks(List<Observation> left, double p) {
        if (left.isEmpty()) {
            happen(0, p);
            return;
        }
        Observation observation = left.get(0);
        either(leaked, observation.id(), observation.leak(), p, q -> leaks(left.subList(1, left.size()), q));
    }

    private void happen(int i, double p) {
        if (i == happenings.size()) {
            total += p;
            present.forEach(c -> weight.merge(c, p, Double::sum));
        } else if (happenings.get(i) instanceof Reading reading) {
            happen(i + 1, p * chanceOf(reading));
        } else if (happenings.get(i) instanceof Touch touch) {
            turn(new ArrayList<>(touch.turns().entrySet()), Set.copyOf(present), p, q -> happen(i + 1, q));
        }
    }

    private double chanceOf(Reading reading) {
        String id = reading.observation().id();
        boolean so = leaked.contains(id)
                || causes.stream().anyMatch(c -> present.contains(c.id()) && shown.contains(c.id() + ">" + id));
        Reliability r = reading.observation().reliability().get(reading.entry().kind());
        double yes = so ? r.sensitivity() : 1 - r.specificity();
        return reading.yes() ? yes : 1 - yes;
    }

    /** @param before what was present when the touch began; on that hangs what it brings about */
    private void turn(List<Map.Entry<String, Turn>> left, Set<String> before, double p, Then then) {
        if (left.isEmpty()) {
            then.go(p);
            return;
        }
        Cause cause = rules.causes().get(left.get(0).getKey());
        Turn turn = left.get(0).getValue();
        boolean was = present.contains(cause.id());
        double stays = turn instanceof Turn.Change change
                ? was ? 1 - change.cured() : damaged(change, before)
                : ((Turn.Renewal) turn).bad();
        boolean drawnAfresh = !was || turn instanceof Turn.Renewal;
        either(
                present,
                cause.id(),
                stays,
                p,
                q -> draw(
                        cause,
                        drawnAfresh ? cause.signs() : List.of(),
                        q,
                        r -> turn(left.subList(1, left.size()), before, r, then)));
    }

    /** Thrown one after the other: always, and for each state that is there. */
    private static double damaged(Turn.Change change, Set<String> before) {
        double damaged = change.damage().always();
        for (Map.Entry<String, Double> state : change.damage().where().entrySet()) {
            if (before.contains(state.getKey())) {
                damaged += (1 - damaged) * state.getValue();
            }
        }
        return damaged;
    }
}
