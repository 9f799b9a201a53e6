package hingewise;

import hingewise.terminal.Console;
import hingewise.terminal.Terminal;

/** Starts the program. */
public final class Main {
    private Main() {}

    /** Runs the command in the arguments; see {@link Terminal#run} for the exit codes. */
    public static void main(String[] arguments) {
        System.exit(Terminal.run(Console.ofSystem(System.getenv()), arguments));
    }
}
