package hingewise.intake;

import hingewise.rulebook.Trust.Mark;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What speaks for and against claims that agree. */
final class Marks {
    private static final int SEVERAL = 3;
    private static final int MOST_HEARD = 3;
    /** Surer than this, either way, examples cannot make it. */
    private static final double SUREST = .005;

    private Marks() {}

    static Map<Mark, Double> of(List<Found> agreeing) {
        List<Found.Evidence> all = agreeing.stream().map(Found::evidence).toList();
        List<Found.Evidence> phrases =
                all.stream().filter(Found.Evidence::byPhrase).toList();
        double chance =
                odds(all.stream().mapToDouble(Found.Evidence::chance).max().orElse(0));
        Map<Mark, Double> marks = new EnumMap<>(Mark.class);
        marks.put(Mark.ALWAYS, 1.0);
        marks.put(Mark.PHRASE, one(!phrases.isEmpty()));
        marks.put(Mark.PART, one(phrases.stream().anyMatch(Found.Evidence::part)));
        marks.put(Mark.SEVERAL_WORDS, one(phrases.stream().anyMatch(e -> e.words() >= SEVERAL)));
        marks.put(Mark.SCATTERED, one(!phrases.isEmpty() && phrases.stream().allMatch(Found.Evidence::scattered)));
        marks.put(Mark.CHANCE, chance);
        marks.put(Mark.CHANCE_BESIDE_PHRASE, phrases.isEmpty() ? 0 : chance);
        marks.put(
                Mark.MEAN_CHANCE,
                odds(all.stream().mapToDouble(Found.Evidence::chance).average().orElse(0)));
        marks.put(
                Mark.RIVAL,
                odds(all.stream().mapToDouble(Found.Evidence::rival).min().orElse(0)));
        marks.put(Mark.HEARD, Math.min(MOST_HEARD, (double) all.size() - phrases.size()));
        return marks;
    }

    private static double one(boolean is) {
        return is ? 1 : 0;
    }

    private static double odds(double chance) {
        double c = Math.max(SUREST, Math.min(1 - SUREST, chance));
        return Math.log(c / (1 - c));
    }
}
