package hingewise.simulation;

/**
 * Throws of chance that are named: who asks by the same name gets the same throw, whenever and however often it is asked.
 * So different ways of going about the same phone meet the same luck.
 */
record Chance(long seed) {
    private static final long STEP = 0x9E3779B97F4A7C15L;

    /** Another source, of its own. */
    Chance of(String name) {
        long mixed = seed;
        for (int i = 0; i < name.length(); i++) {
            mixed = mix(mixed + STEP * (name.charAt(i) + 1));
        }
        return new Chance(mixed);
    }

    /** Another source, of its own. */
    Chance of(long number) {
        return new Chance(mix(mix(seed) + STEP * (number + 1)));
    }

    /** In 0–1, 1 left out. */
    double thrown() {
        return (mix(seed + STEP) >>> 11) * 0x1p-53;
    }

    /** Finalizer of SplitMix64 (Steele, Lea and Flood 2014, OOPSLA). */
    private static long mix(long z) {
        long a = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
        long b = (a ^ a >>> 27) * 0x94D049BB133111EBL;
        return b ^ b >>> 31;
    }
}
