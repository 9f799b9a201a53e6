package hingewise.terminal;

import java.util.Locale;
import org.joda.money.Money;

/** Numbers as a person reads them. */
final class Figures {
    private static final int BAR = 10;

    private Figures() {}

    /** A chance in per cent, with a decimal below 1 and above 99; never 0 or 100, for nothing is certain. */
    static String percent(double chance) {
        if (chance >= .01 && chance <= .99) {
            return Math.round(100 * chance) + " %";
        }
        if (chance < .001) {
            return "<0.1 %";
        }
        if (chance > .999) {
            return ">99.9 %";
        }
        return String.format(Locale.ROOT, "%.1f %%", 100 * chance);
    }

    /** The same, set right in a column of seven. */
    static String percentColumn(double chance) {
        return String.format(Locale.ROOT, "%7s", percent(chance));
    }

    /** Ten cells, filled to the nearest half cell; any chance at all shows half a cell. */
    static String bar(double chance, Look look) {
        long halves = Math.max(chance > 0 ? 1 : 0, Math.round(chance * 2 * BAR));
        int full = (int) halves / 2;
        int half = (int) halves % 2;
        String shape = look.unicode() ? "━╸┄" : "=-.";
        return shape.substring(0, 1).repeat(full)
                + shape.substring(1, 2).repeat(half)
                + shape.substring(2).repeat(BAR - full - half);
    }

    static String money(Money money) {
        return money.getAmount().toPlainString() + " " + money.getCurrencyUnit().getCode();
    }

    static String minutes(double minutes) {
        return Math.round(minutes) + " min";
    }

    /** "1 claim", "3 claims". */
    static String count(long many, String one) {
        return many + " " + one + (many == 1 ? "" : "s");
    }
}
