package hingewise.rulebook;

import java.util.EnumMap;
import java.util.Map;

/**
 * How far a claim found in a text is to be trusted: a logistic regression over what speaks for it and against it.
 *
 * @param least a claim that is trusted less is not suggested, in 0–1
 * @param weights what each mark adds to the logarithm of the odds that the claim is right; complete
 */
public record Trust(double least, Map<Mark, Double> weights, Grounds grounds) {
    /** Something that speaks for or against a claim. */
    public enum Mark {
        /** Always one. */
        ALWAYS("always"),
        /** One if a phrase is met. */
        PHRASE("phrase"),
        /** One if a phrase is met that names a part of the phone. */
        PART("part"),
        /** One if three words or more meet a phrase. */
        SEVERAL_WORDS("several-words"),
        /** One if the words that meet a phrase stand in several clauses. */
        SCATTERED("scattered"),
        /** The highest chance that words around it make the claim, by the examples, in logarithms of odds. */
        CHANCE("chance"),
        /** The chance of the likeliest claim about something else that the same words make, in logarithms of odds. */
        RIVAL("rival"),
        /** In how many stretches of the text it is heard by the examples alone, up to three. */
        HEARD("heard"),
        /** The highest chance that words of the text make the opposite claim, in logarithms of odds. */
        OPPOSITE("opposite"),
        /** One if it is heard alone, and only where the words seem to tell of another phone or on a condition. */
        SILENT("silent"),
        /** One if it is heard alone and the words that make it likeliest name a part of the phone. */
        HEARD_PART("heard-part"),
        /** The logarithm of how many words make it likeliest if it is heard alone, else nought. */
        HEARD_WORDS("heard-words"),
        /** The highest chance that a whole sentence around it makes the claim, in logarithms of odds. */
        SENTENCE("sentence");

        private final String id;

        Mark(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }
    }

    public Trust {
        weights = new EnumMap<>(weights);
    }

    @Override
    public Map<Mark, Double> weights() {
        return Map.copyOf(weights);
    }

    /** @return the chance that a claim is right, in 0–1 */
    public double of(Map<Mark, Double> marks) {
        double odds = 0;
        for (Map.Entry<Mark, Double> mark : marks.entrySet()) {
            odds += weights.getOrDefault(mark.getKey(), 0.0) * mark.getValue();
        }
        return 1 / (1 + Math.exp(-odds));
    }
}
