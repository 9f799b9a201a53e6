package hingewise.terminal;

/** A meaning that may be coloured, never by colour alone. */
enum Tint {
    HEADING("1"),
    STOP("1;31"),
    CARE("33"),
    FOR("32"),
    AGAINST("35"),
    FAINT("2");

    private final String code;

    Tint(String code) {
        this.code = code;
    }

    /** The text between the escape sequences that colour it and end the colour. */
    String paint(String text) {
        return "\u001B[" + code + "m" + text + "\u001B[0m";
    }
}
