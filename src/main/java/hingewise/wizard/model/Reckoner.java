package hingewise.wizard.model;

import hingewise.assessment.Assessment;
import hingewise.assessment.Assessor;
import hingewise.casefile.CaseFile;
import java.util.function.Consumer;

/** Reckons cases in the background. Only the newest counts: the result of an earlier one is dropped. */
final class Reckoner {
    private final Background background;
    private final Consumer<Assessment> done;
    private final Consumer<String> failed;
    private int newest;

    /** @param failed is told why there is no result, in words */
    Reckoner(Background background, Consumer<Assessment> done, Consumer<String> failed) {
        this.background = background;
        this.done = done;
        this.failed = failed;
    }

    void reckon(Assessor assessor, CaseFile file) {
        int ticket = ++newest;
        background.run(
                () -> assessor.assess(file),
                assessment -> {
                    if (ticket == newest) {
                        done.accept(assessment);
                    }
                },
                thrown -> {
                    if (ticket == newest) {
                        failed.accept(Words.of(thrown));
                    }
                });
    }

    /** Drops what is being reckoned. */
    void drop() {
        newest++;
    }
}
