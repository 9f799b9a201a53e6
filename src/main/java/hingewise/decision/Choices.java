package hingewise.decision;

import java.util.ArrayList;
import java.util.List;

/** What can be decided, by what is open. */
final class Choices {
    private final Problem problem;
    private final Numbering opens = new Numbering();
    private final List<Choice> choices = new ArrayList<>();

    Choices(Problem problem) {
        this.problem = problem;
    }

    /** @param open gates (one bit each) */
    Choice with(long open) {
        return choices.get(number(open));
    }

    /** A number for what is open. */
    int number(long open) {
        int number = opens.number(open);
        if (number == choices.size()) {
            choices.add(new Choice(problem, open));
        }
        return number;
    }
}
