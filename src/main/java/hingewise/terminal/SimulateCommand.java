package hingewise.terminal;

import hingewise.costing.PriceBook;
import hingewise.costing.Shop;
import hingewise.rulebook.RuleBook;
import hingewise.simulation.Simulation;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "simulate",
        description = {
            "Follow phones drawn from the rule book as planned and by plain habits, and tell what each costs. Takes long.",
            ""
        })
final class SimulateCommand implements Callable<Integer> {
    /** With fewer than two first looks no error can be told. */
    private static final int FEWEST_STARTS = 2;

    private static final int MOST_CASES = 1_000_000;
    private static final double MOST_NOISE = 1;

    private final Console console;

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Mixin
    private FiguresOption figures = new FiguresOption();

    @Option(names = "--cases", paramLabel = "N", description = "How many phones, each time; 5000 if left out.")
    private int cases = 5_000;

    @Option(
            names = "--each",
            paramLabel = "N",
            description =
                    "How many of them begin with the same first look; 50 if left out. More is faster, and less sure.")
    private int each = 50;

    @Option(
            names = "--noise",
            paramLabel = "S",
            description =
                    "By how much the rule book is disturbed the second time, in tenfolds of odds; .3 if left out.")
    private double noise = .3;

    @Option(names = "--seed", paramLabel = "N", description = "Another number gives other phones; 1 if left out.")
    private long seed = 1;

    SimulateCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (each < 1 || cases > MOST_CASES || cases < FEWEST_STARTS * each) {
            throw Refusal.badInput("--cases is " + cases + " and --each is " + each + "; give at most " + MOST_CASES
                    + " cases, and at least " + FEWEST_STARTS + " times as many as --each, which is at least 1");
        }
        if (!(noise > 0 && noise <= MOST_NOISE)) {
            throw Refusal.badInput("--noise is " + noise + "; give a number above 0 and at most "
                    + String.format(Locale.ROOT, "%.0f", MOST_NOISE));
        }
        RuleBook rules = rulesOption.read();
        if (rules.grades().isEmpty()) {
            throw Refusal.badInput(
                    "the rule book has no grades of parts, so no repair can be recorded; give it at least one");
        }
        PriceBook prices = figures.prices(rules, console);
        Shop shop = figures.shop(rules);
        int starts = (cases + each - 1) / each;
        Page page = new Page(console.look());
        new SimulationSection(console, page, starts, each)
                .write(new Simulation(rules, prices, shop, starts, each, seed), noise, seed, shop);
        console.print(page);
        return ExitCode.OK.number();
    }
}
