package hingewise.terminal;

import hingewise.assessment.Assessment;
import hingewise.assessment.Cautions;
import hingewise.assessment.ShownCaution;
import hingewise.planning.Step;
import hingewise.rulebook.Caution;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Where each caution stands in full. What the case brings up stands above everything proposed; what comes with a step or
 * a part stands there the first time it applies, and is pointed to from there on where all of that step applies.
 *
 * @param above ids of those that stand above
 * @param firstStep number of the step at which each other one stands, by id
 * @param withParts those that first apply at the parts
 */
record Care(Set<String> above, Map<String, Integer> firstStep, List<Caution> withParts) {
    private static final String MARK = "!  ";

    /** @param told the steps that are told, best first */
    static Care of(RuleBook rules, Assessment assessment, List<Step> told) {
        Set<String> above = assessment.cautions().stream()
                .filter(ShownCaution::brought)
                .map(c -> c.caution().id())
                .collect(Collectors.toSet());
        Map<String, Integer> firstStep = new LinkedHashMap<>();
        for (int i = 0; i < told.size(); i++) {
            for (Caution caution : Cautions.of(rules, told.get(i))) {
                if (!above.contains(caution.id())) {
                    firstStep.putIfAbsent(caution.id(), i + 1);
                }
            }
        }
        List<Caution> withParts = withParts(rules, assessment).stream()
                .filter(c -> !above.contains(c.id()) && !firstStep.containsKey(c.id()))
                .toList();
        return new Care(above, firstStep, withParts);
    }

    private static List<Caution> withParts(RuleBook rules, Assessment assessment) {
        return assessment.parts().order().stream()
                .flatMap(p -> Cautions.of(rules, p).stream())
                .distinct()
                .toList();
    }

    /** How many stand below with steps and parts. */
    int below() {
        return firstStep.size() + withParts.size();
    }

    /** What comes with one of the steps told. */
    void atStep(Page page, RuleBook rules, Step step, int number) {
        tell(page, 4, "care   ", "as at ", Cautions.of(rules, step), number);
    }

    /** What comes with fitting the parts. */
    void atParts(Page page, RuleBook rules, Assessment assessment) {
        tell(page, 0, "care ", "in fitting them as at ", withParts(rules, assessment), 0);
    }

    private void tell(Page page, int indent, String lead, String as, List<Caution> cautions, int here) {
        List<Caution> all =
                cautions.stream().filter(c -> !above.contains(c.id())).toList();
        Set<String> ids = all.stream().map(Caution::id).collect(Collectors.toSet());
        // A step is pointed to only where all that stands there applies; else the words are said again.
        Map<Integer, Set<String>> byStep = firstStep.entrySet().stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getValue, TreeMap::new, Collectors.mapping(Map.Entry::getKey, Collectors.toSet())));
        byStep.entrySet().removeIf(e -> e.getKey() == here || !ids.containsAll(e.getValue()));
        Set<String> pointed = byStep.values().stream().flatMap(Set::stream).collect(Collectors.toSet());
        write(
                page,
                indent,
                lead,
                as,
                List.copyOf(byStep.keySet()),
                all.stream().filter(c -> !pointed.contains(c.id())).toList());
    }

    private static void write(
            Page page, int indent, String lead, String as, List<Integer> pointers, List<Caution> here) {
        List<String> leads = new ArrayList<>(List.of(lead));
        if (!pointers.isEmpty()) {
            page.hanging(
                    indent,
                    leads.remove(0),
                    as + steps(pointers) + (here.isEmpty() ? "" : ", and"),
                    Optional.of(Tint.CARE));
        }
        for (Caution caution : here) {
            String first = leads.isEmpty() ? " ".repeat(lead.length()) : leads.remove(0);
            page.hanging(indent, first + MARK, caution.text(), Optional.of(Tint.CARE));
        }
    }

    private static String steps(List<Integer> numbers) {
        List<String> words = numbers.stream().map(String::valueOf).toList();
        int last = words.size() - 1;
        return last == 0
                ? "step " + words.get(0)
                : "steps " + String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
