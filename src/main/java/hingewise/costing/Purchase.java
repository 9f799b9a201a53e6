package hingewise.costing;

import hingewise.rulebook.Part;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.joda.money.Money;

/**
 * Parts bought and fitted together, and what that costs.
 *
 * @param goods paid for the parts that have an offer
 * @param sending shipping, and what is missing to suppliers' minimum orders
 * @param risk expected cost of parts that arrive bad
 * @param lessResale what the parts' origin takes off the price of the phone
 * @param work labour and consumables of opening and fitting
 * @param waiting what the phone loses until the last part is there
 * @param days until the last part is there
 */
public record Purchase(
        List<Line> lines,
        Money goods,
        Money sending,
        Money risk,
        Money lessResale,
        Money work,
        Money waiting,
        int days) {
    public Purchase {
        lines = List.copyOf(lines);
    }

    /** A part of it; without an offer nobody sells it. */
    public record Line(Part part, Optional<Offer> offer) {}

    /** What is paid for parts and sending. */
    public Money paid() {
        return goods.plus(sending);
    }

    /** Everything together. */
    public Money total() {
        return paid().plus(risk).plus(lessResale).plus(work).plus(waiting);
    }

    /** Ids of the components that are new afterwards. */
    public Set<String> renews() {
        return lines.stream().flatMap(l -> l.part().renews().stream()).collect(Collectors.toSet());
    }

    /** How many parts nobody sells. */
    public long missing() {
        return lines.stream().filter(l -> l.offer().isEmpty()).count();
    }
}
