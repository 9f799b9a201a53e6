package hingewise.wizard.model;

import hingewise.assessment.Assessment;
import hingewise.assessment.ShownCaution;
import java.util.List;
import java.util.Optional;

/**
 * Everything the window shows.
 *
 * @param sitting the open case
 * @param notice one sentence about what just happened
 */
public record WizardState(
        Page page,
        Knowledge knowledge,
        Shelf shelf,
        Optional<Sitting> sitting,
        Reckoning reckoning,
        Saving saving,
        Optional<String> notice) {
    private static final String STOPS = "stops.";
    private static final String WARNS = "warns.";

    static WizardState initial() {
        return new WizardState(
                Page.START,
                new Knowledge.Loading(),
                Shelf.empty(),
                Optional.empty(),
                Reckoning.none(),
                new Saving(Saving.Status.NO_FILE, ""),
                Optional.empty());
    }

    /** The cautions that stop the work and have not been read yet; nothing else may be done before. */
    public List<ShownCaution> unread() {
        return unread(true);
    }

    /** The cautions that the case itself brings up, that warn, and that have not been read yet. */
    public List<ShownCaution> unreadWarnings() {
        return unread(false);
    }

    private List<ShownCaution> unread(boolean stops) {
        return cautions().stream()
                .filter(c -> c.brought() && c.stops() == stops)
                .filter(c -> sitting.stream().noneMatch(s -> s.acknowledged().contains(read(c))))
                .toList();
    }

    /** The cautions that apply, those that stop the work first. */
    public List<ShownCaution> cautions() {
        return reckoning.latest().map(Assessment::cautions).orElse(List.of());
    }

    /** What is remembered of a caution once it has been read; one that comes to stop the work must be read again. */
    static String read(ShownCaution caution) {
        return (caution.stops() ? STOPS : WARNS) + caution.caution().id();
    }

    static boolean readAsStop(String read) {
        return read.startsWith(STOPS);
    }

    WizardState on(Page other) {
        return new WizardState(other, knowledge, shelf, sitting, reckoning, saving, notice);
    }

    WizardState with(Knowledge other) {
        return new WizardState(page, other, shelf, sitting, reckoning, saving, notice);
    }

    WizardState with(Shelf other) {
        return new WizardState(page, knowledge, other, sitting, reckoning, saving, notice);
    }

    WizardState with(Sitting other) {
        return new WizardState(page, knowledge, shelf, Optional.of(other), reckoning, saving, notice);
    }

    WizardState with(Reckoning other) {
        return new WizardState(page, knowledge, shelf, sitting, other, saving, notice);
    }

    WizardState with(Saving other) {
        return new WizardState(page, knowledge, shelf, sitting, reckoning, other, notice);
    }

    WizardState saying(Optional<String> words) {
        return new WizardState(page, knowledge, shelf, sitting, reckoning, saving, words);
    }
}
