package hingewise.wizard.model;

import hingewise.assessment.Assessment;
import hingewise.assessment.Assessor;
import hingewise.report.bench.BenchPage;
import hingewise.report.bench.BenchWriter;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The bench sheet of the open case. It takes seconds, so it is made in the background and only while it is looked at. */
public final class SheetModel {
    private final ReadOnlyObjectProperty<WizardState> wizard;
    private final Reckoner<BenchPage> reckoner;
    private final ReadOnlyObjectWrapper<SheetState> state = new ReadOnlyObjectWrapper<>(SheetState.none());
    private Optional<Assessment> asked = Optional.empty();

    public SheetModel(WizardModel model) {
        this.wizard = model.stateProperty();
        this.reckoner = new Reckoner<>(
                model.setup().reckoning(),
                page -> state.set(new SheetState(Optional.of(page), false, Optional.empty())),
                words -> state.set(new SheetState(Optional.empty(), false, Optional.of(words))));
        wizard.addListener((o, was, is) -> follow(is));
    }

    public ReadOnlyObjectProperty<SheetState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    public SheetState state() {
        return state.get();
    }

    /** Leaves off making the sheet. */
    public void stop() {
        if (state().running()) {
            reckoner.drop();
            state.set(new SheetState(Optional.empty(), false, Optional.of("Stopped: no sheet was made.")));
        }
    }

    /** Makes the sheet after it was stopped or could not be made. */
    public void again() {
        asked = Optional.empty();
        follow(wizard.get());
    }

    private void follow(WizardState now) {
        Optional<Assessment> latest = now.reckoning().latest();
        if (latest.equals(asked)) {
            return;
        }
        if (asked.isPresent()) {
            asked = Optional.empty();
            reckoner.drop();
            state.set(SheetState.none());
        }
        if (now.page() == Page.SHEET && now.knowledge() instanceof Knowledge.Ready ready) {
            asked = latest;
            latest.ifPresent(assessment -> make(ready.assessor(), assessment));
        }
    }

    private void make(Assessor assessor, Assessment assessment) {
        state.set(new SheetState(Optional.empty(), true, Optional.empty()));
        reckoner.reckon(() -> BenchWriter.write(assessor.rules(), assessor.sheet(assessment)));
    }
}
