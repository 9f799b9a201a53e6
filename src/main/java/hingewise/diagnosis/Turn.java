package hingewise.diagnosis;

/** What may have happened to one cause. */
public sealed interface Turn {
    /**
     * It may have been cured or brought about.
     *
     * @param cured P(absent after | present before)
     * @param damaged P(present after | absent before)
     */
    record Change(double cured, double damaged) implements Turn {
        /** One change, then another, each independent. */
        Change then(Change next) {
            return new Change(
                    cured * (1 - next.damaged) + (1 - cured) * next.cured,
                    (1 - damaged) * next.damaged + damaged * (1 - next.cured));
        }
    }

    /**
     * Its component was renewed.
     *
     * @param bad P(present after), whatever was before
     */
    record Renewal(double bad) implements Turn {}
}
