package hingewise.intake;

import java.util.BitSet;
import java.util.Optional;
import java.util.stream.IntStream;

/** What words like "yes" and "no" answer. */
final class Replies {
    private static final int LONGEST_ANSWER = 3;
    private static final int LONGEST_BARE = 5;

    private final Roles roles;

    Replies(Roles roles) {
        this.roles = roles;
    }

    /** An answer to what stands before. */
    enum Reply {
        NONE,
        YES,
        NO,
        UNKNOWN
    }

    /** What a short clause answers that was announced, as in "Cracks: none". */
    Reply announced(Clause clause) {
        return clause.size() > LONGEST_ANSWER ? Reply.NONE : begins(clause);
    }

    /** What a clause answers by its first words: "no, never", "they do". */
    Reply begins(Clause clause) {
        if (clause.has(roles.unknown())) {
            return Reply.UNKNOWN;
        }
        Optional<Mention> first = clause.mentions().stream()
                .filter(m -> m.from() == clause.from() && !m.isIn(roles.too())
                        || m.from() == clause.from() + 1 && clause.at(clause.from(), roles.too()))
                .findFirst();
        if (first.isEmpty()) {
            return Reply.NONE;
        }
        Mention word = first.get();
        if (word.isIn(roles.noWord()) || word.isIn(roles.yesWord())) {
            return word.isIn(roles.noWord()) ? Reply.NO : Reply.YES;
        }
        if (!word.isIn(roles.pronoun()) || clause.size() > LONGEST_ANSWER || !isBare(clause)) {
            return Reply.NONE;
        }
        boolean denies = clause.has(roles.not()) || clause.has(roles.notAfter());
        return denies ? Reply.NO : clause.has(roles.does()) ? Reply.YES : Reply.NONE;
    }

    /** Whether it is short and there is nothing in it that is not understood. */
    static boolean isBare(Clause clause) {
        return clause.size() <= LONGEST_BARE
                && IntStream.range(clause.from(), clause.to()).allMatch(clause::mentioned);
    }

    /** A yes or a no behind a part stands for "works" and its opposite: "speaker yes, fingerprint no". */
    Optional<Saying> tick(Clause clause, double certainty) {
        return clause.mentions().stream()
                .filter(m -> m.to() == clause.to() && m.from() > clause.from())
                .filter(m -> m.isIn(roles.noWord()) || m.isIn(roles.yesWord()))
                .filter(m -> roles.works() >= 0)
                .findFirst()
                .map(m -> {
                    BitSet works = new BitSet();
                    works.set(roles.works());
                    Mention what = new Mention(m.from(), m.to(), works, false, false, m.exact());
                    return new Saying(clause, what, m.isIn(roles.noWord()), certainty);
                });
    }
}
