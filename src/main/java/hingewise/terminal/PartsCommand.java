package hingewise.terminal;

import hingewise.assessment.Assessment;
import hingewise.costing.PartsList;
import hingewise.costing.csv.PartsCsv;
import hingewise.rulebook.Cause;
import hingewise.rulebook.RuleBook;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "parts",
        description = {
            "Say which parts to order, from whom, what that costs all together, and what had better wait.",
            ""
        })
final class PartsCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private CaseInput input = new CaseInput();

    @ArgGroup
    private Form form = new Form();

    /** How the answer is printed, if not as text. */
    static final class Form {
        @Option(names = "--json", description = "Print the answer as JSON, alone and complete.")
        private boolean json;

        @Option(names = "--csv", description = "Print the order as comma-separated values, for a spreadsheet.")
        private boolean csv;
    }

    @Mixin
    private ColourOption colour = new ColourOption();

    PartsCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        CaseInput.Answered answered = input.answer(console);
        Assessment assessment = answered.assessment();
        RuleBook rules = answered.assessor().rules();
        PartsList parts = assessment.parts();
        if (form.csv) {
            console.print(PartsCsv.of(
                    parts.order(),
                    id -> Optional.ofNullable(rules.causes().get(id))
                            .map(Cause::label)
                            .orElse(id)));
        } else if (form.json) {
            console.print(Json.object(assessment, (json, a) -> {
                json.writeStringField("title", a.file().title());
                json.writeBooleanField("stopped", a.stopped());
                json.writeBooleanField("inventedPrices", input.inventedPrices());
                json.writeBooleanField("inventedShop", input.inventedShop());
                PartsJson.write(json, parts);
            }));
        } else {
            Page page = new Page(colour.on(console.look()));
            page.line(assessment.file().title());
            PartsSection.write(page, rules, assessment, input.inventedPrices());
            PartsSection.reckoned(page, rules, parts);
            console.print(page);
        }
        return ExitCode.OK.number();
    }
}
