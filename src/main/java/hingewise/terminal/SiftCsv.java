package hingewise.terminal;

import hingewise.intake.csv.RowWriter;
import hingewise.intake.sheet.Appraisal;
import hingewise.intake.sheet.Columns;
import hingewise.intake.sheet.RankedRow;
import hingewise.intake.sheet.RankedRows;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** The sheet back as comma-separated text: what was found out, then the columns of the sheet. */
final class SiftCsv {
    private static final List<String> COLUMNS = List.of(
            "rank",
            "expected-profit",
            "chance-of-loss",
            "ceiling",
            "verdict",
            "causes",
            "ask",
            "stops",
            "claims-taken",
            "profit-uncorrected",
            "profit-spread",
            "kept",
            "ceiling-uncorrected");

    /** Names of the columns that are added. */
    static final Set<String> TAKEN = Set.copyOf(COLUMNS);

    private SiftCsv() {}

    static RankedRows begin(Writer to, Columns columns) throws IOException {
        RowWriter out = new RowWriter(to);
        out.write(COLUMNS, columns.names());
        return (rank, row) -> out.write(own(rank, row), row.row().cells());
    }

    private static List<String> own(long rank, RankedRow row) {
        Appraisal a = row.row().appraisal();
        return List.of(
                Long.toString(rank),
                row.corrected().getAmount().toPlainString(),
                String.format(Locale.ROOT, "%.4f", a.chanceOfLoss()),
                row.ceiling().getAmount().toPlainString(),
                row.verdict().id(),
                a.causes().stream()
                        .map(c -> c.label() + " " + Figures.percent(c.chance()))
                        .collect(Collectors.joining("; ")),
                String.join(" | ", a.ask()),
                String.join(" ", a.stops()),
                String.join(" ", a.claims()),
                a.profit().getAmount().toPlainString(),
                a.spread().getAmount().toPlainString(),
                String.format(Locale.ROOT, "%.3f", row.kept()),
                a.ceiling().getAmount().toPlainString());
    }
}
