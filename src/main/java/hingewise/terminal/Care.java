package hingewise.terminal;

import hingewise.assessment.Assessment;
import hingewise.assessment.CareOrder;
import hingewise.assessment.Cautions;
import hingewise.planning.Step;
import hingewise.rulebook.RuleBook;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Where each caution stands in full. What the case brings up stands above everything proposed; what comes with a step or
 * a part stands there the first time it applies, with a number, and is called up by that number from there on.
 *
 * @param atSteps by step that is told, in order
 * @param atParts what comes with fitting the parts
 * @param below how many stand in full with steps and parts
 */
record Care(List<CareOrder.Care> atSteps, CareOrder.Care atParts, int below) {
    private static final String MARK = "!  ";

    /** @param told the steps that are told, best first */
    static Care of(RuleBook rules, Assessment assessment, List<Step> told) {
        CareOrder order = new CareOrder(assessment);
        List<CareOrder.Care> atSteps =
                told.stream().map(s -> order.at(Cautions.of(rules, s))).toList();
        CareOrder.Care atParts = order.at(assessment.parts().order().stream()
                .flatMap(p -> Cautions.of(rules, p).stream())
                .distinct()
                .toList());
        return new Care(atSteps, atParts, order.count());
    }

    /** What comes with one of the steps told, by its number from 1. */
    void atStep(Page page, int number) {
        tell(page, 4, "care   ", atSteps.get(number - 1));
    }

    /** What comes with fitting the parts. */
    void atParts(Page page) {
        if (!atParts.here().isEmpty() || !atParts.again().isEmpty()) {
            page.hanging(0, "care ", "in fitting them", Optional.of(Tint.CARE));
            tell(page, 0, "     ", atParts);
        }
    }

    private static void tell(Page page, int indent, String lead, CareOrder.Care care) {
        String now = lead;
        for (CareOrder.Numbered caution : care.here()) {
            page.hanging(
                    indent,
                    now + MARK,
                    "c" + caution.number() + " " + caution.caution().text(),
                    Optional.of(Tint.CARE));
            now = " ".repeat(lead.length());
        }
        if (!care.again().isEmpty()) {
            page.hanging(
                    indent,
                    now + MARK,
                    (care.here().isEmpty() ? "" : "and again ")
                            + care.again().stream().map(n -> "c" + n).collect(Collectors.joining(", ")),
                    Optional.of(Tint.CARE));
        }
    }
}
