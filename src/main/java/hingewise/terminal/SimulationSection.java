package hingewise.terminal;

import hingewise.costing.Shop;
import hingewise.planning.Decision;
import hingewise.simulation.Comparison;
import hingewise.simulation.Manner;
import hingewise.simulation.Simulation;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;

/** How planning does beside plain habits, on phones from the rule book and from disturbed ones. */
final class SimulationSection {
    private static final String ROW = "%-30s%9s%8s%9s%8s%7s%7s%9s%9s%7s";

    private final Console console;
    private final Page page;
    private final int starts;
    private final int each;
    private int followed;

    SimulationSection(Console console, Page page, int starts, int each) {
        this.console = console;
        this.page = page;
        this.starts = starts;
        this.each = each;
    }

    /** Writes the section; what goes on meanwhile goes to the error stream. */
    void write(Simulation simulation, double noise, long seed, Shop shop) {
        console.complain("following " + 2 * starts * each + " phones; Ctrl-C stops");
        ExecutorService workers =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        Comparison own;
        Comparison disturbed;
        try {
            own = simulation.under(0, workers, this::progress);
            disturbed = simulation.under(noise, workers, this::progress);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw Refusal.badInput("stopped before all was followed");
        } finally {
            workers.shutdownNow();
        }
        page.heading("Simulation");
        page.line(
                "Phones drawn from the rule book and followed to the end in each way, all ways with the same phones and"
                        + " the same luck; seed " + seed + ". Means per phone; cost in "
                        + shop.currency().getCode()
                        + " against a phone that works and was never opened. \"More\" is what a way costs more than the plan,"
                        + " \"+-\" the standard error before it.");
        table("Drawn from the rule book itself, which is what the planner believes", own);
        table(
                String.format(
                        Locale.ROOT,
                        "Drawn from rule books disturbed by noise of %s on the log10-odds, which the planner does not know",
                        noise),
                disturbed);
        page.blank()
                .line(
                        "Needless: parts of which nothing they renew was faulty. In vain: steps of opening behind which"
                                + " nothing was wrong that may show what was complained of. Left: ended with such a fault left.");
    }

    private void progress() {
        followed++;
        if (followed % Math.max(1, starts / 10) == 0) {
            console.complain(followed * each + " of " + 2 * starts * each + " phones followed");
        }
    }

    private void table(String heading, Comparison c) {
        page.blank()
                .line(heading + ": " + c.cases() + " phones after " + c.starts() + " first looks"
                        + (c.setAside() == 0 ? "." : "; " + c.setAside() + " set aside, too entangled to be exact."));
        page.unwrapped(row("", "cost", "+-", "more", "+-", "min", "days", "needless", "in vain", "left"));
        for (Manner manner : Manner.values()) {
            Comparison.Row r = c.of(manner);
            boolean plan = manner == Manner.PLAN;
            page.unwrapped(row(
                    name(manner),
                    figure(1, r.cost().mean()),
                    figure(1, r.cost().error()),
                    plan ? "" : figure(1, r.more().mean()),
                    plan ? "" : figure(1, r.more().error()),
                    figure(0, r.minutes()),
                    figure(1, r.days()),
                    figure(2, r.needless()),
                    figure(2, r.inVain()),
                    figure(2, r.left())));
        }
        page.unwrapped(row(
                "everything known",
                figure(1, c.knowing().mean()),
                figure(1, c.knowing().error()),
                figure(1, -c.belowPlan().mean()),
                figure(1, c.belowPlan().error()),
                "",
                "",
                "",
                "",
                ""));
        page.line("As planned, cases end: "
                + Arrays.stream(Decision.Kind.values())
                        .filter(c.endings()::containsKey)
                        .map(k -> end(k) + " " + Figures.percent(c.endings().getOrDefault(k, 0.0)))
                        .collect(Collectors.joining(", "))
                + ".");
    }

    private static String row(String... cells) {
        return String.format(Locale.ROOT, ROW, (Object[]) cells).stripTrailing();
    }

    private static String figure(int decimals, double value) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    private static String name(Manner manner) {
        return switch (manner) {
            case PLAN -> "as planned";
            case LIKELIEST_PART -> "likeliest part first";
            case LIKELIEST_CAUSE -> "likeliest cause first";
            case CHEAPEST_CHECK -> "cheapest check first";
            case DEAREST_PART -> "dearest part straight away";
            case THRIFTY_PART -> "likeliest part, thrifty";
            case THRIFTY_CAUSE -> "likeliest cause, thrifty";
            case THRIFTY_CHECK -> "cheapest check, thrifty";
            case THRIFTY_DEAREST -> "dearest part, then thrifty";
        };
    }

    private static String end(Decision.Kind kind) {
        return switch (kind) {
            case LEAVE, REPAIR, ASK_FIRST, OFFER, PASS -> "nothing more fitted";
            case SERVICE -> "maker's repair";
            case AS_IS -> "sold as it is";
            case BREAK -> "broken for parts";
            case RETURN -> "given back";
        };
    }
}
