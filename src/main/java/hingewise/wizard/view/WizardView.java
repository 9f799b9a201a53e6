package hingewise.wizard.view;

import hingewise.wizard.model.ListingModel;
import hingewise.wizard.model.Page;
import hingewise.wizard.model.Saving;
import hingewise.wizard.model.SheetModel;
import hingewise.wizard.model.WizardModel;
import hingewise.wizard.model.WizardState;
import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;

/** The whole window: bar, bands, page, and the caution that stops the work over all of it. */
public final class WizardView extends StackPane {
    private final WizardModel model;
    private final FileDialogs dialogs;
    private final TopBar bar;
    private final RecordPanel record;
    private final ListingPanel listing;
    private final Bands bands;
    private final CautionBands cautions;
    private final StartPage start;
    private final QuestionsPage questions;
    private final NotePage note;
    private final HistoryPage history;
    private final CautionGate gate;
    private final BorderPane main = new BorderPane();
    private final ScrollPane startScroll;
    private final ScrollPane noteScroll;
    private final ScrollPane historyScroll;
    private final ScrollPane moneyScroll;
    private final ScrollPane sheetScroll;
    private final MoneyStrip strip;
    private Theme theme;
    private boolean warnedOfClosing;

    public WizardView(WizardModel model, FileDialogs dialogs, Theme theme) {
        this.model = model;
        this.dialogs = dialogs;
        this.theme = theme;
        record = new RecordPanel(model);
        listing = new ListingPanel(new ListingModel(model));
        bar = new TopBar(model, this::saveAs, this::toggleRecord, this::toggleListing, this::switchTheme);
        bands = new Bands(model, this::saveAs);
        cautions = new CautionBands(model);
        start = new StartPage(model, this::open);
        questions = new QuestionsPage(model);
        note = new NotePage(model, this::exportParts);
        history = new HistoryPage(model);
        gate = new CautionGate(model);
        startScroll = Ui.scrolling(start, "Cases");
        noteScroll = Ui.scrolling(note, "Parts and note");
        historyScroll = Ui.scrolling(history, "History");
        moneyScroll = Ui.scrolling(new MoneyPage(model), "Money");
        sheetScroll = Ui.scrolling(new SheetPage(new SheetModel(model)), "Bench sheet");
        strip = new MoneyStrip(model);
        main.setBottom(strip);
        main.setTop(Ui.column(0, bar, bands, cautions, record, listing));
        getChildren().addAll(main, gate);
        getStyleClass().add("wizard");
        model.stateProperty().addListener((o, was, is) -> show(is));
        widthProperty().addListener((o, was, is) -> arrange(is.doubleValue()));
        bar.show(theme);
        show(model.state());
    }

    /** Puts the view into a scene: theme, keys and the first focus. */
    public Scene inScene(double width, double height) {
        Scene scene = new Scene(this, width, height);
        theme.dress(scene);
        Keys keys = new Keys(model, questions::search, cautions::read);
        scene.addEventFilter(KeyEvent.KEY_PRESSED, keys::handle);
        scene.addEventFilter(KeyEvent.KEY_TYPED, keys::handleTyped);
        on(scene, KeyCode.O, this::open);
        on(scene, KeyCode.S, this::save);
        on(scene, KeyCode.F, questions::search);
        applyCss();
        focusOn(model.state().page());
        return scene;
    }

    private void on(Scene scene, KeyCode key, Runnable action) {
        scene.getAccelerators().put(new KeyCodeCombination(key, KeyCombination.SHORTCUT_DOWN), () -> {
            if (model.state().unread().isEmpty()) {
                action.run();
            }
        });
    }

    /**
     * Whether the window may close. Answers that lie nowhere on disk are said once; closing again gives them up.
     */
    public boolean mayClose() {
        WizardState state = model.state();
        boolean kept = state.sitting().isEmpty()
                || !(state.saving().troubled() || state.saving().status() == Saving.Status.RUNNING);
        if (kept || warnedOfClosing) {
            return true;
        }
        warnedOfClosing = true;
        model.say("The last answers are not saved. Save them elsewhere, or close again to give them up.");
        return false;
    }

    private void show(WizardState state) {
        bar.show(state);
        bands.show(state);
        cautions.show(state);
        if (state.page() == Page.START) {
            record.away();
            listing.away();
        }
        Node page = switch (state.page()) {
            case START -> startScroll;
            case QUESTIONS -> questions;
            case NOTE -> noteScroll;
            case HISTORY -> historyScroll;
            case MONEY -> moneyScroll;
            case SHEET -> sheetScroll;
        };
        strip.setVisible(state.page() != Page.START);
        strip.setManaged(state.page() != Page.START);
        boolean turned = main.getCenter() != page;
        if (turned) {
            main.setCenter(page);
            // A scrolled page joins the scene only with its skin, and nothing outside the scene takes the focus.
            applyCss();
        }
        switch (state.page()) {
            case START -> start.show(state);
            case QUESTIONS -> questions.show(state);
            case NOTE -> note.show(state);
            case HISTORY, MONEY, SHEET -> {
                // They follow models of their own.
            }
        }
        if (turned) {
            focusOn(state.page());
        }
        boolean gated = gate.isVisible();
        gate.show(state);
        main.setDisable(gate.isVisible());
        if (gated && !gate.isVisible()) {
            focusOn(state.page());
        }
        if (!state.saving().troubled()) {
            warnedOfClosing = false;
        }
    }

    private void focusOn(Page page) {
        switch (page) {
            case START -> start.focusTitle();
            case QUESTIONS -> questions.focusAnswer();
            case NOTE, HISTORY, MONEY, SHEET -> bar.focusTab(page);
        }
    }

    private void arrange(double width) {
        cautions.arrange(Room.of(width));
        questions.arrange(Room.of(width));
        start.arrange(width);
        history.arrange(width);
    }

    private void switchTheme() {
        theme = theme.other();
        theme.dress(getScene());
        bar.show(theme);
    }

    /** One panel at a time, for both take much of the window. */
    private void toggleRecord() {
        listing.away();
        record.toggle();
    }

    private void toggleListing() {
        record.away();
        listing.toggle();
    }

    private void open() {
        dialogs.open(folder()).ifPresent(model::open);
    }

    private Path folder() {
        Path proposed = model.proposedFile().toAbsolutePath();
        Path folder = proposed.getParent();
        return folder == null ? proposed : folder;
    }

    private void save() {
        if (model.state().page() == Page.START) {
            return;
        }
        if (model.state().saving().status() == Saving.Status.NO_FILE) {
            saveAs();
        } else {
            model.saveAgain();
        }
    }

    private void saveAs() {
        dialogs.save(model.proposedFile()).ifPresent(model::saveAs);
    }

    private void exportParts() {
        dialogs.save(folder().resolve("parts.csv")).ifPresent(model::exportParts);
    }
}
