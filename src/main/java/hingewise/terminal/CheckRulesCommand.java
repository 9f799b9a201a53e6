package hingewise.terminal;

import hingewise.review.Entanglement;
import hingewise.review.Links;
import hingewise.review.Remark;
import hingewise.review.RuleReview;
import hingewise.rulebook.yaml.Problem;
import hingewise.rulebook.yaml.Reading;
import hingewise.rulebook.yaml.RuleFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "check-rules",
        description = {
            "List every problem of a rule book; if there is none, sum it up and warn of what is probably not meant so.",
            ""
        })
final class CheckRulesCommand implements Callable<Integer> {
    /** Any number does; a fixed one makes two runs alike. */
    private static final long SEED = 1;

    /** A correlation of fewer says nothing. */
    private static final int FEWEST_DRAWS = 3;

    private static final int MOST_DRAWS = 10_000;

    private final Console console;

    @Parameters(arity = "0..1", paramLabel = "DIR", description = "A folder of rules; the program's own if left out.")
    private Optional<Path> folder = Optional.empty();

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Option(
            names = "--sensitivity",
            description = "Move all numbers at once, many times, and tell how often the answers stay. Takes minutes.")
    private boolean sensitivity;

    @Option(names = "--draws", paramLabel = "N", description = "How many times; 200 if left out.")
    private int draws = 200;

    @Option(names = "--seed", paramLabel = "N", description = "Another number gives other draws; 1 if left out.")
    private long seed = SEED;

    @Mixin
    private FiguresOption figures = new FiguresOption();

    @Option(
            names = "--case",
            paramLabel = "FILE",
            description = "A case file to answer for --sensitivity, beside the rule book's own cases; may be repeated.")
    private List<Path> files = List.of();

    @Option(names = "--untried", description = "List the links that no case of the rule book tries.")
    private boolean untried;

    CheckRulesCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (draws < FEWEST_DRAWS || draws > MOST_DRAWS) {
            throw Refusal.badInput(
                    "--draws is " + draws + "; give a number from " + FEWEST_DRAWS + " to " + MOST_DRAWS);
        }
        if (folder.isPresent() && rulesOption.folder().isPresent()) {
            throw Refusal.badInput("the folder is named twice, as DIR and with --rules; name it once");
        }
        Reading reading =
                new RuleFiles(folder.or(rulesOption::folder)).readWhole().reading();
        Page page = new Page(console.look());
        List<Problem> errors = reading.problems();
        reading.ruleBook().ifPresent(rules -> {
            RuleSummary.write(page, rules);
            List<Entanglement> all = Entanglement.of(rules, new Random(SEED));
            page.heading("Largest clique, in yes/no variables (at most " + Entanglement.LIMIT + ")");
            RuleSummary.write(page, all, Entanglement.CASES, "case");
            RuleSummary.write(page, all, Entanglement.FAMILIES, "random set");
            Links links = Links.of(rules);
            page.heading("Cases");
            page.line(links.untriedCount() + " of " + Figures.count(links.all(), "link")
                    + " between causes, signs and histories are tried by no case"
                    + (untried || links.untriedCount() == 0 ? "." : "; --untried lists them."));
            list(page, warnings(reading, untried ? links.remarks(rules) : List.of()), "cause");
            list(page, warnings(reading, RuleReview.of(rules, all)), "warning");
            if (sensitivity) {
                new SensitivitySection(console, page)
                        .write(
                                rules,
                                figures.prices(rules, console),
                                figures.shop(rules),
                                SensitivitySection.cases(rules, files),
                                draws,
                                seed);
            }
        });
        list(page, errors, "problem");
        console.print(page);
        return (errors.isEmpty() ? ExitCode.OK : ExitCode.RULE_PROBLEMS).number();
    }

    private static List<Problem> warnings(Reading reading, List<Remark> remarks) {
        return remarks.stream()
                .map(r -> reading.warning(r.section(), r.id(), r.what(), r.advice()))
                .toList();
    }

    private static void list(Page page, List<Problem> problems, String noun) {
        if (!problems.isEmpty()) {
            page.blank();
            problems.forEach(p -> page.unwrapped(p.text()));
            page.line(Figures.count(problems.size(), noun) + ".");
        }
    }
}
