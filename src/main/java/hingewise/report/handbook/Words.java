package hingewise.report.handbook;

import hingewise.rulebook.Family;
import hingewise.rulebook.Moment;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Tool;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Figures and names as they stand in the handbook. */
final class Words {
    private Words() {}

    /** A chance in per cent with as many digits as it deserves: 85 %, 2.5 %, 0.03 %; with a blank that does not break. */
    static String percent(double chance) {
        double percent = 100 * chance;
        int digits = percent >= 10 && percent <= 90 ? 0 : percent >= .1 && percent <= 99.9 ? 1 : 3;
        String shown = String.format(Locale.ROOT, "%." + digits + "f", percent);
        String bare = shown.contains(".") ? shown.replaceAll("0+$", "").replaceAll("\\.$", "") : shown;
        return bare + "\u00A0%";
    }

    static String minutes(double minutes) {
        return new BigDecimal(Double.toString(minutes)).stripTrailingZeros().toPlainString() + " min";
    }

    static String money(RuleBook rules, BigDecimal amount) {
        return amount.toPlainString() + " " + rules.bench().currency();
    }

    /** Nothing when it is for every family and every model. */
    static String onlyFor(RuleBook rules, Set<String> families) {
        String only = rules.waysOfFolding().stream().allMatch(f -> families.contains(f.id()))
                ? ""
                : "Only for " + labels(rules.waysOfFolding(), f -> families.contains(f.id())) + ".";
        String not = labels(
                rules.families().values(),
                f -> f.model().filter(m -> families.contains(m.family())).isPresent() && !families.contains(f.id()));
        return Stream.of(only, not.isEmpty() ? "" : "Not on " + not + ".")
                .filter(s -> !s.isEmpty())
                .collect(Collectors.joining(" "));
    }

    private static String labels(Collection<Family> families, Predicate<Family> wanted) {
        return families.stream().filter(wanted).map(Family::label).collect(Collectors.joining(" and "));
    }

    /** When something makes sense. */
    static String when(Set<Moment> moments) {
        return "When: " + moments.stream().sorted().map(Words::of).collect(Collectors.joining(", ")) + ".";
    }

    private static String of(Moment moment) {
        return switch (moment) {
            case LISTING -> "from a listing";
            case ARRIVAL -> "on arrival";
            case OPENED -> "on the bench, opened";
            case AFTER_REPAIR -> "after a repair";
        };
    }

    /** What must have been answered before, such as "no to no sign of life". */
    static String needs(RuleBook rules, Map<String, Boolean> needs) {
        return needs.isEmpty()
                ? ""
                : needs.entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(n -> (n.getValue() ? "yes" : "no") + " to \"" + label(rules, n.getKey()) + "\"")
                        .collect(Collectors.joining(" and ", "Only after ", "."));
    }

    /** Nothing when it takes none. */
    static String tools(RuleBook rules, Set<String> tools) {
        return tools.isEmpty()
                ? ""
                : tools.stream()
                        .map(t -> Optional.ofNullable(rules.tools().get(t))
                                .map(Tool::label)
                                .orElse(t))
                        .collect(Collectors.joining("; ", "Tools: ", "."));
    }

    private static String label(RuleBook rules, String observation) {
        return rules.question(observation).map(q -> q.label()).orElse(observation);
    }
}
