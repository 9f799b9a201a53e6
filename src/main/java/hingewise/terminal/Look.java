package hingewise.terminal;

/**
 * What the other end can show.
 *
 * @param colour whether escape sequences for colour are understood; nothing is ever said by colour alone
 * @param unicode whether characters beyond ASCII arrive as written
 */
public record Look(boolean colour, boolean unicode) {
    Look withColour(boolean wanted) {
        return new Look(wanted, unicode);
    }

    /** The text as it can be shown: without unicode, typographic characters give way to their nearest in ASCII. */
    String shown(String text) {
        return unicode ? text : Ascii.of(text);
    }
}
