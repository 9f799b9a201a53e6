package hingewise.wizard.model;

import hingewise.assessment.Assessment;
import java.util.Optional;

/**
 * What is known about the open case.
 *
 * @param latest the newest assessment; may be of the case before the last answers
 * @param running whether a newer one is being reckoned
 * @param trouble why there is no newer one, in a sentence
 */
public record Reckoning(Optional<Assessment> latest, boolean running, Optional<String> trouble) {
    static Reckoning none() {
        return new Reckoning(Optional.empty(), false, Optional.empty());
    }

    Reckoning started() {
        return new Reckoning(latest, true, Optional.empty());
    }

    Reckoning done(Assessment assessment) {
        return new Reckoning(Optional.of(assessment), false, Optional.empty());
    }

    Reckoning failed(String words) {
        return new Reckoning(latest, false, Optional.of(words));
    }
}
