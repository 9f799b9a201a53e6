package hingewise.terminal;

import hingewise.plain.Quoted;
import hingewise.report.handbook.Handbook;
import hingewise.report.handbook.HandbookFolder;
import hingewise.report.handbook.HandbookPages;
import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "handbook",
        description = {"Write the rule book as pages to read in a browser or to print.", ""})
final class HandbookCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "DIR", description = "A folder to make, or one that holds an earlier handbook.")
    private Path folder = Path.of("");

    @Mixin
    private RulesOption rules = new RulesOption();

    HandbookCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        String shown = Quoted.line(folder.toString());
        Map<String, String> pages = HandbookPages.of(Handbook.of(rules.read()));
        try {
            HandbookFolder.write(folder, pages);
        } catch (DirectoryNotEmptyException e) {
            throw Refusal.badInput(shown + ": holds " + Quoted.line(String.valueOf(e.getMessage()))
                    + ", which is no page of a handbook, and was left as it is; name an empty folder or a new one");
        } catch (IOException e) {
            throw Refusal.badInput(shown + ": the handbook could not be written (" + Quoted.line(String.valueOf(e))
                    + "); what was there is as it was, choose another folder");
        }
        console.print(
                new Page(console.look()).unwrapped(folder.resolve("index.html").toString()));
        return ExitCode.OK.number();
    }
}
