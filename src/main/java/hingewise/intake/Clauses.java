package hingewise.intake;

import java.util.ArrayList;
import java.util.List;

/** Divides words into sentences, and these into clauses. */
final class Clauses {
    private static final int LONGEST_HEADING = 2;
    private static final int LONGEST_ANNOUNCED = 3;

    private final Lexicon lexicon;
    private final Roles roles;

    Clauses(Lexicon lexicon, Roles roles) {
        this.lexicon = lexicon;
        this.roles = roles;
    }

    /**
     * A sentence.
     *
     * @param after what ends it
     */
    record Sentence(List<Clause> clauses, Word.Gap after) {
        List<Word> words() {
            return clauses.get(0).sentence();
        }
    }

    /** @param end what stands behind the last word */
    List<Sentence> of(List<Word> words, Word.Gap end) {
        List<Sentence> sentences = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= words.size(); i++) {
            boolean ends = i == words.size() || words.get(i).before().endsSentence();
            if (ends) {
                Word.Gap after = i == words.size() ? end : words.get(i).before();
                sentences.add(new Sentence(clauses(words.subList(start, i)), after));
                start = i;
            }
        }
        return sentences;
    }

    private List<Clause> clauses(List<Word> sentence) {
        List<Clause> clauses = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= sentence.size(); i++) {
            if (i == sentence.size() || sentence.get(i).before().endsClause() && !(isHeading(sentence, start, i))) {
                divide(sentence, start, i, lexicon.mentions(sentence, start, i), clauses);
                start = i;
            }
        }
        return clauses;
    }

    /**
     * Whether words before a colon belong to what follows: a short heading that names no part, such as "opens: fully",
     * unless yes or no follows.
     */
    private boolean isHeading(List<Word> sentence, int from, int colon) {
        if (sentence.get(colon).before() != Word.Gap.COLON || colon - from > LONGEST_HEADING) {
            return false;
        }
        int to = colon + 1;
        while (to < sentence.size() && !sentence.get(to).before().endsClause()) {
            to++;
        }
        return to - colon <= LONGEST_ANNOUNCED
                && lexicon.mentions(sentence, from, to).stream()
                        .noneMatch(m -> m.isInAny(roles.topics())
                                || m.from() == colon && (m.isIn(roles.noWord()) || m.isIn(roles.yesWord())));
    }

    /** A stretch without punctuation is divided where a word begins a new clause. */
    private void divide(List<Word> sentence, int from, int to, List<Mention> mentions, List<Clause> clauses) {
        int start = from;
        for (int i = from + 1; i < to; i++) {
            if (beginsClause(mentions, i, to)) {
                clauses.add(clause(sentence, start, i, mentions));
                start = i;
            }
        }
        clauses.add(clause(sentence, start, to, mentions));
    }

    private boolean beginsClause(List<Mention> mentions, int word, int to) {
        for (Mention m : mentions) {
            if (m.from() == word) {
                if (m.isIn(roles.but()) || m.isIn(roles.except())) {
                    return true;
                }
                int next = m.to();
                if (m.isIn(roles.and()) && next < to) {
                    return mentions.stream()
                            .anyMatch(n -> n.from() == next && (n.isIn(roles.begins()) || n.isIn(roles.hedge())));
                }
            }
        }
        return false;
    }

    private Clause clause(List<Word> sentence, int from, int to, List<Mention> mentions) {
        return Clause.of(
                sentence,
                from,
                to,
                mentions.stream().filter(m -> m.from() >= from && m.to() <= to).toList(),
                roles);
    }
}
