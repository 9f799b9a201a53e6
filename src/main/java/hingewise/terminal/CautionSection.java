package hingewise.terminal;

import hingewise.assessment.Assessment;
import hingewise.assessment.ShownCaution;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Warnings: what stops the work comes before everything else, the rest before anything is proposed. */
final class CautionSection {
    private CautionSection() {}

    static void stops(Page page, Assessment assessment) {
        List<String> stops = new ArrayList<>();
        assessment.cautions().stream()
                .filter(ShownCaution::stops)
                .forEach(c -> stops.add(c.caution().text()));
        if (!stops.isEmpty()) {
            stops.add(0, "STOP: work on this phone stops here.");
            stops.add("Until that is dealt with nothing but questions is proposed below, and no part is ordered.");
            page.alarm(stops);
        }
    }

    static void care(Page page, Assessment assessment) {
        List<ShownCaution> care =
                assessment.cautions().stream().filter(c -> !c.stops()).toList();
        if (care.isEmpty()) {
            return;
        }
        page.heading("Take care");
        for (ShownCaution caution : care) {
            page.hanging(0, "!  ", caution.caution().text(), Optional.of(Tint.CARE));
        }
    }
}
