package hingewise.intake;

import hingewise.rulebook.Phrase;
import hingewise.rulebook.Phrases;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Stream;

/**
 * A phrase with its words looked up.
 *
 * @param about id of the observation or hint it bears on
 * @param yes the answer it speaks for when it is not denied
 * @param past whether it speaks of what happened
 * @param turns whether it speaks for the opposite when it is denied
 * @param head what is said; denials and hedges are looked for around it
 * @param rest the other terms
 */
record Rule(String about, String written, boolean yes, boolean past, boolean turns, Term head, List<Term> rest) {
    /**
     * A term with the numbers of its alternatives.
     *
     * @param topic whether it names a part
     */
    record Term(Phrase.Mode mode, BitSet any, boolean topic) {}

    /** Whether each term that must be met has an alternative among the sets; a quick look before the parts are bound. */
    boolean mayBeMet(BitSet named) {
        for (Term term : rest) {
            if (term.mode() == Phrase.Mode.PRESENT && !term.any().intersects(named)) {
                return false;
            }
        }
        return true;
    }

    static Stream<Rule> of(String about, Phrases phrases, Phrases.Said said, Lexicon lexicon, Roles roles) {
        boolean past = phrases.past();
        return Stream.concat(
                said.yes().stream().map(p -> rule(about, true, past, p, lexicon, roles)),
                said.no().stream().map(p -> rule(about, false, past, p, lexicon, roles)));
    }

    private static Rule rule(String about, boolean yes, boolean past, Phrase phrase, Lexicon lexicon, Roles roles) {
        List<Term> terms =
                phrase.terms().stream().map(t -> term(t, lexicon, roles)).toList();
        Term head = terms.stream()
                .filter(t -> t.mode() == Phrase.Mode.PRESENT && !t.topic())
                .findFirst()
                .or(() -> terms.stream()
                        .filter(t -> t.mode() == Phrase.Mode.PRESENT)
                        .findFirst())
                .orElseThrow();
        return new Rule(
                about,
                phrase.written(),
                yes,
                past,
                phrase.turns(),
                head,
                terms.stream().filter(t -> t != head).toList());
    }

    private static Term term(Phrase.Term term, Lexicon lexicon, Roles roles) {
        BitSet any = new BitSet();
        term.any().stream().mapToInt(lexicon::number).filter(n -> n >= 0).forEach(any::set);
        return new Term(term.mode(), any, any.intersects(roles.topics()));
    }
}
