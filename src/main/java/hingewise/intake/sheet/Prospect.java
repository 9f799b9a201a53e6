package hingewise.intake.sheet;

import org.joda.money.Money;

/** What phones promise of which the same is claimed. For several threads at once. */
@FunctionalInterface
public interface Prospect {
    /**
     * The appraisal of one such phone.
     *
     * @param price asked for it
     * @param shipping paid for it to come
     */
    Appraisal at(Money price, Money shipping);
}
