package hingewise.intake;

/**
 * One word of a text.
 *
 * @param surface in lower case, as written
 * @param stem without its ending
 * @param start offset of its first character, in UTF-16 units
 * @param end offset just behind it
 * @param before what stands between it and the word before
 */
record Word(String surface, String stem, int start, int end, Gap before) {
    /** What stands between two words, the weakest first. */
    enum Gap {
        NONE,
        /** A sign for "and", such as an ampersand or a slash. */
        JOIN,
        COMMA,
        BRACKET,
        DASH,
        COLON,
        /** The end of a sentence or of a line. */
        STOP,
        /** The end of a question. */
        QUESTION;

        boolean endsSentence() {
            return compareTo(STOP) >= 0;
        }

        boolean endsClause() {
            return compareTo(COMMA) >= 0;
        }

        /** Whether what follows may answer what stands before. */
        boolean announces() {
            return this == COLON || this == DASH || this == QUESTION;
        }
    }
}
