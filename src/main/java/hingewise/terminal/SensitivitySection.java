package hingewise.terminal;

import hingewise.casefile.CaseFile;
import hingewise.costing.PriceBook;
import hingewise.costing.Shop;
import hingewise.review.CaseFiles;
import hingewise.review.Sensitivity;
import hingewise.review.SensitivityStudy;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.RuleCase;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.DoubleStream;

/** How firmly the answers to the rule book's own cases stand when all its numbers are moved. */
final class SensitivitySection {
    /** Henrion and others 1996 add noise of .1 to 1 on this scale; these two are what careful estimates differ by. */
    private static final List<Double> DEVIATIONS = List.of(.3, .5);

    /** A case that loses its answer more often than this is worth looking at. */
    private static final double FRAGILE = .8;

    /** With fewer, correlations of numbers that have nothing to do with a case hide the true ones. */
    private static final int FEWEST_TO_RANK = 40;

    private static final int MOST_CASES = 15;

    private final Console console;
    private final Page page;
    private int answered;

    SensitivitySection(Console console, Page page) {
        this.console = console;
        this.page = page;
    }

    /** The rule book's own cases and further case files, by what they are called. */
    static Map<String, CaseFile> cases(RuleBook rules, List<Path> files) {
        Map<String, CaseFile> cases = new LinkedHashMap<>();
        for (RuleCase c : rules.cases()) {
            cases.put(c.id(), CaseFiles.of(c));
        }
        for (Path file : files) {
            cases.put(file.toString(), Inputs.caseFile(file));
        }
        return cases;
    }

    /** Writes the section; what goes on meanwhile goes to the error stream. */
    void write(RuleBook rules, PriceBook prices, Shop shop, Map<String, CaseFile> cases, int draws, long seed) {
        SensitivityStudy study = new SensitivityStudy(rules, prices, shop, cases, draws, seed);
        int copies = draws * DEVIATIONS.size();
        console.complain("answering " + Figures.count(cases.size(), "case") + " from "
                + Figures.count(copies, "disturbed rule book") + "; Ctrl-C stops");
        ExecutorService workers =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        List<Sensitivity> results = new ArrayList<>();
        try {
            for (double deviation : DEVIATIONS) {
                results.add(study.under(deviation, workers, () -> progress(copies)));
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw Refusal.badInput("stopped before all was answered");
        } finally {
            workers.shutdownNow();
        }
        page.heading("Sensitivity");
        page.line(study.numbers() + " numbers moved at once by normal noise on their log10-odds, " + draws
                + " times, seed " + seed + " (Henrion and others 1996); "
                + Figures.count(cases.size(), "case") + ". How often the answer stays, in per cent:");
        page.unwrapped(row("noise, standard deviation", DEVIATIONS.stream().mapToDouble(d -> d), "%12.1f"));
        page.unwrapped(row("first cause", results.stream().mapToDouble(Sensitivity::sameFirst)));
        page.unwrapped(row("first three causes", results.stream().mapToDouble(Sensitivity::sameThree)));
        page.unwrapped(row("first cause among first three", results.stream().mapToDouble(Sensitivity::amongThree)));
        page.unwrapped(row("what to try first", results.stream().mapToDouble(Sensitivity::sameTry)));
        page.unwrapped(row("to order or not", results.stream().mapToDouble(Sensitivity::sameOrder)));
        fragile(results.get(0));
        if (draws < FEWEST_TO_RANK) {
            page.blank().line("Fewer than " + FEWEST_TO_RANK + " draws do not tell which numbers matter most.");
            return;
        }
        influences("Numbers that matter most to the first cause", results.get(0).influences());
        influences("Numbers that matter most to ordering", results.get(0).orderInfluences());
        page.faint(
                0,
                "Share: square of the correlation between a number's move and the outcome (log-odds of the"
                        + " undisturbed first cause; order or not), less what chance gives, averaged over the cases.");
    }

    private void progress(int copies) {
        answered++;
        if (answered % Math.max(1, copies / 20) == 0) {
            console.complain(answered + " of " + copies + " disturbed rule books answered");
        }
    }

    private void fragile(Sensitivity result) {
        List<Sensitivity.Firmness> fragile = result.cases().stream()
                .filter(c -> Math.min(c.sameFirst(), c.sameOrder()) < FRAGILE)
                .toList();
        page.blank()
                .line(Figures.count(fragile.size(), "case") + " of "
                        + result.cases().size()
                        + " keep their first cause or their order in fewer than "
                        + Figures.percent(FRAGILE) + " of draws with noise of " + result.deviation()
                        + (fragile.size() > MOST_CASES ? "; the least firm:" : fragile.isEmpty() ? "." : ":"));
        if (!fragile.isEmpty()) {
            page.unwrapped(String.format(Locale.ROOT, "%-44s%12s%12s%12s", "", "first cause", "first try", "order"));
        }
        fragile.stream()
                .limit(MOST_CASES)
                .forEach(c -> page.unwrapped(String.format(
                        Locale.ROOT,
                        "%-44s%12.0f%12.0f%12.0f",
                        c.name(),
                        100 * c.sameFirst(),
                        100 * c.sameTry(),
                        100 * c.sameOrder())));
    }

    private void influences(String heading, List<Sensitivity.Influence> influences) {
        page.blank().line(heading + ", share in per cent:");
        influences.forEach(i -> page.unwrapped(
                String.format(Locale.ROOT, "%6.2f  %s (most in %s)", 100 * i.share(), i.number(), i.mostIn())));
    }

    private static String row(String name, DoubleStream values) {
        return row(name, values.map(v -> 100 * v), "%12.1f");
    }

    private static String row(String name, DoubleStream values, String form) {
        StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%-32s", name));
        values.forEach(v -> row.append(String.format(Locale.ROOT, form, v)));
        return row.toString();
    }
}
