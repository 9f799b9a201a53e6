package hingewise.intake;

import java.util.BitSet;
import java.util.List;

/** Whether something said in a clause is denied there. */
final class Denial {
    private static final int REACH = 7;
    private static final int REACH_BACK = 4;
    private static final int LONGEST_ITEM = 8;
    /** So many words may stand between "and" and what "no" still denies, as in "no dents and big scratches". */
    private static final int LISTED = 1;

    private final Roles roles;
    private final BitSet heads;

    /** @param heads sets that say something, which ends a denial's reach */
    Denial(Roles roles, BitSet heads) {
        this.roles = roles;
        this.heads = heads;
    }

    /**
     * How many denials bear on the mention: an even number leaves it standing. On what is itself a denial, such as "no
     * picture", none does.
     *
     * @param used mentions that a phrase names itself, which deny nothing beyond it
     */
    int count(Clause clause, Mention m, List<Mention> used) {
        return m.denies() ? 0 : before(clause, m, used) + after(clause, m, used);
    }

    private int before(Clause clause, Mention m, List<Mention> used) {
        int least = Math.max(clause.from(), m.from() - REACH);
        int from = least;
        for (int i = least; i < m.from(); i++) {
            if (clause.at(i, roles.and()) || clause.at(i, roles.since())) {
                from = i + 1;
            }
        }
        int behindAnd = from;
        boolean listed = m.from() - behindAnd <= LISTED;
        return (int) clause.mentions().stream()
                .filter(d -> d.to() > (listed && d.isIn(roles.notAny()) ? least : behindAnd) && d.to() <= m.from())
                .filter(d -> d.isIn(roles.notAny()) || d.isIn(roles.not()) && !usedBefore(clause, d.from()))
                .filter(d -> isFree(d, used) && !spent(clause, d, m))
                .count();
    }

    /** Whether no term of a phrase names it; a part such as "neither screen" may deny all the same. */
    private boolean isFree(Mention denial, List<Mention> used) {
        return used.stream().filter(u -> !u.isInAny(roles.topics())).noneMatch(denial::overlaps);
    }

    /**
     * Whether a denial was for something before, and another part is named since, as in "touch not working screen
     * cracked", or a place, as in "without detours to the home screen".
     */
    private boolean spent(Clause clause, Mention denial, Mention m) {
        boolean said = false;
        boolean unknown = false;
        for (int i = denial.to(); i < m.from(); i++) {
            if (clause.at(i, roles.or())) {
                return false;
            }
            boolean topic = topicAt(clause, i);
            if (said && topic) {
                return true;
            }
            said |= !topic && isHead(clause, i, m);
            if (unknown && denial.isIn(roles.notAny()) && clause.at(i, roles.of())) {
                return true;
            }
            unknown |= !clause.mentioned(i);
        }
        return false;
    }

    private boolean topicAt(Clause clause, int word) {
        return clause.mentions().stream().anyMatch(o -> o.from() <= word && word < o.to() && o.isInAny(roles.topics()));
    }

    private boolean isHead(Clause clause, int word, Mention except) {
        return clause.mentions().stream()
                .anyMatch(o -> o != except && o.from() <= word && word < o.to() && saysSomething(o));
    }

    private boolean saysSomething(Mention m) {
        return m.isInAny(heads) && !m.isInAny(roles.topics()) && !roles.helps(m) && !roles.isLight(m);
    }

    /** Whether a denial denies what stands before it, as in "lädt nicht". */
    private boolean usedBefore(Clause clause, int word) {
        if (!clause.at(word, roles.notAfter()) || leads(clause, word)) {
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

    /** Whether what is said stands right behind the denial, as in "nicht mehr fest". */
    private boolean leads(Clause clause, int word) {
        int behind = clause.mentions().stream()
                .filter(d -> d.from() == word && (d.isIn(roles.not()) || d.isIn(roles.notAfter())))
                .mapToInt(Mention::to)
                .max()
                .orElse(word + 1);
        return clause.mentions().stream().anyMatch(o -> o.from() == behind && saysSomething(o));
    }

    private int after(Clause clause, Mention m, List<Mention> used) {
        for (int i = m.to(); i < Math.min(clause.to(), m.to() + REACH_BACK); i++) {
            int at = i;
            if (clause.mentions().stream()
                    .anyMatch(o -> o.from() == at && o.isIn(roles.notAfter()) && isFree(o, used))) {
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
