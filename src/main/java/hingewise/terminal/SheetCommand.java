package hingewise.terminal;

import hingewise.report.bench.BenchHtml;
import hingewise.report.bench.BenchPage;
import hingewise.report.bench.BenchWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "sheet",
        description = {
            "Print the whole plan of a case as a sheet to work by at the bench: what to do, where each outcome leads, what"
                    + " to have ready, and where to stop.",
            ""
        })
final class SheetCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private CaseInput input = new CaseInput();

    @Option(names = "--html", paramLabel = "FILE", description = "Write it as a page for a browser or for printing.")
    private Optional<Path> html = Optional.empty();

    @Mixin
    private ColourOption colour = new ColourOption();

    SheetCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        CaseInput.Answered answered = input.answer(console);
        BenchPage sheet = BenchWriter.write(
                answered.assessor().rules(), answered.assessor().sheet(answered.assessment()));
        boolean invented = input.inventedPrices() || input.inventedShop();
        html.ifPresentOrElse(
                file -> {
                    Outputs.replace(file, input.file(), BenchHtml.of(sheet, invented));
                    console.print(new Page(console.look()).unwrapped(file.toString()));
                },
                () -> console.print(SheetText.of(sheet, invented, colour.on(console.look()))));
        return ExitCode.OK.number();
    }
}
