package hingewise.wizard.model;

import hingewise.assessment.Assessor;
import hingewise.casefile.CaseFile;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The story of the open case. It is reckoned in the background, and only while its page is shown: each entry costs a
 * reckoning of its own.
 */
public final class HistoryModel {
    private final ReadOnlyObjectProperty<WizardState> wizard;
    private final Reckoner<Told> reckoner;
    private final ReadOnlyObjectWrapper<HistoryState> state = new ReadOnlyObjectWrapper<>(HistoryState.none());
    private Optional<CaseFile> asked = Optional.empty();

    HistoryModel(ReadOnlyObjectProperty<WizardState> wizard, Background background) {
        this.wizard = wizard;
        this.reckoner = new Reckoner<>(
                background,
                told -> state.set(new HistoryState(
                        Optional.of(told), false, Optional.empty(), told.stops().size() - 1)),
                words -> state.set(new HistoryState(state().told(), false, Optional.of(words), state().chosen())));
        wizard.addListener((o, was, is) -> follow(is));
    }

    public ReadOnlyObjectProperty<HistoryState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    public HistoryState state() {
        return state.get();
    }

    /** Looks at a stop; beyond the ends, at the first or the last. */
    public void choose(int stop) {
        HistoryState now = state();
        now.told()
                .map(t -> Math.max(0, Math.min(stop, t.stops().size() - 1)))
                .filter(within -> within != now.chosen())
                .ifPresent(within -> state.set(new HistoryState(now.told(), now.running(), now.trouble(), within)));
    }

    /** Reckons once more. */
    public void again() {
        asked = Optional.empty();
        follow(wizard.get());
    }

    private void follow(WizardState now) {
        Optional<CaseFile> file = now.sitting().map(Sitting::file);
        if (now.page() == Page.HISTORY
                && now.knowledge() instanceof Knowledge.Ready ready
                && file.isPresent()
                && !file.equals(asked)) {
            asked = file;
            reckon(ready.assessor(), file.get());
        }
    }

    private void reckon(Assessor assessor, CaseFile file) {
        Optional<Told> known = state().told().filter(t -> continues(file, t.file()));
        int chosen = known.isPresent() ? state().chosen() : 0;
        state.set(new HistoryState(known, true, Optional.empty(), chosen));
        reckoner.reckon(() -> Told.of(assessor.rules(), file));
    }

    private static boolean continues(CaseFile longer, CaseFile shorter) {
        int known = shorter.entries().size();
        return longer.title().equals(shorter.title())
                && longer.entries().size() >= known
                && longer.entries().subList(0, known).equals(shorter.entries());
    }
}
