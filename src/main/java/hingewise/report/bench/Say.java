package hingewise.report.bench;

import org.joda.money.Money;

/** Figures of a sheet. */
final class Say {
    private Say() {}

    /** A share in whole per cent, for it is estimated; never none and never all, for nothing is certain. */
    static String percent(double chance) {
        if (chance < .01) {
            return "<1 %";
        }
        return chance > .99 ? ">99 %" : Math.round(100 * chance) + " %";
    }

    static String minutes(double minutes) {
        return Math.round(minutes) + " min";
    }

    static String money(Money money) {
        return money.getAmount().toPlainString() + " " + money.getCurrencyUnit().getCode();
    }
}
