package hingewise.planning;

import hingewise.diagnosis.CauseOutlook;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.PossiblePhones;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Says in one sentence why a confirmation is proposed. */
final class Why {
    /** A try that hardly cures anything is done for what is seen after it. */
    private static final double LIKELY_TO_CURE = .01;
    /** What is seen after a try says why to do it only if it moves a chance as far as this. */
    private static final double LEAST_MOVED = .1;
    /**
     * Of the signs that are looked at together those are asked exactly, an inference each, that move a cause at least this
     * share as far as the one that moves one farthest, both in the drawn phones.
     */
    private static final double NEARLY = .8;

    private final RuleBook rules;
    private final Diagnosis diagnosis;
    private final PossiblePhones phones;
    private final Map<String, CauseOutlook> outlooks = new LinkedHashMap<>();

    /** @param phones drawn from the diagnosis */
    Why(RuleBook rules, Diagnosis diagnosis, PossiblePhones phones) {
        this.rules = rules;
        this.diagnosis = diagnosis;
        this.phones = phones;
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
        return farthest(looks, counted, kind).stream()
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

    /** Those that move a cause about as far as any does. */
    private List<Observation> farthest(List<Observation> looks, List<Cause> counted, EvidenceKind kind) {
        if (looks.size() < 2) {
            return looks;
        }
        List<OptionalDouble> far =
                looks.stream().map(o -> far(o, counted, kind)).toList();
        double most = far.stream().mapToDouble(f -> f.orElse(0)).max().orElse(0);
        return IntStream.range(0, looks.size())
                .filter(i -> far.get(i).isEmpty() || far.get(i).getAsDouble() >= NEARLY * most)
                .mapToObj(looks::get)
                .toList();
    }

    /** How far a look moves the cause that it moves most, in the drawn phones; empty for what was answered before. */
    private OptionalDouble far(Observation observation, List<Cause> counted, EvidenceKind kind) {
        Optional<double[]> shows = phones.chances(observation, phones::with);
        if (shows.isEmpty()) {
            return OptionalDouble.empty();
        }
        PossiblePhones.Look look = PossiblePhones.look(observation, kind);
        double[] said = Arrays.stream(shows.get())
                .map(p -> p * look.ifSo() + (1 - p) * look.ifNot())
                .toArray();
        double all = Arrays.stream(said).sum();
        double far = 0;
        for (Cause cause : counted) {
            BitSet with = phones.with(cause.id());
            double yes = with.stream().mapToDouble(i -> said[i]).sum();
            far = Math.max(far, Math.abs(yes / all - (with.cardinality() - yes) / (said.length - all)));
        }
        return OptionalDouble.of(far);
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
