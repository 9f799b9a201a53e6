package hingewise.planning;

import hingewise.rulebook.Confirmation;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * A confirmation worth considering now.
 *
 * @param minutes hands-on minutes, opening included
 * @param cost money spent on it, opening included, labour not
 * @param opens access states to go through, outermost first
 * @param needs what must be answered before and is not recorded yet, in the order to ask
 * @param saves expected saving against deciding now, before its own cost; opening that the decision now needs anyway
 *     counts neither here nor as a cost
 * @param net what is left of the saving after its minutes, its cost and the damage it may do; where it is only worth doing
 *     together with another, what is left of both
 * @param together the other one
 * @param why one sentence
 */
public record Step(
        Confirmation confirmation,
        double minutes,
        Money cost,
        List<String> opens,
        List<Sheet.Need> needs,
        Money saves,
        Money net,
        Optional<Confirmation> together,
        String why) {
    public Step {
        opens = List.copyOf(opens);
        needs = List.copyOf(needs);
    }

    /** Ids of the observations that must be answered before. */
    public List<String> askFirst() {
        return needs.stream().map(n -> n.observation().id()).toList();
    }

    /** Who does it before the phone is bought, when nobody here can touch it. */
    public static String before(Confirmation confirmation) {
        return switch (confirmation.kind()) {
            case QUESTION -> "ask the seller";
            case CHECK -> "look at the pictures of the listing, or ask the seller";
            case TRY -> "ask the seller to do it";
        };
    }
}
