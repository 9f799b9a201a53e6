package hingewise.inference;

/** Arithmetic on chances that keeps small values exact. */
final class Chances {
    private Chances() {}

    static double check(double value, String what) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(what + " is " + value + "; it must lie between 0 and 1");
        }
        return value;
    }

    /**
     * The chance that at least one of two independent things happens. Written without {@code 1 - x}, which would round
     * away most digits of a leak of 1e-5.
     */
    static double either(double a, double b) {
        return a + b * (1 - a);
    }
}
