package hingewise.planning;

import hingewise.rulebook.Confirmation;
import java.util.List;
import org.joda.money.Money;

/**
 * A confirmation worth considering now.
 *
 * @param minutes hands-on minutes, opening included
 * @param cost money spent on it, opening included, labour not
 * @param opens access states to go through, outermost first
 * @param askFirst observations that must be answered before, not recorded yet
 * @param saves expected saving against deciding now, before its own cost
 * @param net what is left of the saving after its minutes, its cost and the damage it may do
 * @param why one sentence
 */
public record Step(
        Confirmation confirmation,
        double minutes,
        Money cost,
        List<String> opens,
        List<String> askFirst,
        Money saves,
        Money net,
        String why) {
    public Step {
        opens = List.copyOf(opens);
        askFirst = List.copyOf(askFirst);
    }
}
