package hingewise.planning;

import hingewise.rulebook.Part;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What to decide on what is known now.
 *
 * @param kind what sort of decision
 * @param parts what a repair fits; empty for any other
 * @param causes ids of the likely causes that a repair puts right; empty for any other
 * @param testable whether its functions can be tested as far as it is known then; a phone that shows no life has none to test
 */
public record Decision(Kind kind, List<Part> parts, Set<String> causes, boolean testable) {
    public Decision {
        parts = List.copyOf(parts);
        causes = Set.copyOf(causes);
    }

    /** A decision on a phone whose functions can be tested. */
    public Decision(Kind kind, List<Part> parts, Set<String> causes) {
        this(kind, parts, causes, true);
    }

    /** The same of a phone whose functions can be tested or not. */
    Decision tested(boolean can) {
        return kind == Kind.LEAVE ? new Decision(kind, parts, causes, can) : this;
    }

    /** What to do, as an order. */
    public String order() {
        return switch (kind) {
            case ASK_FIRST -> "ask first";
            case OFFER -> "offer or pass";
            case PASS -> "pass at the price asked, which is not expected to leave the margin; offer less or nothing";
            case REPAIR ->
                "fit "
                        + parts.stream()
                                .filter(p -> p.form() != Part.Form.CONSUMABLE || parts.size() == 1)
                                .map(Part::label)
                                .collect(Collectors.joining(", "));
            case LEAVE ->
                testable
                        ? "fit nothing, test its functions, then sell it"
                        : "fit nothing and sell it as it is, its faults stated; its functions cannot be tested";
            case SERVICE -> "send it to the maker's repair";
            case AS_IS -> "sell it as it is, its faults stated";
            case BREAK -> "break it for parts";
            case RETURN -> "return it to the seller, unopened";
        };
    }

    /** Whether it is about an offer, since the phone is not here yet. */
    public boolean ofOffer() {
        return switch (kind) {
            case ASK_FIRST, OFFER, PASS -> true;
            case REPAIR, LEAVE, SERVICE, AS_IS, BREAK, RETURN -> false;
        };
    }

    /** What going on is held against, in words. */
    public String now() {
        return ofOffer() ? "offering or passing now" : "deciding now";
    }

    /** What costs are reckoned against before it is bought; empty for a phone that is here. */
    public Optional<String> reckonedAgainst() {
        return ofOffer()
                ? Optional.of(
                        "Costs are what its faults take if it is bought, work, parts and a lower price, against the same"
                                + " phone with nothing wrong; what is paid for it is not among them."
                                + (kind == Kind.PASS
                                        ? " Passing counts as what that phone would leave beyond the price asked and the margin."
                                        : ""))
                : Optional.empty();
    }

    /** Whether it ends the case without a repair here, so that no part is needed. */
    public boolean elsewhere() {
        return switch (kind) {
            case PASS, SERVICE, AS_IS, BREAK, RETURN -> true;
            case ASK_FIRST, OFFER, REPAIR, LEAVE -> false;
        };
    }

    /** What sort of decision. */
    public enum Kind {
        /** Nothing is looked at here yet and something is worth asking before an offer. */
        ASK_FIRST,
        /** Nothing is worth asking any more: offer or pass. */
        OFFER,
        /**
         * At the price asked it is not expected to leave the margin, were nothing wrong with it but what is complained of;
         * how much less to offer is another question.
         */
        PASS,
        /** Fit these parts. */
        REPAIR,
        /** Nothing that could be repaired is likely enough to be worth it: sell it, once it is tested if it can be. */
        LEAVE,
        /** Send it to the maker's repair. */
        SERVICE,
        /** Sell it with its faults stated. */
        AS_IS,
        /** Take it apart and sell what works. */
        BREAK,
        /** Give it back to its seller, unopened. */
        RETURN;

        /** The word used in JSON. */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
