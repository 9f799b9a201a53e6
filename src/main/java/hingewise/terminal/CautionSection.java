package hingewise.terminal;

import hingewise.assessment.Assessment;
import hingewise.assessment.ShownCaution;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Warnings: what stops the work comes before everything else, what else the case brings up before anything is proposed. */
final class CautionSection {
    private CautionSection() {}

    static void stops(Page page, Assessment assessment) {
        List<String> stops = new ArrayList<>();
        assessment.cautions().stream()
                .filter(ShownCaution::stops)
                .forEach(c -> stops.add(c.caution().text()));
        if (!stops.isEmpty()) {
            stops.add(0, "STOP: work on this phone stops here.");
            stops.add("Until that is dealt with nothing but questions is proposed below, and no part is ordered. "
                    + ShownCaution.LIFTED);
            page.alarm(stops);
        }
    }

    static void care(Page page, Assessment assessment, Care care) {
        List<ShownCaution> brought = assessment.cautions().stream()
                .filter(c -> c.brought() && !c.stops())
                .toList();
        if (brought.isEmpty() && care.below() == 0) {
            return;
        }
        page.heading("Take care");
        for (ShownCaution caution : brought) {
            page.hanging(0, "!  ", caution.caution().text(), Optional.of(Tint.CARE));
        }
        if (care.below() > 0) {
            page.hanging(0, "!  ", below(care.below(), !brought.isEmpty()), Optional.of(Tint.CARE));
        }
    }

    private static String below(int count, boolean more) {
        String words = count + (more ? " more" : "") + (count == 1 ? " caution comes" : " cautions come");
        return words + " with the steps and parts below. Read what stands there under \"care\" before you begin;"
                + " each is told once and called up by its number.";
    }
}
