package hingewise.wizard.model;

import hingewise.assessment.Assessment;
import hingewise.costing.csv.PartsCsv;
import hingewise.rulebook.Cause;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Writes the parts list of the open case to a file. */
record PartsExport(WizardModel model, Background keeping) {
    void write(Path file) {
        model.state().reckoning().latest().ifPresent(a -> write(a, file));
    }

    private void write(Assessment assessment, Path file) {
        String csv = PartsCsv.of(assessment.parts().order(), this::label);
        keeping.run(
                () -> Files.writeString(file, csv),
                done -> model.say("The parts list is in " + file + "."),
                failed ->
                        model.say("The parts list was not written: " + Words.of(failed) + "; choose another folder."));
    }

    private String label(String cause) {
        return model.rules()
                .flatMap(r -> Optional.ofNullable(r.causes().get(cause)))
                .map(Cause::label)
                .orElse(cause);
    }
}
