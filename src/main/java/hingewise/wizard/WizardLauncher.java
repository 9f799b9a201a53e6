package hingewise.wizard;

import hingewise.assessment.Assessor;
import hingewise.intake.ListingReader;
import hingewise.plain.Quoted;
import hingewise.rulebook.RuleBook;
import hingewise.wizard.model.Setup;
import hingewise.wizard.model.ShelfReader;
import hingewise.wizard.model.WizardModel;
import hingewise.wizard.view.FxBackground;
import hingewise.wizard.view.WizardWindow;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.application.Platform;
import javafx.stage.Stage;

/**
 * Opens the wizard's window. A plain class: started from the class path, JavaFX refuses a main class that is an
 * application.
 */
public final class WizardLauncher {
    private static final String INSTEAD =
            " Work in the terminal instead: \"hingewise --help\" lists the commands, which do the same.";

    private final Display display;

    /** @param display whether and how a window can be opened here */
    WizardLauncher(Display display) {
        this.display = display;
    }

    /** Whether there is a display, and how to start on it. */
    interface Display {
        boolean present();

        /** Starts the window's thread and runs this on it; fails where that cannot be. */
        void start(Runnable onThread);
    }

    /**
     * Opens the window and returns when it is closed.
     *
     * @param rules reads rule book and prices; called in the background
     * @param reader makes a reader of texts by that rule book; called in the background
     * @param cases the folder for new cases; made when the first one is kept
     * @param demos the case files that come with the program
     * @param by who is recorded as giving the answers; not blank
     * @return empty after a window was shown; else why there is none and what to do instead
     */
    public static Optional<String> launch(
            Callable<Assessor> rules,
            Function<RuleBook, ListingReader> reader,
            Path cases,
            List<Path> demos,
            String by,
            Clock clock) {
        UnaryOperator<String> environment = System::getenv;
        return new WizardLauncher(new SystemDisplay(System.getProperties(), environment))
                .open(rules, reader, cases, demos, by, clock);
    }

    Optional<String> open(
            Callable<Assessor> rules,
            Function<RuleBook, ListingReader> reader,
            Path cases,
            List<Path> demos,
            String by,
            Clock clock) {
        if (!display.present()) {
            return Optional.of("There is no display here, so no window can be opened." + INSTEAD);
        }
        FxBackground files = FxBackground.inOrder();
        Setup setup = new Setup(
                rules,
                reader,
                () -> ShelfReader.read(cases, demos),
                cases,
                by,
                clock,
                FxBackground.atOnce(),
                FxBackground.atOnce(),
                files);
        CompletableFuture<Void> closed = new CompletableFuture<>();
        try {
            display.start(() -> show(new WizardModel(setup), closed));
            closed.join();
            return Optional.empty();
        } catch (RuntimeException | LinkageError e) {
            return Optional.of(refusal(e));
        } finally {
            files.close();
        }
    }

    private static void show(WizardModel model, CompletableFuture<Void> closed) {
        try {
            Stage stage = new Stage();
            stage.setOnHidden(e -> closed.complete(null));
            WizardWindow.show(stage, model);
        } catch (RuntimeException | LinkageError e) {
            closed.completeExceptionally(e);
            Platform.exit();
        }
    }

    /** Without any font the toolkit fails with a null pointer deep inside; all else that fails here is the display's doing. */
    private static String refusal(Throwable thrown) {
        Throwable root = thrown;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        if (root instanceof NullPointerException) {
            return "No window can be opened, for no font was found. Install one, such as the package"
                    + " \"fonts-dejavu-core\", and start again." + INSTEAD;
        }
        String why =
                Objects.requireNonNullElse(root.getMessage(), root.getClass().getSimpleName());
        return "No window can be opened on this display (" + Quoted.line(why) + ")." + INSTEAD;
    }
}
