package hingewise.intake;

import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;

/**
 * How far what is read agrees with the labels. Precision: of what is suggested, how much is labelled; recall: of what is
 * labelled, how much is suggested. Every label counts once, and a wrong answer counts against both.
 *
 * @param misses one line for each text that is not read as labelled
 */
record Accuracy(int right, int suggested, int labelled, List<String> misses) {
    static Accuracy of(RuleBook rules, ListingReader reader, List<Labelled> texts) {
        int right = 0;
        int suggested = 0;
        int labelled = 0;
        List<String> misses = new ArrayList<>();
        for (Labelled text : texts) {
            Set<String> read = new TreeSet<>();
            reader.read(text.text()).suggestions().stream()
                    .filter(s -> asked(rules, s.observation(), text.family()))
                    .forEach(s -> read.add(s.observation() + (s.yes() ? "=yes" : "=no")));
            Set<String> wrong = new TreeSet<>(read);
            wrong.removeAll(text.labels());
            Set<String> missed = new TreeSet<>(text.labels());
            missed.removeAll(read);
            right += read.size() - wrong.size();
            suggested += read.size();
            labelled += text.labels().size();
            if (!wrong.isEmpty() || !missed.isEmpty()) {
                misses.add(text.id() + " wrong " + wrong + " missed " + missed + "\n    " + text.text());
            }
        }
        return new Accuracy(right, suggested, labelled, misses);
    }

    /** A case has a family, and what is not asked of it is not suggested. */
    private static boolean asked(RuleBook rules, String observation, String family) {
        return Objects.requireNonNull(rules.observations().get(observation))
                .families()
                .contains(family);
    }

    double precision() {
        return (double) right / suggested;
    }

    double recall() {
        return (double) right / labelled;
    }

    /** Precision and recall with their 95 % intervals by Wilson 1927, JASA 22:209-212, as commons-math computes them. */
    String summary() {
        return share("precision", suggested) + "; " + share("recall", labelled);
    }

    private String share(String name, int of) {
        ConfidenceInterval interval = new WilsonScoreInterval().createInterval(of, right, .95);
        return String.format(
                Locale.ROOT,
                "%s %.3f (%d of %d, 95 %% %.3f to %.3f)",
                name,
                (double) right / of,
                right,
                of,
                interval.getLowerBound(),
                interval.getUpperBound());
    }
}
