package hingewise.wizard.model;

import hingewise.assessment.Assessment;
import hingewise.assessment.ShownCaution;
import hingewise.casefile.CaseFile;
import hingewise.casefile.Phone;
import hingewise.casefile.Report;
import hingewise.casefile.store.CaseFileStore;
import hingewise.casefile.store.Stored;
import hingewise.diagnosis.CaseException;
import hingewise.report.ConditionNote;
import hingewise.report.NoteWriter;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.RuleBook;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The wizard's one state and everything that can be done to it. All methods are called on the window's thread and
 * return at once; reading, writing and reckoning happen in the background.
 */
public final class WizardModel {
    /**
     * After an answer the next question is chosen at once by what was known before it. A newer assessment may put a
     * better one in its place, but only within this time: later the person is already reading.
     */
    static final Duration UNREAD = Duration.ofMillis(400);

    private final Setup setup;
    private final Keeper keeper;
    private final Reckoner<Assessment> reckoner;
    private final ReadOnlyObjectWrapper<WizardState> state = new ReadOnlyObjectWrapper<>(WizardState.initial());
    private final HistoryModel history;
    private final MoneyModel money;
    private Instant chosen = Instant.MIN;

    public WizardModel(Setup setup) {
        this.setup = setup;
        this.reckoner = new Reckoner<>(setup.reckoning(), this::show, this::unreckoned);
        this.keeper = new Keeper(setup.keeping(), saving -> change(s -> s.with(saving)));
        this.history = new HistoryModel(stateProperty(), setup.reckoning());
        this.money = new MoneyModel(stateProperty(), setup.pricing());
    }

    /** What may be paid for the phone of the open case. */
    public MoneyModel money() {
        return money;
    }

    /** How the open case came to stand as it does. */
    public HistoryModel history() {
        return history;
    }

    /** Records what is done to the phone. */
    public Recorder recorder() {
        return new Recorder(this);
    }

    public ReadOnlyObjectProperty<WizardState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    public WizardState state() {
        return state.get();
    }

    /** Reads the rule book and lists the cases. */
    public void load() {
        change(s -> s.with(new Knowledge.Loading()));
        setup.reckoning()
                .run(
                        setup.rules(),
                        assessor -> {
                            change(s -> s.with(new Knowledge.Ready(assessor)));
                            begin();
                        },
                        failed -> change(s -> s.with(new Knowledge.Failed(Words.of(failed)))));
        list();
    }

    private void list() {
        setup.keeping().run(setup.shelf(), shelf -> change(s -> s.with(shelf)), failed -> say(Words.of(failed)));
    }

    /** The rule book, once it has been read, as it is for the phone of the open case. */
    public Optional<RuleBook> rules() {
        if (!(state().knowledge() instanceof Knowledge.Ready ready)) {
            return Optional.empty();
        }
        RuleBook all = ready.assessor().rules();
        return Optional.of(
                state().sitting().map(s -> all.of(s.file().phone().family())).orElse(all));
    }

    /** The questions of the open case; empty where case and rule book do not fit, which the reckoning says in words. */
    public Optional<Agenda> agenda() {
        Optional<CaseFile> file = state().sitting().map(Sitting::file);
        try {
            return rules().flatMap(rules -> file.map(f -> new Agenda(rules, f)));
        } catch (CaseException e) {
            return Optional.empty();
        }
    }

    /** Starts a case from nothing, in a file of its own in the case folder. */
    public void startNew(String family, String title) {
        String called = title.isBlank() ? "A " + family : title.strip();
        CaseFile fresh = new CaseFile(called, false, new Phone(family, called), List.of());
        setup.keeping()
                .run(
                        () -> FileNames.free(setup.cases(), called),
                        file -> {
                            sit(fresh);
                            keeper.create(fresh, file);
                            begin();
                        },
                        failed -> {
                            sit(fresh);
                            keeper.moveTo(fresh, setup.cases().resolve("case" + ShelfReader.SUFFIX));
                            begin();
                        });
    }

    /** Opens a case file; refusals are said in words and what is open stays open. */
    public void open(Path file) {
        setup.keeping()
                .run(
                        () -> CaseFileStore.open(file),
                        (Stored stored) -> {
                            sit(stored.caseFile());
                            keeper.opened(file, stored);
                            begin();
                        },
                        failed -> say(Words.of(failed)));
    }

    /** Opens a copy of a case that comes with the program; it has no file until it is saved. */
    public void openCopy(Path file) {
        setup.keeping()
                .run(
                        () -> CaseFileStore.read(file),
                        (CaseFile copy) -> {
                            sit(copy);
                            keeper.noFile();
                            begin();
                        },
                        failed -> say(Words.of(failed)));
    }

    private void sit(CaseFile file) {
        reckoner.drop();
        change(s -> s.with(Sitting.of(file))
                .with(Reckoning.none())
                .saying(Optional.empty())
                .on(Page.QUESTIONS));
    }

    private void begin() {
        if (state().sitting().isPresent()) {
            reckon();
        }
    }

    /** Records an answer to the question shown, as the evidence chosen, and goes on to the next question. */
    public void answer(String answer) {
        if (!state().unread().isEmpty()) {
            return;
        }
        state().sitting()
                .ifPresent(s -> s.question().ifPresent(question -> {
                    keep(answers().give(s.file(), question, s.kind(), answer));
                    goOn();
                    reckon();
                }));
    }

    Answers answers() {
        return new Answers(setup.by(), setup.clock().instant().truncatedTo(ChronoUnit.SECONDS));
    }

    Setup setup() {
        return setup;
    }

    /** The standing answers to a question of the open case, in timeline order. */
    public List<Report> answersTo(String question) {
        return state().sitting().map(s -> Answers.to(s.file(), question)).orElse(List.of());
    }

    /** The answer to the question shown by the kind of evidence chosen. */
    public Optional<Report> given() {
        return state().sitting().flatMap(s -> s.question().flatMap(q -> Answers.to(s.file(), q, s.kind())));
    }

    /** Records that it was looked at and could not be told. */
    public void cantTell() {
        answer(Report.CANT_TELL);
    }

    /** Leaves the question unchecked, which says nothing, and goes on. */
    public void leave() {
        sitting(s -> s.question().map(s::leaving).orElse(s));
        goOn();
    }

    /** Takes an answer back. */
    public void takeBack(String entry) {
        chosen = Instant.MIN;
        state().sitting().ifPresent(s -> {
            keep(answers().takeBack(s.file(), entry));
            reckon();
        });
    }

    /** Shows the question shown before. */
    public void back() {
        chosen = Instant.MIN;
        change(s -> s.on(Page.QUESTIONS));
        sitting(Sitting::back);
    }

    /** Shows a question, answered or not. */
    public void jump(String question) {
        if (agenda().flatMap(a -> a.item(question)).isPresent()) {
            chosen = Instant.MIN;
            change(s -> s.on(Page.QUESTIONS));
            sitting(s -> s.on(Optional.of(question)));
        }
    }

    public void occasion(Occasion occasion) {
        change(s -> s.on(Page.QUESTIONS));
        sitting(s -> s.occasion() == occasion ? s : s.at(occasion));
        choose();
    }

    /** Whose evidence the next answer is. */
    public void evidence(EvidenceKind kind) {
        chosen = Instant.MIN;
        sitting(s -> s.by(kind));
    }

    /** Asks again what was left unchecked in this sitting. */
    public void takeUpAgain() {
        sitting(Sitting::leavingNothing);
        choose();
    }

    /** The person says to have read these cautions. */
    public void acknowledge(List<ShownCaution> cautions) {
        sitting(s -> {
            Set<String> read = new TreeSet<>(s.acknowledged());
            cautions.forEach(c -> read.add(WizardState.read(c)));
            return s.acknowledging(read);
        });
    }

    public void show(Page page) {
        change(s -> s.on(page));
        if (page == Page.START) {
            list();
        }
    }

    /** Keeps the assessment known so far and drops the one being reckoned. */
    public void stopReckoning() {
        if (state().reckoning().running()) {
            reckoner.drop();
            unreckoned("Stopped. The figures are those before the last answer.");
        }
    }

    /** Reckons the case as it is now. */
    public void reckon() {
        if (!(state().knowledge() instanceof Knowledge.Ready ready)) {
            return;
        }
        state().sitting().ifPresent(sitting -> {
            change(s -> s.with(s.reckoning().started()));
            reckoner.reckon(() -> ready.assessor().assess(sitting.file()));
        });
    }

    private void show(Assessment assessment) {
        Set<String> apply =
                assessment.cautions().stream().map(WizardState::read).collect(Collectors.toSet());
        change(s -> s.with(s.reckoning().done(assessment)));
        // A caution that stops the work has to be read again when it comes back.
        sitting(s -> s.acknowledging(s.acknowledged().stream()
                .filter(read -> apply.contains(read) || !WizardState.readAsStop(read))
                .collect(Collectors.toSet())));
        if (!setup.clock().instant().isAfter(chosen.plus(UNREAD))) {
            sitting(s -> s.instead(firstOf(s)));
        }
        chooseIfNone();
    }

    private void unreckoned(String words) {
        change(s -> s.with(s.reckoning().failed(words)));
        chooseIfNone();
    }

    /** A case just opened waits for its first assessment, so that it begins with the question that tells most. */
    private void chooseIfNone() {
        sitting(s -> s.question().isPresent() ? s : s.instead(firstOf(s)));
    }

    /** The question that would tell most now, where it is another than the one shown. */
    public Optional<String> better() {
        return state().sitting()
                .flatMap(s -> firstOf(s).filter(q -> !s.question().equals(Optional.of(q))));
    }

    /** Saves once more, after what hindered it is gone. */
    public void saveAgain() {
        state().sitting().ifPresent(s -> keeper.keep(s.file()));
    }

    /** Saves under another name and goes on there. */
    public void saveAs(Path file) {
        state().sitting().ifPresent(s -> keeper.moveTo(s.file(), file));
    }

    /** Opens the case's file again as somebody else left it. */
    public void openAgain() {
        keeper.file().ifPresent(this::open);
    }

    /** A name to propose for the case's file. */
    public Path proposedFile() {
        return keeper.file()
                .orElseGet(() -> setup.cases()
                        .resolve(FileNames.of(state().sitting()
                                        .map(s -> s.file().title())
                                        .orElse("case"))
                                + ShelfReader.SUFFIX));
    }

    /** What may be said of the phone when it is sold, by the assessment shown. */
    public Optional<ConditionNote> note() {
        return rules().flatMap(r -> state().reckoning().latest().map(a -> NoteWriter.write(r, a.file())));
    }

    /** Writes the parts list. */
    public void exportParts(Path file) {
        new PartsExport(this, setup.keeping()).write(file);
    }

    /** Says one sentence, until the next or until it is put away. */
    public void say(String words) {
        change(s -> s.saying(Optional.of(words)));
    }

    public void putNoticeAway() {
        change(s -> s.saying(Optional.empty()));
    }

    /** Puts the case in the place of the one that is open, and into its file. */
    void keep(CaseFile file) {
        sitting(s -> s.with(file));
        keeper.keep(file);
    }

    private void goOn() {
        chosen = setup.clock().instant();
        sitting(s -> s.on(firstOf(s)));
    }

    private void choose() {
        chosen = setup.clock().instant();
        sitting(s -> s.instead(firstOf(s)));
    }

    private Optional<String> firstOf(Sitting s) {
        return agenda().flatMap(a -> a.next(state().reckoning().latest(), s.occasion(), s.setAside()).stream()
                .findFirst());
    }

    private void sitting(UnaryOperator<Sitting> edit) {
        change(s -> s.sitting().map(edit).map(s::with).orElse(s));
    }

    private void change(UnaryOperator<WizardState> edit) {
        state.set(edit.apply(state.get()));
    }
}
