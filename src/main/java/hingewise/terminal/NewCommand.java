package hingewise.terminal;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Phone;
import hingewise.casefile.store.CaseFileException;
import hingewise.casefile.store.CaseFileStore;
import hingewise.plain.Quoted;
import hingewise.rulebook.NearestId;
import hingewise.rulebook.RuleBook;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "new",
        description = {"Start a case file with nothing recorded. A file that exists is left alone.", ""})
final class NewCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "CASE", description = "The case file to make.")
    private Path file = Path.of("");

    @Option(names = "--family", required = true, paramLabel = "FAMILY", description = "The way of folding.")
    private String family = "";

    @Option(names = "--title", paramLabel = "TEXT", description = "What to call the case; the file's name if left out.")
    private String title = "";

    @Option(names = "--label", paramLabel = "TEXT", description = "Maker, model and colour, as you call them.")
    private String label = "";

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    NewCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        RuleBook rules = rulesOption.read();
        if (!rules.families().containsKey(family)) {
            throw Refusal.badInput("the rule book has no family " + Quoted.of(family) + ". "
                    + NearestId.advice(family, rules.families().keySet()));
        }
        String called = title.isBlank() ? String.valueOf(file.getFileName()) : title;
        try {
            CaseFileStore.create(new CaseFile(called, false, new Phone(family, label), List.of()), file);
        } catch (CaseFileException e) {
            throw Refusal.badInput(String.valueOf(e.getMessage()));
        }
        console.print(new Page(console.look()).line("Started " + file + "."));
        return ExitCode.OK.number();
    }
}
