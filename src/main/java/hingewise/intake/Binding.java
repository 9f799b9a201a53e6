package hingewise.intake;

import hingewise.intake.Clause.Group;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** Finds the parts of the phone that something in a clause is said of. */
final class Binding {
    private static final int BESIDE = 2;
    private static final int PLACE = 6;

    private final Roles roles;
    private final BitSet heads;

    Binding(Roles roles, BitSet heads) {
        this.roles = roles;
        this.heads = heads;
    }

    /**
     * The parts that a mention is said of.
     *
     * @param waiting parts named just before this clause, of which nothing was said yet: "cameras, speaker and …"
     * @param spoken parts that the sentence spoke of last
     */
    List<Mention> of(Clause clause, Mention m, List<Mention> waiting, List<Mention> spoken) {
        List<Mention> near = inClause(clause, m, waiting, spoken);
        boolean aspects = !near.isEmpty() && near.stream().allMatch(t -> t.isIn(roles.aspect()));
        return aspects ? joined(near, waiting.isEmpty() ? spoken : waiting) : near;
    }

    private List<Mention> inClause(Clause clause, Mention m, List<Mention> waiting, List<Mention> spoken) {
        List<Group> groups = clause.groups(roles);
        Optional<Group> own = groups.stream()
                .filter(g -> g.from() <= m.from() && m.to() <= g.to())
                .findFirst();
        if (own.isPresent()) {
            return own.get().topics();
        }
        Optional<Group> before = groups.stream().filter(g -> g.to() <= m.from()).reduce((a, b) -> b);
        Optional<Group> after = groups.stream().filter(g -> g.from() >= m.to()).findFirst();
        if (after.isPresent() && isAttribute(clause, m, before, after.get())) {
            return after.get().topics();
        }
        List<Mention> subject = before.map(b -> together(groups, b, waiting)).orElse(List.of());
        if (after.isPresent() && isPlace(clause, m, after.get())) {
            boolean mine =
                    before.isPresent() && !headBetween(clause, before.get().to(), m.from());
            return joined(mine ? subject : List.of(), after.get().topics());
        }
        if (before.isPresent()) {
            return subject;
        }
        if (after.isPresent() && near(clause, m, after.get())) {
            return after.get().topics();
        }
        return waiting.isEmpty() ? spoken : waiting;
    }

    private static List<Mention> together(List<Group> groups, Group before, List<Mention> waiting) {
        return groups.indexOf(before) == 0 ? joined(waiting, before.topics()) : before.topics();
    }

    static List<Mention> joined(List<Mention> a, List<Mention> b) {
        List<Mention> both = new ArrayList<>(a);
        both.addAll(b);
        return both;
    }

    /** Whether it stands right before the part, as in "cracked inner screen". */
    private boolean isAttribute(Clause clause, Mention m, Optional<Group> before, Group after) {
        if (after.from() - m.to() > BESIDE || !open(clause, m.to(), after.from())) {
            return false;
        }
        boolean close = before.isPresent()
                && m.from() - before.get().to() <= BESIDE
                && !headBetween(clause, before.get().to(), m.from())
                && before.get().topics().stream().noneMatch(t -> t.isIn(roles.phone()));
        return !close || !headBetween(clause, after.to(), clause.to());
    }

    /** Whether only small words, and at most one unknown, stand between. */
    private boolean open(Clause clause, int from, int to) {
        int left = 1;
        for (int i = from; i < to; i++) {
            boolean mentioned = clause.mentioned(i);
            if (mentioned && !clause.at(i, roles.fill()) || !mentioned && left-- == 0) {
                return false;
            }
        }
        return true;
    }

    /** Whether the part is said to be the place, as in "a crack on the inner screen". */
    private boolean isPlace(Clause clause, Mention m, Group after) {
        for (int i = m.to(); i < Math.min(after.from(), m.to() + PLACE); i++) {
            if (clause.at(i, roles.of())) {
                return after.from() - i <= PLACE && noHead(clause, i, after.from());
            }
            if (clause.at(i, roles.and())) {
                return false;
            }
        }
        return false;
    }

    private boolean noHead(Clause clause, int from, int to) {
        for (int i = from; i < to; i++) {
            if (isHead(clause, i) || clause.at(i, roles.and())) {
                return false;
            }
        }
        return true;
    }

    private boolean near(Clause clause, Mention m, Group after) {
        return after.from() - m.to() <= PLACE && noHead(clause, m.to(), after.from());
    }

    private boolean headBetween(Clause clause, int from, int to) {
        for (int i = from; i < to; i++) {
            if (isHead(clause, i)) {
                return true;
            }
        }
        return false;
    }

    private boolean isHead(Clause clause, int word) {
        return clause.mentions().stream().anyMatch(o -> o.from() <= word && word < o.to() && saysSomething(o));
    }

    /** Whether a phrase may turn on it. */
    boolean mayTurnOn(Mention m) {
        return m.isInAny(heads) && !roles.helps(m);
    }

    /** Whether it says something, other than naming a part. */
    boolean saysSomething(Mention m) {
        return m.isInAny(heads) && !m.isInAny(roles.topics()) && !roles.helps(m);
    }
}
