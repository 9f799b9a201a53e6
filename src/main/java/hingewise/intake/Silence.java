package hingewise.intake;

import java.util.BitSet;
import java.util.List;

/** Which clauses of a sentence claim nothing of this phone as it is. */
final class Silence {
    private final Roles roles;

    Silence(Roles roles) {
        this.roles = roles;
    }

    /** Indexes of the clauses that claim nothing. */
    BitSet of(List<Clause> clauses) {
        BitSet silent = new BitSet();
        boolean elsewhere = false;
        boolean conditional = false;
        for (int i = 0; i < clauses.size(); i++) {
            Clause clause = clauses.get(i);
            elsewhere = (elsewhere || clause.has(roles.elsewhere())) && !clause.has(roles.mine());
            boolean condition = clause.has(roles.condition()) && !clause.has(roles.only());
            conditional &= !clause.at(clause.from(), roles.but());
            if (elsewhere || condition || conditional || clause.has(roles.unless()) || clause.has(roles.unknown())) {
                silent.set(i);
            }
            conditional = condition;
        }
        return silent;
    }
}
