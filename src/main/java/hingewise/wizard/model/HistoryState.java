package hingewise.wizard.model;

import java.util.Optional;

/**
 * What the history shows.
 *
 * @param told the story so far; may lack the last entries while a newer one is being reckoned
 * @param running whether a newer one is being reckoned
 * @param trouble why there is no newer one, in a sentence
 * @param chosen number of the stop looked at
 */
public record HistoryState(Optional<Told> told, boolean running, Optional<String> trouble, int chosen) {
    static HistoryState none() {
        return new HistoryState(Optional.empty(), false, Optional.empty(), 0);
    }

    /** The stop looked at. */
    public Optional<Told.Stop> stop() {
        return told.map(t -> t.stops().get(chosen));
    }
}
