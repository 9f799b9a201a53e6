package hingewise.wizard.model;

import hingewise.intake.Suggestion;
import java.util.List;
import java.util.Optional;

/**
 * A pasted listing and what is left to decide of it.
 *
 * @param text as it was read
 * @param running whether it is being read
 * @param open suggestions neither accepted nor refused, in the order of the text
 * @param said what happened last, in words
 */
public record ListingState(String text, boolean running, List<Suggestion> open, Optional<String> said) {
    public ListingState {
        open = List.copyOf(open);
    }

    static ListingState none() {
        return new ListingState("", false, List.of(), Optional.empty());
    }
}
