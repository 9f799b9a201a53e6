package hingewise.intake;

import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What stands in words that a {@link Classifier} can learn from. */
final class Features {
    /** So many letters in a row are seen at once: they know a word that is misspelt, or part of a longer one. */
    private static final int GRAM = 4;

    /** So many words behind a denial are told apart from the same words without one. */
    private static final int DENIED = 3;

    /** From this length on a word is likely to be made of several. */
    private static final int COMPOUND = 9;
    /** So many letters tell which words a long one is made of. */
    private static final int END = 5;

    private final Lexicon lexicon;
    private final Roles roles;
    private final BitSet telling;

    /** @param telling numbers of the word sets that tell something */
    Features(Lexicon lexicon, Roles roles, BitSet telling) {
        this.lexicon = lexicon;
        this.roles = roles;
        this.telling = telling;
    }

    /**
     * The stems of the words, each alone and with the next, letters in a row, both ends of long words, what is denied, and
     * the word sets that tell something.
     */
    Set<String> of(List<Word> words) {
        Set<String> features = new TreeSet<>();
        for (int i = 0; i < words.size(); i++) {
            Word w = words.get(i);
            features.add(w.stem());
            if (i > 0) {
                features.add(words.get(i - 1).stem() + " " + w.stem());
            }
            String bounded = "^" + w.surface() + "$";
            for (int from = 0; from + GRAM <= bounded.length(); from++) {
                features.add("#" + bounded.substring(from, from + GRAM));
            }
            int length = w.surface().length();
            if (length >= COMPOUND) {
                features.add(w.surface().substring(0, END) + "*");
                features.add("*" + w.surface().substring(length - END));
            }
        }
        for (Mention m : lexicon.mentions(words, 0, words.size())) {
            m.sets().stream().filter(telling::get).forEach(n -> features.add("@" + n));
            if (m.isIn(roles.not()) || m.isIn(roles.notAny()) || m.isIn(roles.notAfter())) {
                features.add("!");
                words.subList(m.to(), Math.min(words.size(), m.to() + DENIED))
                        .forEach(w -> features.add("!" + w.stem()));
            }
        }
        return features;
    }
}
