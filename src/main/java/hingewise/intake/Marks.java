package hingewise.intake;

import hingewise.rulebook.Trust.Mark;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What speaks for and against claims that agree. */
final class Marks {
    private static final int SEVERAL = 3;
    private static final int MOST_HEARD = 3;
    /** Surer than this, either way, examples cannot make it. */
    static final double SUREST = .005;

    private Marks() {}

    /** @param opposing those that claim the opposite */
    static Map<Mark, Double> of(List<Found> agreeing, List<Found> opposing) {
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
        marks.put(
                Mark.RIVAL,
                odds(all.stream().mapToDouble(Found.Evidence::rival).min().orElse(0)));
        marks.put(Mark.HEARD, Math.min(MOST_HEARD, (double) all.size() - phrases.size()));
        marks.put(
                Mark.OPPOSITE,
                odds(opposing.stream()
                        .mapToDouble(f -> f.evidence().chance())
                        .max()
                        .orElse(0)));
        marks.put(
                Mark.SENTENCE,
                odds(all.stream().mapToDouble(Found.Evidence::sentence).max().orElse(0)));
        boolean alone = phrases.isEmpty();
        marks.put(Mark.SILENT, one(alone && all.stream().allMatch(Found.Evidence::silent)));
        Optional<Found.Evidence> clearest = all.stream().max(Comparator.comparingDouble(Found.Evidence::chance));
        marks.put(
                Mark.HEARD_PART,
                one(alone && clearest.filter(Found.Evidence::part).isPresent()));
        marks.put(
                Mark.HEARD_WORDS,
                alone ? Math.log(clearest.map(Found.Evidence::words).orElse(1)) : 0);
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
