package hingewise.rulebook;

import java.util.List;
import java.util.Map;

/**
 * Sentences in which sellers speak of observations.
 *
 * @param language id of the language they are in
 * @param sentences by the id of the observation that they speak of
 * @param silent sentences that speak of no observation
 */
public record Examples(
        String id, String language, Map<String, Answers> sentences, List<String> silent, Grounds grounds) {
    /** Sentences by the answer that they give. */
    public record Answers(List<String> yes, List<String> no) {
        public Answers {
            yes = List.copyOf(yes);
            no = List.copyOf(no);
        }
    }

    public Examples {
        sentences = Ordered.copyOf(sentences);
        silent = List.copyOf(silent);
    }
}
