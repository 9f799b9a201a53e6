package hingewise.terminal;

/** What a command says to the program that called it. */
enum ExitCode {
    OK(0),
    RULE_PROBLEMS(1),
    BAD_INPUT(2),
    /** A fault of the program itself. */
    FAULT(3),
    /** Done, but some rows of a sheet could not be used. */
    ROWS_SKIPPED(4),
    /** Interrupted; what was done is kept. The number is the shell's own for an interrupt. */
    STOPPED(130);

    private final int number;

    ExitCode(int number) {
        this.number = number;
    }

    int number() {
        return number;
    }
}
