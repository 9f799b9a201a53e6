package hingewise;

import hingewise.terminal.Console;
import hingewise.terminal.Terminal;
import hingewise.wizard.WizardLauncher;
import java.nio.file.Path;
import java.time.Clock;

/** Starts the program: a command in the terminal or, without one, the window. */
public final class Main {
    private Main() {}

    /** Runs the command in the arguments; see {@link Terminal#run} for the exit codes. */
    public static void main(String[] arguments) {
        Path cases = Path.of(System.getProperty("user.home", "."), "hingewise-cases");
        String user = System.getProperty("user.name", "");
        String by = user.isBlank() ? "me" : user;
        int exit = Terminal.run(
                Console.ofSystem(System.getenv()),
                (assessor, reader, demos) ->
                        WizardLauncher.launch(assessor, reader, cases, demos, by, Clock.systemUTC()),
                arguments);
        System.exit(exit);
    }
}
