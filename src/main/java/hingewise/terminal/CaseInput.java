package hingewise.terminal;

import hingewise.assessment.Assessment;
import hingewise.assessment.Assessor;
import java.nio.file.Path;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** A case file, answered with a rule book, prices and the shop's figures. */
final class CaseInput {
    @Parameters(paramLabel = "CASE", description = "A case file.")
    private Path file = Path.of("");

    @Mixin
    private FiguresOption figures = new FiguresOption();

    @Mixin
    private RulesOption rules = new RulesOption();

    /** The answer and who gave it. */
    record Answered(Assessor assessor, Assessment assessment) {}

    Answered answer(Console console) {
        Assessor assessor = figures.assessor(rules.read(), console);
        return new Answered(assessor, assessor.assess(Inputs.caseFile(file)));
    }

    Path file() {
        return file;
    }

    boolean inventedPrices() {
        return figures.inventedPrices();
    }

    boolean inventedShop() {
        return figures.inventedShop();
    }
}
