package hingewise.terminal;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Phone;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.Diagnostician;
import hingewise.diagnosis.RankedCause;
import hingewise.review.Entanglement;
import hingewise.rulebook.Cause;
import hingewise.rulebook.RuleBook;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What a rule book holds, and what it says of a phone of which nothing is known. */
final class RuleSummary {
    private RuleSummary() {}

    static void write(Page page, RuleBook rules) {
        page.line(rules.title());
        page.line(String.join(
                ", ",
                Figures.count(rules.waysOfFolding().size(), "way") + " of folding",
                Figures.count(rules.families().size() - rules.waysOfFolding().size(), "model"),
                Figures.count(rules.components().size(), "component"),
                rules.histories().size() == 1 ? "1 history" : rules.histories().size() + " histories",
                Figures.count(rules.causes().size(), "cause"),
                Figures.count(rules.observations().size(), "observation"),
                Figures.count(rules.choices().size(), "choice"),
                Figures.count(rules.confirmations().size(), "confirmation"),
                Figures.count(rules.access().size(), "state") + " of opening",
                Figures.count(rules.parts().size(), "part"),
                Figures.count(rules.cautions().size(), "caution"),
                Figures.count(rules.cases().size(), "case") + "."));
        page.heading("Chance of each cause before any entry, in per cent");
        marginals(page, rules);
    }

    /** The base rates together with all that raises them: this is what outside records are to be compared with. */
    private static void marginals(Page page, RuleBook rules) {
        List<String> families = rules.waysOfFolding().stream().map(f -> f.id()).toList();
        Map<String, Map<String, Double>> byFamily =
                families.stream().collect(Collectors.toMap(f -> f, f -> priors(rules, f)));
        page.unwrapped(row("", families));
        for (Cause cause : rules.causes().values()) {
            page.unwrapped(row(
                    cause.id(),
                    families.stream()
                            .map(f -> byFamily.getOrDefault(f, Map.of()).get(cause.id()))
                            .map(p -> p == null ? "-" : String.format(Locale.ROOT, "%.3f", 100 * p))
                            .toList()));
        }
    }

    private static Map<String, Double> priors(RuleBook rules, String family) {
        Diagnosis nothingKnown = new Diagnostician(rules)
                .diagnose(new CaseFile("nothing known", false, new Phone(family, ""), List.of()));
        Map<String, Double> priors = new TreeMap<>();
        for (RankedCause ranked : nothingKnown.causes()) {
            priors.put(ranked.cause().id(), ranked.prior());
        }
        return priors;
    }

    private static String row(String name, List<String> cells) {
        return String.format(Locale.ROOT, "%-40s", name)
                + cells.stream().map(c -> String.format(Locale.ROOT, "%12s", c)).collect(Collectors.joining());
    }

    /** The worst of the cases of one sort. */
    static void write(Page page, List<Entanglement> all, String section, String noun) {
        List<Entanglement> sort =
                all.stream().filter(e -> e.section().equals(section)).toList();
        sort.stream()
                .max(Comparator.comparingInt(Entanglement::largestClique))
                .ifPresent(worst -> page.line("Over " + Figures.count(sort.size(), noun) + " at most "
                        + worst.largestClique() + ": " + worst.name() + "."));
    }
}
