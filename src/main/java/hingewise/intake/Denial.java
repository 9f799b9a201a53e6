package hingewise.intake;

import java.util.BitSet;
import java.util.List;

/** Whether something said in a clause is denied there. */
final class Denial {
    private static final int REACH = 7;
    private static final int REACH_BACK = 4;
    private static final int LONGEST_ITEM = 8;

    private final Roles roles;
    private final BitSet heads;

    /** @param heads sets that say something, which ends a denial's reach */
    Denial(Roles roles, BitSet heads) {
        this.roles = roles;
        this.heads = heads;
    }

    /** How many denials bear on the mention: an even number leaves it standing. */
    int count(Clause clause, Mention m) {
        return before(clause, m) + after(clause, m);
    }

    private int before(Clause clause, Mention m) {
        int least = m.from() - REACH;
        for (int i = m.from() - 1; i >= Math.max(clause.from(), least); i--) {
            if (clause.at(i, roles.and())) {
                least = i + 1;
            }
        }
        int from = least;
        return (int) clause.mentions().stream()
                .filter(d -> d.to() > from && d.to() <= m.from())
                .filter(d -> d.isIn(roles.notAny()) || d.isIn(roles.not()) && !usedBefore(clause, d.from()))
                .count();
    }

    private boolean isHead(Clause clause, int word, Mention except) {
        return clause.mentions().stream()
                .anyMatch(o -> o != except && o.from() <= word && word < o.to() && saysSomething(o));
    }

    private boolean saysSomething(Mention m) {
        return m.isInAny(heads) && !m.isInAny(roles.topics()) && !roles.helps(m);
    }

    /** Whether a denial denies what stands before it, as in "lädt nicht". */
    private boolean usedBefore(Clause clause, int word) {
        if (!clause.at(word, roles.notAfter())) {
            return false;
        }
        for (int i = word - 1; i >= Math.max(clause.from(), word - REACH_BACK); i--) {
            if (clause.at(i, roles.and())) {
                return false;
            }
            int at = i;
            if (clause.mentions().stream()
                    .anyMatch(o -> o.from() <= at && at < o.to() && o.to() <= word && saysSomething(o))) {
                return true;
            }
        }
        return false;
    }

    private int after(Clause clause, Mention m) {
        for (int i = m.to(); i < Math.min(clause.to(), m.to() + REACH_BACK); i++) {
            int at = i;
            if (clause.mentions().stream().anyMatch(o -> o.from() == at && o.isIn(roles.notAfter()))) {
                return 1;
            }
            if (clause.at(i, roles.and()) || isHead(clause, i, m)) {
                return 0;
            }
        }
        return 0;
    }

    /** Whether a list that another clause began with "no" goes on in this one: "no cracks, lines or dots". */
    boolean goesOn(List<Clause> clauses, int index) {
        if (!isItem(clauses.get(index))) {
            return false;
        }
        boolean ends = false;
        for (int i = index; i < clauses.size() && isItem(clauses.get(i)); i++) {
            ends |= clauses.get(i).has(roles.or());
        }
        for (int i = index - 1; ends && i >= 0; i--) {
            if (clauses.get(i).has(roles.notAny())) {
                return true;
            }
            if (!isItem(clauses.get(i))) {
                return false;
            }
        }
        return false;
    }

    private boolean isItem(Clause clause) {
        return clause.before() == Word.Gap.COMMA
                && clause.size() <= LONGEST_ITEM
                && !clause.has(roles.notAny())
                && !clause.has(roles.but())
                && !clause.at(clause.from(), roles.begins());
    }
}
