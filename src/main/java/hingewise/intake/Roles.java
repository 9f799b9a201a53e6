package hingewise.intake;

import hingewise.rulebook.Language;
import hingewise.rulebook.Phrase;
import java.util.BitSet;

/**
 * Numbers of the word sets that mean something to the reader; -1 for a set the language does not have.
 *
 * @param not denies what follows in the clause
 * @param notAny denies all that follows, as in "no cracks or lines"
 * @param notAfter denies what stands before it
 * @param noWord answers no by itself
 * @param yesWord answers yes by itself
 * @param hedge is not sure
 * @param hearsay has it from somebody else
 * @param past speaks of what was
 * @param since tells from when on it is so
 * @param unless makes it depend on something, or wishes it
 * @param condition begins a condition, so that what follows depends on it
 * @param mine speaks of this phone again
 * @param unknown says that it was not looked at
 * @param sarcasm does not mean what it says
 * @param elsewhere speaks of another phone, or of phones at large
 * @param but begins a clause
 * @param except begins a clause and turns "everything works"
 * @param and joins
 * @param or joins under a denial
 * @param begins a clause when it stands behind "and"
 * @param of joins parts of a phone to one, or a state to a part
 * @param fill may stand between a part and what is said of it
 * @param works what "except" turns
 * @param phone the phone as a whole, of which a part is not yet named
 * @param aspect parts that belong to another part that was named before, such as touch
 * @param there points to what the sentence before spoke of
 * @param pronoun stands at the head of a sentence for what the sentence before spoke of
 * @param wanted begins a text that offers nothing
 * @param does takes up what was said before of another part, as in "the cable does"
 * @param too takes up what was said before of another part, as in "the back too"
 * @param light says nothing by itself, though phrases may use it
 * @param only limits what is said, also to a condition
 * @param topics sets that are parts
 */
record Roles(
        int not,
        int notAny,
        int notAfter,
        int noWord,
        int yesWord,
        int hedge,
        int hearsay,
        int past,
        int since,
        int unless,
        int condition,
        int mine,
        int unknown,
        int sarcasm,
        int elsewhere,
        int but,
        int except,
        int and,
        int or,
        int begins,
        int of,
        int fill,
        int works,
        int phone,
        int aspect,
        int there,
        int pronoun,
        int wanted,
        int does,
        int too,
        int light,
        int only,
        BitSet topics) {
    static Roles of(Lexicon lexicon, Language language) {
        BitSet topics = new BitSet();
        language.topics().forEach(t -> topics.set(lexicon.number(Phrase.SET + t)));
        return new Roles(
                lexicon.number("@not"),
                lexicon.number("@not-any"),
                lexicon.number("@not-after"),
                lexicon.number("@no-word"),
                lexicon.number("@yes-word"),
                lexicon.number("@hedge"),
                lexicon.number("@hearsay"),
                lexicon.number("@past"),
                lexicon.number("@since"),
                lexicon.number("@unless"),
                lexicon.number("@condition"),
                lexicon.number("@mine"),
                lexicon.number("@unknown"),
                lexicon.number("@sarcasm"),
                lexicon.number("@elsewhere"),
                lexicon.number("@but"),
                lexicon.number("@except"),
                lexicon.number("@and"),
                lexicon.number("@or"),
                lexicon.number("@begins"),
                lexicon.number("@of"),
                lexicon.number("@fill"),
                lexicon.number("@works"),
                lexicon.number("@phone"),
                lexicon.number("@aspect"),
                lexicon.number("@there"),
                lexicon.number("@pronoun"),
                lexicon.number("@wanted"),
                lexicon.number("@does"),
                lexicon.number("@too"),
                lexicon.number("@light"),
                lexicon.number("@only"),
                topics);
    }

    /** Whether it only helps to say something. */
    boolean helps(Mention m) {
        return m.isIn(not)
                || m.isIn(notAny)
                || m.isIn(notAfter)
                || m.isIn(of)
                || m.isIn(fill)
                || m.isIn(but)
                || m.isIn(unless)
                || m.isIn(condition);
    }

    /** Whether it says nothing by itself. */
    boolean isLight(Mention m) {
        return m.light() || m.isIn(light) || m.isIn(only);
    }
}
