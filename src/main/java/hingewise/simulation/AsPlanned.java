package hingewise.simulation;

import hingewise.planning.Decision;
import hingewise.planning.Planning;
import hingewise.rulebook.Confirmation;
import java.util.Optional;
import java.util.function.Function;

/** As the planner says, which is asked anew after every result. After a repair it is asked whether more is to be done. */
record AsPlanned(Function<Planning.Next, Optional<Confirmation>> step) implements Way {
    private static final int LONGEST = 40;

    @Override
    public Outcome with(Work work) {
        int repairs = 0;
        for (int i = 0; i < LONGEST; i++) {
            Planning.Next next = work.next();
            Optional<Confirmation> act = step.apply(next);
            if (act.isPresent()) {
                work.does(act.get());
            } else if (next.decision().kind() == Decision.Kind.REPAIR && repairs++ < Habits.MOST_REPAIRS) {
                work.fits(next.decision().parts());
            } else {
                return next.decision().kind() == Decision.Kind.REPAIR
                        ? Habits.givesUp(work)
                        : work.ends(next.decision().kind());
            }
        }
        return Habits.givesUp(work);
    }
}
