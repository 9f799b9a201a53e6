package hingewise.terminal;

import hingewise.costing.MixedCurrencyException;
import hingewise.diagnosis.CaseException;
import hingewise.inference.CliqueLimitException;
import hingewise.intake.store.ExamplesException;
import hingewise.plain.Quoted;
import hingewise.rulebook.RuleBook;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import picocli.CommandLine.Mixin;

/** The commands of the terminal. */
public final class Terminal {
    private Terminal() {}

    /**
     * Runs one command.
     *
     * @param window opened when no command is given
     * @return 0 when it was done, 1 when the rule book has problems, 2 when the input cannot be used, 3 when the program
     *     itself is at fault, 4 when some rows of a sheet could not be used
     */
    public static int run(Console console, Window window, String... arguments) {
        CommandLine line = new CommandLine(new Root(console, window))
                .addSubcommand(new AssessCommand(console))
                .addSubcommand(new PartsCommand(console))
                .addSubcommand(new OfferCommand(console))
                .addSubcommand(new ObservationsCommand(console))
                .addSubcommand(new CheckRulesCommand(console))
                .addSubcommand(new SimulateCommand(console))
                .addSubcommand(new HandbookCommand(console))
                .addSubcommand(new ExplainCommand(console))
                .addSubcommand(new ExportNetworkCommand(console))
                .addSubcommand(new SheetCommand(console))
                .addSubcommand(new NoteCommand(console))
                .addSubcommand(new ReadCommand(console))
                .addSubcommand(new AskCommand(console))
                .addSubcommand(new SiftCommand(console))
                .addSubcommand(new NewCommand(console))
                .addSubcommand(new RecordCommand(console))
                .addSubcommand(new HistoryCommand(console))
                .addSubcommand(new CommandLine.HelpCommand());
        line.setCaseInsensitiveEnumValuesAllowed(true)
                .setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF))
                .setOut(new PrintWriter(console.out(), true))
                .setErr(new PrintWriter(console.err(), true))
                .setParameterExceptionHandler((e, given) -> misused(console, e))
                .setExecutionExceptionHandler((e, command, parsed) -> failed(console, command, e));
        line.getSubcommands().values().forEach(c -> c.getCommandSpec().mixinStandardHelpOptions(true));
        try {
            return line.execute(arguments);
        } catch (OutOfMemoryError e) {
            return refuse(
                    console,
                    ExitCode.FAULT,
                    List.of("this takes more memory than Java was given; close other programs, or give it more, such as"
                            + " with the variable JDK_JAVA_OPTIONS set to -Xmx4g"));
        }
    }

    private static int misused(Console console, CommandLine.ParameterException e) {
        console.complain(Objects.requireNonNullElse(e.getMessage(), "the command cannot be understood"));
        CommandLine.UnmatchedArgumentException.printSuggestions(e, new PrintWriter(console.err(), true));
        console.complain("see: " + e.getCommandLine().getCommandSpec().qualifiedName() + " --help");
        return ExitCode.BAD_INPUT.number();
    }

    private static int failed(Console console, CommandLine command, Exception e) {
        if (e instanceof Refusal refusal) {
            return refuse(console, refusal.code(), refusal.lines());
        }
        if (e instanceof ExamplesException mistakes) {
            return refuse(
                    console,
                    ExitCode.RULE_PROBLEMS,
                    Stream.concat(Stream.of(Inputs.UNUSABLE_RULES), mistakes.problems().stream())
                            .toList());
        }
        if (e instanceof CaseException problems) {
            String where =
                    caseFile(command).map(f -> Quoted.line(f.toString()) + ": ").orElse("");
            return refuse(
                    console,
                    ExitCode.BAD_INPUT,
                    problems.problems().stream().map(p -> where + p).toList());
        }
        if (e instanceof CliqueLimitException || e instanceof MixedCurrencyException) {
            return refuse(console, ExitCode.BAD_INPUT, List.of(String.valueOf(e.getMessage())));
        }
        return refuse(
                console,
                ExitCode.FAULT,
                List.of("this is a fault of the program, please report it with the command you gave: " + e));
    }

    /** The case file that the command was given. */
    private static Optional<Path> caseFile(CommandLine command) {
        return command.getCommandSpec().positionalParameters().stream()
                .filter(p -> p.paramLabel().equals("CASE"))
                .flatMap(p -> Stream.ofNullable(p.<Object>getValue()))
                .flatMap(v -> v instanceof Optional<?> given ? given.stream() : Stream.of(v))
                .filter(Path.class::isInstance)
                .map(Path.class::cast)
                .findFirst();
    }

    private static int refuse(Console console, ExitCode code, List<String> lines) {
        lines.forEach(console::complain);
        return code.number();
    }

    @Command(
            name = "hingewise",
            mixinStandardHelpOptions = true,
            version = "Hingewise 0.1.0",
            description = {"A decision aid for people who buy, repair and resell faulty folding phones.", ""},
            subcommandsRepeatable = false,
            footer = {
                "",
                "Without a command the window opens. Exit codes: 0 done, 1 problems in the rule book, 2 input"
                        + " that cannot be used, 4 some rows of a sheet skipped."
            })
    private static final class Root implements Callable<Integer> {
        private final Console console;
        private final Window window;

        @Mixin
        private RulesOption rules = new RulesOption();

        Root(Console console, Window window) {
            this.console = console;
            this.window = window;
        }

        @Override
        public Integer call() {
            Optional<String> instead = window.open(
                    () -> {
                        RuleBook read = rules.read();
                        return new FiguresOption().assessor(read, console);
                    },
                    r -> rules.reader(r, console),
                    DemoCases.find());
            instead.ifPresent(console::complain);
            return (instead.isEmpty() ? ExitCode.OK : ExitCode.BAD_INPUT).number();
        }
    }
}
