package hingewise.wizard.view;

/** Drawn shapes, as paths on a field 16 pixels wide and high. */
final class Marks {
    /** Two halves of a phone, opening. */
    static final String HALVES = "M1 2 L7 4 L7 15 L1 13 Z M9 4 L15 2 L15 13 L9 15 Z";

    static final String CAUTION = "M8 1 L15.5 14.5 L0.5 14.5 Z M7.2 5.5 L8.8 5.5 L8.5 10 L7.5 10 Z "
            + "M7.2 11.2 L8.8 11.2 L8.8 12.8 L7.2 12.8 Z";
    static final String STOP =
            "M5 0.5 L11 0.5 L15.5 5 L15.5 11 L11 15.5 L5 15.5 L0.5 11 L0.5 5 Z M3.8 7 L12.2 7 L12.2 9 L3.8 9 Z";
    static final String DONE = "M1.5 8.5 L3 7 L6.2 10.2 L13 3.5 L14.5 5 L6.2 13.2 Z";
    static final String UNSURE =
            "M2 7.2 C4 4.4 6 4.8 8 6.6 C10 8.4 12 8.8 14 6 L14 9 C12 11.8 10 11.4 8 9.6 " + "C6 7.8 4 7.4 2 10.2 Z";
    static final String OPEN = "M8 2 A6 6 0 1 0 8.01 2 Z M8 4 A4 4 0 1 1 7.99 4 Z";
    static final String BARRED = "M2 7 L14 7 L14 9 L2 9 Z";

    private Marks() {}
}
