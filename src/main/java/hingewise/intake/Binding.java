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
     * The parts that a mention is said of, each of them a list of what belongs together: of "the inner screen and its
     * touch" there are two.
     *
     * @param waiting parts named just before this clause, of which nothing was said yet: "cameras, speaker and …"
     * @param spoken parts that the sentence spoke of last
     */
    List<List<Mention>> of(Clause clause, Mention m, List<List<Mention>> waiting, List<List<Mention>> spoken) {
        List<List<Mention>> near = inClause(clause, m, waiting, spoken);
        if (near.stream().noneMatch(this::isAspect)) {
            return near;
        }
        int from = near.stream()
                .flatMap(List::stream)
                .mapToInt(Mention::from)
                .min()
                .orElse(clause.from());
        List<List<Mention>> whole = clause.groups().stream()
                .filter(g -> g.to() <= from)
                .flatMap(g -> g.each().stream())
                .filter(e -> !isAspect(e))
                .toList();
        return carried(near, !whole.isEmpty() ? whole : waiting.isEmpty() ? spoken : waiting);
    }

    /** A part of a part, such as touch, belongs to what was named before it: "the outer screen and touch". */
    private List<List<Mention>> carried(List<List<Mention>> parts, List<List<Mention>> before) {
        List<List<Mention>> all = new ArrayList<>();
        List<Mention> whole = before.isEmpty() ? List.of() : before.get(before.size() - 1);
        for (List<Mention> part : parts) {
            boolean aspect = isAspect(part);
            all.add(aspect ? together(part, whole) : part);
            if (!aspect) {
                whole = part;
            }
        }
        return List.copyOf(all);
    }

    private boolean isAspect(List<Mention> part) {
        return !part.isEmpty() && part.stream().allMatch(t -> t.isIn(roles.aspect()));
    }

    private List<List<Mention>> inClause(
            Clause clause, Mention m, List<List<Mention>> waiting, List<List<Mention>> spoken) {
        List<Group> groups = clause.groups();
        Optional<Group> own = groups.stream()
                .filter(g -> g.from() <= m.from() && m.to() <= g.to())
                .findFirst();
        if (own.isPresent()) {
            return List.of(own.get().topics());
        }
        Optional<Group> before = groups.stream().filter(g -> g.to() <= m.from()).reduce((a, b) -> b);
        Optional<Group> after = groups.stream().filter(g -> g.from() >= m.to()).findFirst();
        if (after.isPresent() && isAttribute(clause, m, before, after.get())) {
            return after.get().each();
        }
        boolean heading = clause.before() == Word.Gap.COLON;
        List<List<Mention>> subject = before.map(
                        b -> groups.indexOf(b) == 0 && !heading ? joined(waiting, b.each()) : b.each())
                .orElse(List.of());
        if (after.isPresent() && isPlace(clause, m, after.get())) {
            boolean mine =
                    before.isPresent() && !headBetween(clause, m, before.get().to(), withAttributes(clause, m));
            return placed(mine ? subject : before.isPresent() ? List.of() : waiting, after.get());
        }
        if (before.isPresent()) {
            return subject;
        }
        if (after.isPresent() && near(clause, m, after.get())) {
            return after.get().each();
        }
        return waiting.isEmpty() ? spoken : waiting;
    }

    /** Each part that is spoken of, at each of the places. */
    private static List<List<Mention>> placed(List<List<Mention>> subject, Group places) {
        if (subject.isEmpty()) {
            return places.each();
        }
        return subject.stream()
                .flatMap(s -> places.each().stream().map(p -> together(s, p)))
                .toList();
    }

    private static List<Mention> together(List<Mention> a, List<Mention> b) {
        List<Mention> both = new ArrayList<>(a);
        both.addAll(b);
        return List.copyOf(both);
    }

    static List<List<Mention>> joined(List<List<Mention>> a, List<List<Mention>> b) {
        List<List<Mention>> both = new ArrayList<>(a);
        both.addAll(b);
        return List.copyOf(both);
    }

    /** Whether it stands right before the part, as in "cracked inner screen". */
    private boolean isAttribute(Clause clause, Mention m, Optional<Group> before, Group after) {
        if (after.from() - m.to() > BESIDE || !open(clause, m.to(), after.from())) {
            return false;
        }
        boolean close = before.isPresent()
                && m.from() - before.get().to() <= BESIDE
                && !headBetween(clause, m, before.get().to(), m.from())
                && before.get().topics().stream().noneMatch(t -> t.isIn(roles.phone()));
        return !close || !headBetween(clause, m, after.to(), clause.to());
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
            if (clause.at(i, roles.of()) && after.from() - i <= PLACE && noHead(clause, m, i, after.from())) {
                return true;
            }
            if (clause.at(i, roles.and())) {
                return false;
            }
        }
        return false;
    }

    private boolean noHead(Clause clause, Mention m, int from, int to) {
        for (int i = from; i < to; i++) {
            if (isHead(clause, m, i) || clause.at(i, roles.and())) {
                return false;
            }
        }
        return true;
    }

    private boolean near(Clause clause, Mention m, Group after) {
        return after.from() - m.to() <= PLACE && noHead(clause, m, m.to(), after.from());
    }

    private boolean headBetween(Clause clause, Mention m, int from, int to) {
        for (int i = from; i < to; i++) {
            if (isHead(clause, m, i)) {
                return true;
            }
        }
        return false;
    }

    /** Where it begins with what stands right before it, as "black" in "a black spot". */
    private int withAttributes(Clause clause, Mention m) {
        int from = m.from();
        while (from > clause.from() && isHead(clause, m, from - 1)) {
            from--;
        }
        return from;
    }

    /** Whether something else than the mention is said by the word. */
    private boolean isHead(Clause clause, Mention m, int word) {
        return clause.mentions().stream()
                .anyMatch(o -> o.from() <= word && word < o.to() && !o.overlaps(m) && saysSomething(o));
    }

    /** Whether phrases have it as their head. */
    boolean isHead(Mention m) {
        return m.isInAny(heads);
    }

    /** Whether a phrase may turn on it. */
    boolean mayTurnOn(Mention m) {
        return m.isInAny(heads) && !roles.helps(m);
    }

    /** Whether it says something, other than naming a part. */
    boolean saysSomething(Mention m) {
        return mayTurnOn(m) && !m.isInAny(roles.topics()) && !roles.isLight(m);
    }
}
