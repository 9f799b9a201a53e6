package hingewise.wizard.model;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Withdrawal;
import hingewise.diagnosis.Course;
import hingewise.report.EntryText;
import hingewise.rulebook.Cause;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The story of a case, told for the window: stops along an axis, and how the leading causes moved over them.
 *
 * @param stops before any entry, then once each entry had been recorded
 * @param lines the leading causes: those that stand or stood highest
 */
public record Told(CaseFile file, List<Stop> stops, List<Line> lines) {
    private static final int FEWEST_LINES = 3;
    private static final int MOST_LINES = 5;
    /** Beyond the first few, a cause that never came this far is no leading cause. */
    private static final double LEADING = .1;
    /** Smaller moves are noise to a reader. */
    private static final double WORTH_TELLING = .02;

    private static final int MOST_TOLD = 4;
    private static final int ANSWER = 3;

    public Told {
        stops = List.copyOf(stops);
        lines = List.copyOf(lines);
    }

    /**
     * A point of the story.
     *
     * @param entry empty before any entry
     * @param words what the entry says
     * @param withdrawn whether it was taken back later
     * @param moved the causes that moved most, those that moved most first
     * @param answer the likeliest causes then, the likeliest first
     */
    public record Stop(Optional<Entry> entry, String words, boolean withdrawn, List<Moved> moved, List<Chance> answer) {
        /** Whether it may be taken back. */
        public boolean standing() {
            return !withdrawn && entry.filter(e -> !(e instanceof Withdrawal)).isPresent();
        }
    }

    /** How one cause moved: chances in 0–1. */
    public record Moved(String label, double before, double after) {}

    /**
     * How likely one cause is.
     *
     * @param word the rule book's word for the chance
     * @param value in 0–1
     */
    public record Chance(String label, String word, double value) {}

    /**
     * One cause over the whole story.
     *
     * @param chances its chance in 0–1 at each stop
     */
    public record Line(String label, List<Double> chances) {
        public Line {
            chances = List.copyOf(chances);
        }
    }

    /** @throws hingewise.diagnosis.CaseException if the case names something the rule book lacks */
    static Told of(RuleBook rules, CaseFile file) {
        Course course = Course.of(rules, file);
        Set<String> withdrawn = file.entries().stream()
                .flatMap(e -> e instanceof Withdrawal w ? Stream.of(w.withdraws()) : Stream.empty())
                .collect(Collectors.toSet());
        List<Map<String, Double>> chances = new ArrayList<>();
        List<Stop> stops = new ArrayList<>();
        chances.add(course.start());
        stops.add(new Stop(
                Optional.empty(),
                "Before any entry: how common each fault is.",
                false,
                List.of(),
                answer(rules, course.start())));
        for (int i = 0; i < course.stages().size(); i++) {
            Course.Stage stage = course.stages().get(i);
            chances.add(stage.chances());
            stops.add(new Stop(
                    Optional.of(stage.entry()),
                    EntryText.of(rules, stage.entry()),
                    withdrawn.contains(stage.entry().id()),
                    course.shifts(i, WORTH_TELLING, MOST_TOLD).stream()
                            .map(s -> new Moved(label(rules, s.cause()), s.before(), s.after()))
                            .toList(),
                    answer(rules, stage.chances())));
        }
        return new Told(file, stops, lines(rules, chances));
    }

    private static List<Chance> answer(RuleBook rules, Map<String, Double> chances) {
        return chances.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .limit(ANSWER)
                .map(e -> new Chance(label(rules, e.getKey()), rules.words().of(e.getValue()), e.getValue()))
                .toList();
    }

    /** The causes that stood highest at any stop, in the order in which they stand at the end. */
    private static List<Line> lines(RuleBook rules, List<Map<String, Double>> chances) {
        record Peak(String cause, double peak, List<Double> chances) {
            double last() {
                return chances.get(chances.size() - 1);
            }
        }
        List<Peak> peaks = chances.get(0).keySet().stream()
                .map(c -> {
                    List<Double> over =
                            chances.stream().map(m -> m.getOrDefault(c, 0.0)).toList();
                    return new Peak(c, over.stream().reduce(0.0, Math::max), over);
                })
                .sorted(Comparator.comparingDouble((Peak p) -> -p.peak()).thenComparing(Peak::cause))
                .toList();
        return Stream.concat(
                        peaks.stream().limit(FEWEST_LINES),
                        peaks.stream().limit(MOST_LINES).skip(FEWEST_LINES).filter(p -> p.peak() >= LEADING))
                .sorted(Comparator.comparingDouble((Peak p) -> -p.last()).thenComparing(Peak::cause))
                .map(p -> new Line(label(rules, p.cause()), p.chances()))
                .toList();
    }

    private static String label(RuleBook rules, String cause) {
        return Optional.ofNullable(rules.causes().get(cause)).map(Cause::label).orElse(cause);
    }
}
