package hingewise.intake;

import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** What stands in words that a {@link Classifier} can learn from. */
final class Features {
    /** So many letters in a row are seen at once: they know a word that is misspelt, or part of a longer one. */
    private static final int GRAM = 4;

    /** So many words behind a denial are told apart from those further behind it. */
    private static final int CLOSE = 3;

    /** From this length on a word is likely to be made of several. */
    private static final int COMPOUND = 9;
    /** So many letters tell which words a long one is made of. */
    private static final int END = 5;

    private final Lexicon lexicon;
    private final Roles roles;
    private final BitSet telling;
    /** Sets of words by which something is said of a part. */
    private final BitSet states;
    /** Sets of words by which a claim is denied. */
    private final BitSet denials;
    /** Sets of words that make more or less of what is said, or that it is said of something else. */
    private final BitSet manners;

    /** @param telling numbers of the word sets that tell something */
    Features(Lexicon lexicon, Roles roles, BitSet telling) {
        this.lexicon = lexicon;
        this.roles = roles;
        this.telling = telling;
        this.denials = of(roles.not(), roles.notAny(), roles.notAfter());
        this.states = of(roles.noWord(), roles.yesWord(), roles.only(), roles.works(), roles.past(), roles.except());
        states.or(denials);
        states.or(telling);
        states.andNot(roles.topics());
        this.manners = of(
                roles.hedge(),
                roles.hearsay(),
                roles.unless(),
                roles.condition(),
                roles.unknown(),
                roles.elsewhere(),
                roles.past(),
                roles.since(),
                roles.sarcasm(),
                roles.wanted(),
                roles.only(),
                roles.except(),
                roles.but(),
                roles.and(),
                roles.or(),
                roles.noWord(),
                roles.yesWord());
    }

    private static BitSet of(int... sets) {
        BitSet of = new BitSet();
        IntStream.of(sets).filter(n -> n >= 0).forEach(of::set);
        return of;
    }

    /**
     * The stems of the words, each alone and with the next, letters in a row, both ends of long words, the word sets that
     * tell something, what is denied close behind and as far as the clause goes, and every word of a clause with what the
     * clause says.
     */
    Set<String> of(List<Word> words) {
        Set<String> features = new TreeSet<>();
        for (int i = 0; i < words.size(); i++) {
            addWord(words.get(i), features);
            if (i > 0) {
                features.add(words.get(i - 1).stem() + " " + words.get(i).stem());
            }
        }
        List<Mention> mentions = lexicon.mentions(words, 0, words.size());
        int[] clauses = clauses(words, mentions);
        for (Mention m : mentions) {
            m.sets().stream().filter(telling::get).forEach(n -> features.add("@" + n));
            m.sets().stream().filter(manners::get).forEach(n -> features.add("%" + n));
            if (m.isInAny(denials)) {
                addDenied(words, m, clauses, features);
            }
            if (m.isInAny(states)) {
                addSaid(words, m, clauses, features);
            }
        }
        return features;
    }

    private static void addWord(Word word, Set<String> features) {
        features.add(word.stem());
        String bounded = "^" + word.surface() + "$";
        for (int from = 0; from + GRAM <= bounded.length(); from++) {
            features.add("#" + bounded.substring(from, from + GRAM));
        }
        int length = word.surface().length();
        if (length >= COMPOUND) {
            features.add(word.surface().substring(0, END) + "*");
            features.add("*" + word.surface().substring(length - END));
        }
    }

    /** For each word, how many clauses begin before it. */
    private int[] clauses(List<Word> words, List<Mention> mentions) {
        BitSet but = new BitSet();
        mentions.stream().filter(m -> m.isIn(roles.but())).forEach(m -> but.set(m.from()));
        int[] clauses = new int[words.size()];
        for (int i = 1; i < clauses.length; i++) {
            boolean begins = but.get(i) || words.get(i).before().endsClause();
            clauses[i] = clauses[i - 1] + (begins ? 1 : 0);
        }
        return clauses;
    }

    private static void addDenied(List<Word> words, Mention denial, int[] clauses, Set<String> features) {
        features.add("!");
        for (int i = denial.to(); i < words.size(); i++) {
            if (i < denial.to() + CLOSE) {
                features.add("!" + words.get(i).stem());
            }
            if (clauses[i] == clauses[denial.from()]) {
                features.add("~" + words.get(i).stem());
            }
        }
    }

    /** What is announced, as in "speaker: dead", goes with the clause that follows. */
    private void addSaid(List<Word> words, Mention state, int[] clauses, Set<String> features) {
        int clause = clauses[state.from()];
        boolean announced = words.get(state.from()).before() == Word.Gap.COLON;
        for (int i = 0; i < words.size(); i++) {
            boolean together = clauses[i] == clause || announced && clauses[i] == clause - 1;
            if (together && (i < state.from() || i >= state.to())) {
                String stem = words.get(i).stem();
                state.sets().stream().filter(states::get).forEach(n -> features.add(stem + "=" + n));
            }
        }
    }
}
