package hingewise.terminal;

/** When to colour. */
enum ColourWish {
    AUTO,
    ALWAYS,
    NEVER;

    Look on(Look look) {
        return switch (this) {
            case AUTO -> look;
            case ALWAYS -> look.withColour(true);
            case NEVER -> look.withColour(false);
        };
    }
}
