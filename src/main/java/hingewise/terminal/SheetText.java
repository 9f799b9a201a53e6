package hingewise.terminal;

import hingewise.report.bench.BenchPage;
import hingewise.report.bench.BenchPage.Branch;
import hingewise.report.bench.BenchPage.Row;
import hingewise.report.bench.BenchPage.Station;
import hingewise.report.bench.BenchPage.Twig;
import java.util.List;
import java.util.Optional;

/** A sheet on a page. */
final class SheetText {
    /** Room for the longest name of a station's rows. */
    private static final int NAME = 7;

    /** Said where prices or the shop's figures are those that come with the program. */
    static final String INVENTED =
            "Prices and the shop's figures are invented. Use your own with --prices FILE and --shop FILE.";

    private SheetText() {}

    /** @param invented whether prices or the shop's figures are those that come with the program */
    static Page of(BenchPage sheet, boolean invented, Look look) {
        Page page = new Page(look);
        page.hanging(0, "", "Bench sheet: " + sheet.title(), Optional.of(Tint.HEADING));
        sheet.about().forEach(page::line);
        if (!sheet.stops().isEmpty()) {
            page.alarm(sheet.stops());
        }
        page.blank();
        sheet.overall().forEach(page::line);
        if (!sheet.care().isEmpty()) {
            page.heading("Take care");
            sheet.care().forEach(c -> page.hanging(0, "!  ", c, Optional.of(Tint.CARE)));
        }
        if (!sheet.questions().isEmpty()) {
            page.heading("What may still be asked");
            sheet.questions().forEach(q -> page.hanging(0, "-  ", q.name() + ": " + q.text()));
        }
        rows(page, "What to have ready", sheet.ready());
        sheet.outline().ifPresent(root -> {
            page.heading("The way at a glance");
            twig(page, root, "", "");
        });
        if (!sheet.stations().isEmpty()) {
            page.heading("Stations");
            sheet.stations().forEach(s -> station(page, s));
        }
        if (!sheet.stations().isEmpty()) {
            page.heading("Where to stop");
            sheet.ends().forEach(e -> {
                page.hanging(0, e.letter() + "  ", e.chance() + ": " + e.label());
                rows(page, 3, e.rows());
            });
        }
        page.blank();
        sheet.notes().forEach(n -> page.faint(0, n));
        if (invented && sheet.stops().isEmpty()) {
            page.faint(0, INVENTED);
        }
        return page;
    }

    private static void twig(Page page, Twig twig, String margin, String below) {
        page.hanging(
                0,
                margin,
                twig.station() + "  " + twig.label() + (twig.chance().isEmpty() ? "" : ", " + twig.chance()));
        List<Twig> twigs = twig.twigs();
        for (int i = 0; i < twigs.size(); i++) {
            boolean last = i == twigs.size() - 1;
            twig(page, twigs.get(i), below + (last ? "└─ " : "├─ "), below + (last ? "   " : "│  "));
        }
    }

    private static void station(Page page, Station station) {
        page.hanging(
                0, station.number() + "  ", station.label() + " – " + station.figures(), Optional.of(Tint.HEADING));
        rows(page, 3, station.rows());
        List<Branch> branches = station.branches();
        for (int i = 0; i < branches.size(); i++) {
            Branch b = branches.get(i);
            page.hanging(
                    3,
                    (i == branches.size() - 1 ? "└─ " : "├─ ") + String.format("%5s  ", b.chance()),
                    b.when() + " → " + b.to());
        }
        page.blank();
    }

    private static void rows(Page page, String heading, List<Row> rows) {
        if (!rows.isEmpty()) {
            page.heading(heading);
            for (Row row : rows) {
                page.hanging(0, String.format("%5s  ", row.name()), row.text());
            }
        }
    }

    private static void rows(Page page, int indent, List<Row> rows) {
        String name = "";
        for (Row row : rows) {
            String shown = row.name().equals(name) ? "" : row.name();
            String lead = String.format("%-" + NAME + "s", shown) + (row.care() ? "!  " : "");
            page.hanging(indent, lead, row.text(), row.care() ? Optional.of(Tint.CARE) : Optional.empty());
            name = row.name();
        }
    }
}
