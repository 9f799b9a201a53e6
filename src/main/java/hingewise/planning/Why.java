package hingewise.planning;

import hingewise.diagnosis.CauseOutlook;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.PossiblePhones;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Says in one sentence why a confirmation is proposed. */
final class Why {
    /** A try that hardly cures anything is done for what is seen after it. */
    private static final double LIKELY_TO_CURE = .01;
    /** What is seen after a try says why to do it only if it moves a chance as far as this. */
    private static final double LEAST_MOVED = .1;

    private final RuleBook rules;
    private final Diagnosis diagnosis;
    private final Map<String, CauseOutlook> outlooks = new LinkedHashMap<>();

    Why(RuleBook rules, Diagnosis diagnosis) {
        this.rules = rules;
        this.diagnosis = diagnosis;
    }

    /**
     * A try by what it is likeliest to cure, a look by the cause it moves most.
     *
     * @param looks the observations it may say anything new of
     * @param counted the causes that count
     */
    String of(Confirmation c, List<Observation> looks, List<Cause> counted, EvidenceKind kind) {
        return cure(c, LIKELY_TO_CURE)
                .or(() -> answer(looks, counted, kind, c.cures().isEmpty() ? 0 : LEAST_MOVED))
                .or(() -> cure(c, 0))
                .or(() -> answer(looks, counted, kind, 0))
                .orElse("");
    }

    private Optional<String> cure(Confirmation c, double least) {
        return c.cures().entrySet().stream()
                .filter(e -> diagnosis.chanceOf(e.getKey()) * e.getValue() > least)
                .max(Comparator.comparingDouble(e -> diagnosis.chanceOf(e.getKey()) * e.getValue()))
                .map(e -> {
                    double p = diagnosis.chanceOf(e.getKey());
                    return String.format(
                            Locale.ROOT,
                            "%s is %s (%s %%); this cures it in %.0f %% of cases.",
                            label(e.getKey()),
                            rules.words().of(p),
                            percent(p),
                            100 * e.getValue());
                });
    }

    private record Moved(String cause, Observation by, double ifYes, double ifNo) {
        double far() {
            return Math.abs(ifYes - ifNo);
        }
    }

    /** @param least how far a chance must move, in 0–1 */
    private Optional<String> answer(List<Observation> looks, List<Cause> counted, EvidenceKind kind, double least) {
        return looks.stream()
                .flatMap(o -> counted.stream().map(c -> moved(o, c.id(), kind)))
                .max(Comparator.comparingDouble(Moved::far))
                .filter(m -> m.far() >= least)
                .map(m -> String.format(
                        Locale.ROOT,
                        "%s: %s %% with \"%s\", %s %% without.",
                        label(m.cause()),
                        percent(m.ifYes()),
                        m.by().label(),
                        percent(m.ifNo())));
    }

    private Moved moved(Observation observation, String cause, EvidenceKind kind) {
        CauseOutlook outlook = outlooks.computeIfAbsent(observation.id(), diagnosis::outlook);
        PossiblePhones.Look look = PossiblePhones.look(observation, kind);
        double trueYes = outlook.yes() * look.ifSo();
        double saidYes = trueYes + (1 - outlook.yes()) * look.ifNot();
        double ifYes = outlook.ifYes().getOrDefault(cause, 0.0);
        double ifNo = outlook.ifNo().getOrDefault(cause, 0.0);
        return new Moved(
                cause,
                observation,
                mixed(trueYes / saidYes, ifYes, ifNo),
                mixed((outlook.yes() - trueYes) / (1 - saidYes), ifYes, ifNo));
    }

    private static double mixed(double yes, double ifYes, double ifNo) {
        return yes * ifYes + (1 - yes) * ifNo;
    }

    /** Whole per cent, never 0 or 100: nothing is certain. */
    private static String percent(double chance) {
        if (chance < .01) {
            return "<1";
        }
        return chance > .99 ? ">99" : String.format(Locale.ROOT, "%.0f", 100 * chance);
    }

    private String label(String cause) {
        return Optional.ofNullable(rules.causes().get(cause)).map(Cause::label).orElse(cause);
    }
}
