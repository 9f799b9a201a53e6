package hingewise.costing.csv;

import hingewise.costing.Offer;
import hingewise.costing.OrderLine;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The parts list as comma-separated values after RFC 4180. A cell that a spreadsheet would take for a formula gets an
 * apostrophe in front, as the OWASP page "CSV Injection" advises.
 */
public final class PartsCsv {
    private static final String LINE_END = "\r\n";
    private static final String FORMULA_STARTS = "=+-@\t\r\n";

    private PartsCsv() {}

    /** Header and one line a part; prices are plain decimals with the currency in a column of its own. */
    public static String of(List<OrderLine> parts, Function<String, String> causeLabel) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("part", "label", "quantity", "supplier", "price", "currency", "grade", "days", "for"));
        parts.forEach(line -> rows.add(row(line, causeLabel)));
        return rows.stream()
                .map(row -> row.stream().map(PartsCsv::cell).collect(Collectors.joining(",")) + LINE_END)
                .collect(Collectors.joining());
    }

    private static List<String> row(OrderLine line, Function<String, String> causeLabel) {
        return List.of(
                line.part().id(),
                line.part().label(),
                Integer.toString(line.quantity()),
                line.offer().map(Offer::supplier).orElse(""),
                line.offer().map(o -> o.price().getAmount().toPlainString()).orElse(""),
                line.offer().map(o -> o.price().getCurrencyUnit().getCode()).orElse(""),
                line.offer().map(Offer::grade).orElse(""),
                line.offer().map(o -> Integer.toString(o.days())).orElse(""),
                line.causes().stream().map(causeLabel).sorted().collect(Collectors.joining("; ")));
    }

    private static String cell(String text) {
        boolean formula = !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
        String safe = formula ? "'" + text : text;
        return formula || safe.matches("(?s).*[\",\r\n].*") ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }
}
