package hingewise.wizard.view;

import java.util.Locale;
import org.joda.money.Money;

/** Numbers as the window writes them. */
final class Figures {
    private Figures() {}

    /** A chance in 0–1 as whole per cent; never 0 or 100, for nothing is certain. */
    static String percent(double chance) {
        if (chance < .01) {
            return "< 1 %";
        }
        return chance > .99 ? "> 99 %" : String.format(Locale.ROOT, "%.0f %%", 100 * chance);
    }

    static String minutes(double minutes) {
        return String.format(Locale.ROOT, "%.0f min", minutes);
    }

    /** An amount with the code of its currency, never parted at a line's end; what is lost with a minus before. */
    static String money(Money money) {
        return (money.isNegative() ? "\u2212" : "") + money.getAmount().abs().toPlainString() + "\u00a0"
                + money.getCurrencyUnit().getCode();
    }
}
