package hingewise.terminal;

import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.Diagnostician;
import hingewise.inference.Network;
import hingewise.inference.Variable;
import hingewise.inference.Xmlbif;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "export-network",
        description = {
            "Write the network that was solved for a case, for other tools to check, in XMLBIF 0.3.",
            "",
            "Prints what is observed, one NAME=OUTCOME a line. A report, which may be wrong, is a variable of its own"
                    + " that is observed as yes.",
            ""
        })
final class ExportNetworkCommand implements Callable<Integer> {
    private static final MathContext DIGITS = new MathContext(17);

    private final Console console;

    @Parameters(index = "0", paramLabel = "CASE", description = "A case file.")
    private Path file = Path.of("");

    @Parameters(index = "1", paramLabel = "FILE", description = "The file to write; replaced as a whole.")
    private Path target = Path.of("");

    @Option(
            names = "--posteriors",
            description = "Then print our own answer, one NAME OUTCOME PROBABILITY a line, for both outcomes of every"
                    + " variable that is not observed.")
    private boolean posteriors;

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    ExportNetworkCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Diagnosis diagnosis = new Diagnostician(rulesOption.read()).diagnose(Inputs.caseFile(file));
        Network solved = diagnosis.solver().expanded();
        Outputs.replace(target, file, text(solved, diagnosis));
        StringBuilder lines = new StringBuilder();
        Xmlbif.observations(solved, diagnosis.evidence())
                .forEach(o -> lines.append(o).append('\n'));
        if (posteriors) {
            posteriors(solved, diagnosis, lines);
        }
        console.print(lines.toString());
        return ExitCode.OK.number();
    }

    private static String text(Network solved, Diagnosis diagnosis) {
        StringBuilder text = new StringBuilder();
        try {
            Xmlbif.write(solved, diagnosis.evidence(), text);
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return text.toString();
    }

    private static void posteriors(Network solved, Diagnosis diagnosis, StringBuilder lines) {
        Map<String, String> names = Xmlbif.names(solved, diagnosis.evidence());
        for (Variable variable : solved.variables()) {
            double yes = diagnosis.solution().probability(variable.name());
            String name = names.getOrDefault(variable.name(), variable.name());
            lines.append(name).append(" yes ").append(digits(yes)).append('\n');
            lines.append(name).append(" no ").append(digits(1 - yes)).append('\n');
        }
    }

    private static String digits(double probability) {
        return new BigDecimal(probability).round(DIGITS).toString();
    }
}
