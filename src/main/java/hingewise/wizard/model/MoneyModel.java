package hingewise.wizard.model;

import hingewise.assessment.Assessment;
import hingewise.offer.Appraisal;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The money of the open case, reckoned in the background after each new assessment. */
public final class MoneyModel {
    private final Reckoner<Appraisal> reckoner;
    private final ReadOnlyObjectWrapper<MoneyState> state = new ReadOnlyObjectWrapper<>(MoneyState.none());
    private Optional<Assessment> asked = Optional.empty();

    MoneyModel(ReadOnlyObjectProperty<WizardState> wizard, Background background) {
        this.reckoner = new Reckoner<>(
                background,
                appraisal -> state.set(new MoneyState(Optional.of(appraisal), false, Optional.empty())),
                words -> state.set(new MoneyState(Optional.empty(), false, Optional.of(words))));
        wizard.addListener((o, was, is) -> follow(is));
    }

    public ReadOnlyObjectProperty<MoneyState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    public MoneyState state() {
        return state.get();
    }

    private void follow(WizardState now) {
        Optional<Assessment> latest = now.reckoning().latest();
        if (latest.equals(asked)) {
            return;
        }
        asked = latest;
        if (latest.isEmpty() || !(now.knowledge() instanceof Knowledge.Ready ready)) {
            reckoner.drop();
            state.set(MoneyState.none());
            return;
        }
        Assessment assessment = latest.get();
        state.set(new MoneyState(state().latest(), true, Optional.empty()));
        reckoner.reckon(() -> ready.assessor().appraise(assessment, Optional.empty()));
    }
}
