package hingewise.terminal;

import hingewise.rulebook.yaml.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "check-rules",
        description = {"List every problem of a rule book, or sum it up if there is none.", ""})
final class CheckRulesCommand implements Callable<Integer> {
    /** Any number does; a fixed one makes two runs alike. */
    private static final long SEED = 1;

    private final Console console;

    @Parameters(arity = "0..1", paramLabel = "DIR", description = "A folder of rules; the program's own if left out.")
    private Optional<Path> folder = Optional.empty();

    @Option(names = "--rules", paramLabel = "DIR", description = "The same.")
    private Optional<Path> alsoFolder = Optional.empty();

    CheckRulesCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Reading reading = Inputs.reading(folder.or(() -> alsoFolder));
        Page page = new Page(console.look());
        List<String> problems = new ArrayList<>();
        reading.problems().forEach(p -> problems.add(p.text()));
        reading.ruleBook().ifPresent(rules -> {
            RuleSummary.write(page, rules);
            List<Entanglement> all = Entanglement.of(rules, new Random(SEED));
            Entanglement.write(page, all);
            problems.addAll(Entanglement.problems(all));
        });
        if (!problems.isEmpty()) {
            page.blank();
            problems.forEach(page::unwrapped);
            page.line(Figures.count(problems.size(), "problem") + ".");
        }
        console.print(page);
        return (problems.isEmpty() ? ExitCode.OK : ExitCode.RULE_PROBLEMS).number();
    }
}
