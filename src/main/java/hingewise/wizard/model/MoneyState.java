package hingewise.wizard.model;

import hingewise.offer.Appraisal;
import java.util.Optional;

/**
 * What is known of the money of the open case.
 *
 * @param latest the newest appraisal; may be of the case before the last answers
 * @param running whether a newer one is being reckoned
 * @param trouble why there is no newer one, in a sentence
 */
public record MoneyState(Optional<Appraisal> latest, boolean running, Optional<String> trouble) {
    static MoneyState none() {
        return new MoneyState(Optional.empty(), false, Optional.empty());
    }
}
