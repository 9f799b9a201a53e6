package hingewise.review;

import hingewise.rulebook.RuleBook;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * One disturbance of all numbers of a rule book: each is moved on the scale of log10-odds by a normal draw of its own.
 * Method: Henrion, Pradhan, Del Favero, Huang, Provan, O'Rorke 1996, UAI, "Why is diagnosis using belief networks
 * insensitive to imprecision in probabilities?".
 */
final class Noise {
    private final List<String> names;
    private final double[] draws;

    private Noise(List<String> names, double[] draws) {
        this.names = names;
        this.draws = draws;
    }

    /** Standard normal draws, the same for the same random source whatever is done with them. */
    static Noise drawn(List<String> names, Random random) {
        return new Noise(
                names, names.stream().mapToDouble(n -> random.nextGaussian()).toArray());
    }

    /** The standard draw of one number, by its place among the names. */
    double of(int number) {
        return draws[number];
    }

    /**
     * The rule book with this noise on it.
     *
     * @param deviation standard deviation in log10-odds
     */
    RuleBook on(RuleBook rules, double deviation) {
        Map<String, Double> byName = new HashMap<>();
        for (int i = 0; i < draws.length; i++) {
            byName.put(names.get(i), draws[i]);
        }
        return Numbers.moved(rules, (name, value) -> moved(value, deviation * byName.getOrDefault(name, 0.0)));
    }

    /** A chance moved by so many tenfolds of its odds. */
    static double moved(double chance, double tenfolds) {
        double odds = chance / (1 - chance) * Math.pow(10, tenfolds);
        return odds / (1 + odds);
    }
}
