package hingewise.terminal;

import hingewise.offer.Appraisal;
import hingewise.offer.Mover;
import hingewise.offer.RouteWorth;
import hingewise.offer.Worth;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.Money;

/** What may be paid, how the routes compare, and what that hangs on. */
final class MoneySection {
    private static final int MOVERS = 3;

    private MoneySection() {}

    static void write(Page page, Appraisal appraisal, boolean invented) {
        page.heading("What to pay");
        page.line(appraisal.verdict());
        appraisal.worth().ifPresent(w -> {
            bracket(page, w);
            routes(page, w);
            movers(page, w.movers());
        });
        if (invented) {
            page.blank();
            page.faint(
                    0,
                    "Prices or figures are the bundled ones: invented. Use your own with --prices FILE and --shop FILE.");
        }
    }

    private static void bracket(Page page, Worth worth) {
        page.blank();
        page.line("By expected profit, the most to pay is");
        row(page, money(worth.bracket().fixed()), "if the route is chosen now and kept");
        row(
                page,
                money(worth.bracket().ceiling()),
                worth.countsOn()
                        .map(c -> "chosen after: " + c)
                        .orElse("chosen at once: nothing to be looked at first is worth its cost"));
        row(page, money(worth.bracket().perfect()), "if it were known which route is best");
        page.line("By chance of loss, at most " + Math.round(100 * worth.lossLimit()) + " %");
        row(page, money(worth.lossCeiling()), "");
        page.line("Phones were drawn, not all weighed: standard error of the most to pay "
                + Figures.money(worth.error()) + ".");
    }

    private static void row(Page page, String amount, String what) {
        page.hanging(2, String.format(Locale.ROOT, "%9s  ", amount), what.isEmpty() ? "" : what + ".");
    }

    private static void routes(Page page, Worth worth) {
        page.heading("Routes, at " + Figures.money(worth.price())
                + (worth.paid()
                        ? " paid"
                        : worth.asked() ? " asked" : worth.offerCeiling().isPresent() ? ", the most to pay" : ""));
        page.line("Profit in " + worth.price().getCurrencyUnit()
                + ": expected; missed in one of ten cases, in half, in nine of ten; chance of loss.");
        for (RouteWorth route : worth.routes()) {
            String figures = String.format(
                    Locale.ROOT,
                    "%9s  %9s %9s %9s  %7s  ",
                    plain(route.expected()),
                    plain(route.low()),
                    plain(route.middle()),
                    plain(route.high()),
                    route.chanceOfLoss() == 0 ? "none" : Figures.percent(route.chanceOfLoss()));
            page.hanging(0, figures, route.route().label());
            if (!route.detail().isEmpty()) {
                page.hanging(11, "", route.detail());
            }
        }
        worth.closed().forEach(page::line);
        page.line("Repairing here costs " + plain(worth.repairCost().low()) + " to "
                + plain(worth.repairCost().high()) + " in eight of ten cases, expected "
                + Figures.money(worth.repairCost().expected()) + ".");
    }

    private static void movers(Page page, List<Mover> movers) {
        if (movers.isEmpty()) {
            return;
        }
        page.heading("What moves it most");
        movers.stream().limit(MOVERS).forEach(m -> page.hanging(0, "-  ", m.sentence()));
        page.blank();
        page.line("The most to pay if the number were lower, and if it were higher:");
        for (Mover mover : movers) {
            page.hanging(
                    0,
                    String.format(Locale.ROOT, "%9s %9s  ", plain(mover.lower()), plain(mover.higher())),
                    mover.number() + String.format(Locale.ROOT, " (%.0f %%)", 100 * mover.change()));
        }
    }

    private static String money(Optional<Money> money) {
        return money.map(MoneySection::plain).orElse("nothing");
    }

    private static String plain(Money money) {
        return money.getAmount().toPlainString();
    }
}
