package hingewise.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How sellers write about one observation.
 *
 * @param past whether it speaks of what happened, so that "was" and "last year" take nothing away
 * @param byLanguage what is said in each language, by its id
 * @param conclusions what follows from other answers of the same text, where the text itself says nothing of this
 * @param within answers that are left unsaid because another one says it all, as "no sound" of a phone that is dead
 */
public record Phrases(
        boolean past, Map<String, Said> byLanguage, List<Conclusion> conclusions, List<Conclusion> within) {
    public static final Phrases NONE = new Phrases(false, Map.of(), List.of(), List.of());

    /**
     * An answer that follows.
     *
     * @param when answers to observations and hints that must all be given
     */
    public record Conclusion(boolean yes, Map<String, Boolean> when) {
        public Conclusion {
            when = Ordered.copyOf(when);
        }
    }

    /**
     * What is said in one language. A phrase that is met and denied says the opposite.
     *
     * @param yes speaks for "yes"
     * @param no speaks for "no"
     * @param ask the question as it is put to a seller, to be answered by yes or no; empty when it is not asked so
     */
    public record Said(List<Phrase> yes, List<Phrase> no, Optional<String> ask) {
        public Said {
            yes = List.copyOf(yes);
            no = List.copyOf(no);
        }
    }

    public Phrases {
        byLanguage = Ordered.copyOf(byLanguage);
        conclusions = List.copyOf(conclusions);
        within = List.copyOf(within);
    }
}
