package hingewise.wizard.model;

import hingewise.report.bench.BenchPage;
import java.util.Optional;

/**
 * What is known of the bench sheet of the open case.
 *
 * @param latest the sheet of the case as it is; empty until it is made
 * @param running whether it is being made
 * @param trouble why there is none, in a sentence
 */
public record SheetState(Optional<BenchPage> latest, boolean running, Optional<String> trouble) {
    static SheetState none() {
        return new SheetState(Optional.empty(), false, Optional.empty());
    }
}
