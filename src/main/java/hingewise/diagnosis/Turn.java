package hingewise.diagnosis;

import hingewise.rulebook.Damage;

/** What may have happened to one cause. */
public sealed interface Turn {
    /**
     * It may have been cured or brought about.
     *
     * @param cured P(absent after | present before)
     * @param damage P(present after | absent before), by what else was present before
     */
    record Change(double cured, Damage damage) implements Turn {}

    /**
     * Its component was renewed.
     *
     * @param bad P(present after), whatever was before
     */
    record Renewal(double bad) implements Turn {}
}
