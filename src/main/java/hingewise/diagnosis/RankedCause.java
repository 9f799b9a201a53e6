package hingewise.diagnosis;

import hingewise.rulebook.Cause;
import java.util.List;

/**
 * A cause and how likely it is.
 *
 * @param prior its chance before any entry, in 0–1
 * @param probability its chance given all entries, in 0–1
 * @param words the chance in words
 * @param reasons in timeline order, summing to logit(probability) − logit(prior)
 */
public record RankedCause(Cause cause, double prior, double probability, String words, List<Reason> reasons) {
    public RankedCause {
        reasons = List.copyOf(reasons);
    }
}
