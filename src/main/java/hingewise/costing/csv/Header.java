package hingewise.costing.csv;

import hingewise.plain.Quoted;
import hingewise.rulebook.NearestId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The columns of a price book, in whatever order its first row has them.
 *
 * @param positions each column's place in a row, from 0
 */
record Header(Map<String, Integer> positions) {
    static final List<String> COLUMNS =
            List.of("part", "supplier", "price", "currency", "grade", "days", "bad-on-arrival");

    /** Columns that may be left out, as may their cells. */
    static final List<String> OPTIONAL = List.of("from-quantity", "available", "variant", "colour", "valid-until");

    private static final List<String> ALL =
            Stream.concat(COLUMNS.stream(), OPTIONAL.stream()).toList();

    /** The header in this row, complete, or nothing and the problems. */
    static Optional<Header> of(Rows.Row row, Problems problems) {
        if (row.cells().size() == 1 && row.cells().get(0).matches(".*[;\t].*")) {
            problems.add(row.line(), "the columns are divided by semicolons or tabs; divide them by commas");
            return Optional.empty();
        }
        Map<String, Integer> positions = new LinkedHashMap<>();
        boolean good = true;
        for (String name : row.cells()) {
            if (!ALL.contains(name)) {
                problems.add(row.line(), "no column is called " + Quoted.of(name) + ". " + NearestId.advice(name, ALL));
                good = false;
            } else if (positions.put(name, positions.size()) != null) {
                problems.add(row.line(), "the column \"" + name + "\" stands here twice; remove one");
                return Optional.empty();
            }
        }
        for (String column : COLUMNS) {
            if (!positions.containsKey(column)) {
                problems.add(row.line(), "the column \"" + column + "\" is missing; add it");
                good = false;
            }
        }
        return good ? Optional.of(new Header(Map.copyOf(positions))) : Optional.empty();
    }

    /** What stands in a column that may be left out; blank when it is. */
    String optional(Rows.Row row, String column) {
        Integer position = positions.get(column);
        return position == null ? "" : row.cells().get(position);
    }

    String cell(Rows.Row row, String column) {
        Integer position = positions.get(column);
        if (position == null) {
            throw new IllegalArgumentException("no column \"" + column + "\"");
        }
        return row.cells().get(position);
    }
}
