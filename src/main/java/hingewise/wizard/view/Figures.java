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

    /** An amount with its currency, never parted at a line's end; the euro by its sign, what is lost with a minus before. */
    static String money(Money money) {
        String code = money.getCurrencyUnit().getCode();
        return (money.isNegative() ? "\u2212" : "") + (code.equals("EUR") ? "\u20ac" : code) + "\u00a0"
                + money.getAmount().abs().toPlainString();
    }
}
