package hingewise.rulebook.yaml;

import java.math.BigDecimal;

/** The numbers that may stand somewhere. */
public enum Range {
    /** A link, a reliability, a cure, a damage: nothing is impossible and nothing is certain. */
    CHANCE(".001", ".999"),
    /** A base rate, a leak, how common a history is. */
    RATE(".00001", ".5"),
    /** The upper end of a word for a chance. */
    UP_TO(".00001", "1"),
    /** Hands-on minutes; the upper end is a working week. */
    MINUTES("0", "2400"),
    MONEY("0", "1000000"),
    /** A share of a price, or a chance that may be none. */
    SHARE("0", ".999"),
    DAYS("0", "365"),
    /** What something adds to the logarithm of odds. */
    WEIGHT("-20", "20"),
    /** What one unit of a currency is worth in another. */
    EXCHANGE(".000001", "1000000");

    private final BigDecimal low;
    private final BigDecimal high;
    private final String shown;

    Range(String low, String high) {
        this.low = new BigDecimal(low);
        this.high = new BigDecimal(high);
        this.shown = "from " + low + " to " + high;
    }

    boolean holds(BigDecimal number) {
        return number.compareTo(low) >= 0 && number.compareTo(high) <= 0;
    }

    BigDecimal lowest() {
        return low;
    }

    /** What to do about a number outside. */
    String advice(BigDecimal number) {
        if (this == CHANCE && (number.signum() == 0 || number.compareTo(BigDecimal.ONE) == 0)) {
            return "Nothing is impossible or certain: write a number " + shown + ".";
        }
        return "Write a number " + shown + ".";
    }
}
