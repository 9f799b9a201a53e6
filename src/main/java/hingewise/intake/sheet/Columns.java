package hingewise.intake.sheet;

import hingewise.intake.csv.Row;
import hingewise.intake.csv.SheetException;
import hingewise.plain.Quoted;
import hingewise.rulebook.NearestId;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The columns of a sheet, in whatever order its first row has them.
 *
 * @param names as written
 * @param positions places of the columns that are known, from 0
 */
public record Columns(List<String> names, Map<String, Integer> positions) {
    static final String ID = "id";
    static final String TEXT = "text";
    static final String PRICE = "price";
    static final String SHIPPING = "shipping";
    static final String FAMILY = "family";
    static final String MODEL = "model";
    static final String QUOTE = "quote";

    private static final List<String> NEEDED = List.of(ID, TEXT, PRICE, SHIPPING);
    private static final List<String> KNOWN =
            Stream.concat(NEEDED.stream(), Stream.of(FAMILY, MODEL, QUOTE)).toList();

    public Columns {
        names = List.copyOf(names);
        positions = Map.copyOf(positions);
    }

    /**
     * The columns that this first row names.
     *
     * @param taken names that the result has beside those of the sheet
     * @throws SheetException with everything that is wrong with it
     */
    static Columns of(Path file, Row row, Set<String> taken) {
        if (!row.usable()) {
            throw SheetException.of(file, "line " + row.line() + ": " + row.problem());
        }
        List<String> names = row.cells().stream().map(String::strip).toList();
        Map<String, Integer> positions = new HashMap<>();
        Set<String> met = new HashSet<>();
        List<String> problems = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i).toLowerCase(Locale.ROOT);
            if (!met.add(name)) {
                problems.add("the column " + Quoted.of(name) + " stands here twice; remove one");
            }
            if (KNOWN.contains(name)) {
                positions.put(name, i);
            } else if (taken.contains(name)) {
                problems.add("the column " + Quoted.of(name) + " is one that the result adds; remove or rename it");
            }
        }
        if (positions.isEmpty()) {
            throw SheetException.of(file, "line " + row.line() + ": " + noHeader(row.cells()));
        }
        problems.addAll(missing(names, positions));
        if (!problems.isEmpty()) {
            String place = Quoted.line(file.toString()) + ": line " + row.line() + ": ";
            throw new SheetException(problems.stream().map(p -> place + p).toList());
        }
        return new Columns(names, positions);
    }

    private static String noHeader(List<String> cells) {
        if (cells.stream().anyMatch(c -> c.matches("(?s).*[;\\t].*[;\\t].*"))) {
            return "the columns are divided by semicolons or tabs; divide them by commas";
        }
        return "the first row names no column that is known but begins with " + Quoted.of(cells.get(0))
                + "; begin with a row such as id,text,price,shipping,family";
    }

    private static List<String> missing(List<String> names, Map<String, Integer> positions) {
        List<String> problems = new ArrayList<>();
        List<String> absent =
                KNOWN.stream().filter(c -> !positions.containsKey(c)).toList();
        Set<String> meant = new HashSet<>();
        for (String name : names) {
            if (!positions.containsKey(name.toLowerCase(Locale.ROOT))) {
                NearestId.of(name.toLowerCase(Locale.ROOT), absent).ifPresent(near -> {
                    meant.add(near);
                    problems.add("no column is called " + Quoted.of(name) + ". Did you mean \"" + near + "\"?");
                });
            }
        }
        NEEDED.stream()
                .filter(c -> absent.contains(c) && !meant.contains(c))
                .forEach(c -> problems.add("the column \"" + c + "\" is missing; add it"));
        if (absent.contains(FAMILY) && absent.contains(MODEL) && !meant.contains(FAMILY) && !meant.contains(MODEL)) {
            problems.add("there is neither a column \"family\" nor a column \"model\"; add one of them");
        }
        return problems;
    }

    /** The names of columns that are carried along unread. */
    public List<String> unread() {
        return names.stream()
                .filter(n -> !positions.containsKey(n.toLowerCase(Locale.ROOT)))
                .toList();
    }

    /** The cell in this column without blanks around it; nothing if the sheet has no such column or it is blank. */
    Optional<String> cell(Row row, String column) {
        return Optional.ofNullable(positions.get(column))
                .map(p -> row.cells().get(p).strip())
                .filter(c -> !c.isEmpty());
    }
}
