package hingewise.wizard.view;

/** How much room the window gives. */
enum Room {
    /** Everything beside the question, in two columns. */
    NARROW(0),
    MEDIUM(840),
    /** The list of questions, the question, and causes with steps. */
    WIDE(1160);

    private final double from;

    Room(double from) {
        this.from = from;
    }

    static Room of(double width) {
        return width >= WIDE.from ? WIDE : width >= MEDIUM.from ? MEDIUM : NARROW;
    }
}
