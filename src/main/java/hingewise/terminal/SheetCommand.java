package hingewise.terminal;

import hingewise.assessment.BenchSheet;
import hingewise.report.bench.BenchHtml;
import hingewise.report.bench.BenchPage;
import hingewise.report.bench.BenchWriter;
import hingewise.rulebook.RuleBook;
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

    @Option(names = "--json", description = "Print the sheet as JSON, alone and complete.")
    private boolean json;

    @Mixin
    private ColourOption colour = new ColourOption();

    SheetCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (json && html.isPresent()) {
            throw Refusal.badInput("--html writes a page; leave it out or leave --json out");
        }
        CaseInput.Answered answered = input.answer(console);
        RuleBook rules = answered.assessor().rules();
        BenchSheet bench = answered.assessor().sheet(answered.assessment());
        boolean invented = input.inventedPrices() || input.inventedShop();
        if (json) {
            console.print(SheetJson.of(bench, rules, invented));
            return ExitCode.OK.number();
        }
        BenchPage sheet = BenchWriter.write(rules, bench);
        html.ifPresentOrElse(
                file -> {
                    Outputs.replace(file, input.file(), BenchHtml.of(sheet, invented));
                    console.print(new Page(console.look()).unwrapped(file.toString()));
                },
                () -> console.print(SheetText.of(sheet, invented, colour.on(console.look()))));
        return ExitCode.OK.number();
    }
}
