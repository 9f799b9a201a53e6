package hingewise.intake;

import hingewise.assessment.Assessment;
import hingewise.casefile.CaseFile;
import hingewise.casefile.Report;
import hingewise.planning.Step;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Language;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Phrases;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The few questions worth putting to the seller, and the message that puts them. */
public final class SellerQuestions {
    /** Common practice, no source: sellers leave longer lists unanswered. */
    private static final int MOST = 5;

    private static final int FEWEST = 3;

    /** The language of the rule book itself. */
    private static final String OWN = "en";

    private SellerQuestions() {}

    /**
     * Up to five questions, those first that belong to the best-ranked step; of the observations that a step settles,
     * the one whose answer is least foreseen. Where steps are too few for three questions, they take a second one each.
     */
    public static List<Observation> of(RuleBook rules, Assessment assessment) {
        List<Step> steps = assessment.tryFirst().stream()
                .filter(s -> s.confirmation().kind() == Confirmation.Kind.QUESTION)
                .filter(s -> s.confirmation().moments().contains(Moment.LISTING))
                .toList();
        Set<Observation> chosen = new LinkedHashSet<>();
        for (int round = 0; round < MOST && chosen.size() < FEWEST; round++) {
            for (Step step : steps) {
                if (chosen.size() < MOST) {
                    leastForeseen(rules, assessment, step, chosen).ifPresent(chosen::add);
                }
            }
        }
        return List.copyOf(chosen);
    }

    private static Optional<Observation> leastForeseen(
            RuleBook rules, Assessment assessment, Step step, Set<Observation> chosen) {
        String family = assessment.file().phone().family();
        Set<String> answered = assessment.diagnosis().readings().latest().keySet();
        return step.confirmation().settles().stream()
                .map(id -> Objects.requireNonNull(rules.observations().get(id)))
                .filter(o -> o.families().contains(family) && !answered.contains(o.id()) && !chosen.contains(o))
                .filter(o -> o.askable(assessment.diagnosis().readings().latest()))
                .filter(o -> languages(rules).allMatch(l -> question(o, l.id()).isPresent()))
                .max(Comparator.comparingDouble(o -> {
                    double yes = assessment.diagnosis().outlook(o.id()).yes();
                    return yes * (1 - yes);
                }));
    }

    /** The languages that sellers are written to. */
    public static Stream<Language> languages(RuleBook rules) {
        return rules.languages().values().stream().filter(l -> l.letter().isPresent());
    }

    /**
     * The languages that sellers are written to: first the one in which what the seller claims was noted down, then
     * English, which the rule book is written in, then the others.
     */
    public static Stream<Language> languages(RuleBook rules, CaseFile file) {
        String told = file.standing().stream()
                .flatMap(e ->
                        e instanceof Report r && r.kind() == EvidenceKind.CLAIM ? Stream.of(r.remark()) : Stream.of())
                .filter(r -> !r.isBlank())
                .collect(Collectors.joining(". "));
        String first = told.isEmpty() ? OWN : new Languages(rules).of(told);
        return languages(rules)
                .sorted(Comparator.comparing((Language l) -> !l.id().equals(first))
                        .thenComparing(l -> !l.id().equals(OWN)));
    }

    private static Optional<String> question(Observation o, String language) {
        Phrases.Said said = o.phrases().byLanguage().get(language);
        return said == null ? Optional.empty() : said.ask();
    }

    /**
     * The message, ready to paste.
     *
     * @param asked what {@link #of} chose
     * @throws IllegalArgumentException if the language has no letter
     */
    public static List<String> message(Language language, List<Observation> asked) {
        Language.Letter letter = language.letter()
                .orElseThrow(() -> new IllegalArgumentException("no letter in \"" + language.id() + "\""));
        List<String> lines = new ArrayList<>();
        lines.add(letter.greeting());
        lines.add("");
        lines.addAll(IntStream.range(0, asked.size())
                .mapToObj(i ->
                        (i + 1) + ". " + question(asked.get(i), language.id()).orElseThrow())
                .collect(Collectors.toList()));
        lines.add("");
        lines.add(letter.closing());
        return List.copyOf(lines);
    }
}
