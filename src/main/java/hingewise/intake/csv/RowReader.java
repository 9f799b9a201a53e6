package hingewise.intake.csv;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Divides a sheet into rows of cells, quoted as RFC 4180 section 2 has it, a row at a time. More is read than that
 * allows where it can only mean one thing: single line ends of either kind, blanks around quotes, quotes inside a cell
 * that does not begin with one, empty lines. A row that cannot be divided costs that row only: reading goes on with the
 * line below the one where it began, so that a quote that is never closed does not take the rest of the sheet with it.
 * No more than one row of {@link #LONGEST} bytes is held.
 */
public final class RowReader implements Closeable {
    /** The longest row that is used: 128 KiB. */
    public static final int LONGEST = 1 << 17;

    private static final String NEVER_CLOSED =
            "a quote is opened and never closed rightly; close it, and write a quote inside a quoted cell twice";

    private final Bytes bytes;
    private final Encoding encoding;
    private long line;
    private final ByteArrayOutputStream cell = new ByteArrayOutputStream();
    private List<String> cells = new ArrayList<>();
    private long length;
    private String problem = "";
    /** Where the second line of the row begins, to which reading returns; 0 while it has only one. */
    private long secondLine;

    /**
     * @param from the byte at which a row begins
     * @param line the line it is on, from 1
     */
    public RowReader(Path file, Encoding encoding, long from, long line) throws IOException {
        this.bytes = new Bytes(file, from);
        this.encoding = encoding;
        this.line = line;
    }

    /** The next row that is not empty; nothing at the end of the sheet. */
    public Optional<Row> next() throws IOException {
        skipEmptyLines();
        if (bytes.peek() == Bytes.END) {
            return Optional.empty();
        }
        long began = line;
        cells = new ArrayList<>();
        length = 0;
        problem = "";
        secondLine = 0;
        boolean more = true;
        while (more) {
            cell.reset();
            boolean whole = cell();
            if (!whole) {
                return Optional.of(broken(began));
            }
            finishCell();
            more = bytes.peek() == ',';
            if (more) {
                bytes.skip();
            }
        }
        lineEnd();
        return Optional.of(row(began));
    }

    private Row row(long began) {
        String why = length > LONGEST
                ? "this row is " + length + " bytes long; shorten its text to less than " + LONGEST
                : problem;
        return new Row(began, bytes.position(), line, why.isEmpty() ? cells : List.of(), why);
    }

    private Row broken(long began) throws IOException {
        if (secondLine > 0) {
            bytes.go(secondLine);
        } else {
            while (!atLineEnd()) {
                bytes.skip();
            }
            lineEnd();
        }
        line = began + 1;
        return new Row(began, bytes.position(), line, List.of(), NEVER_CLOSED);
    }

    /** Reads up to what ends the cell; false if its quotes are not in order. */
    private boolean cell() throws IOException {
        while (bytes.peek() == ' ') {
            take(' ');
        }
        if (bytes.peek() == '"') {
            cell.reset();
            bytes.skip();
            return quoted();
        }
        while (bytes.peek() != ',' && !atLineEnd()) {
            take(bytes.peek());
        }
        return true;
    }

    private boolean quoted() throws IOException {
        while (true) {
            int b = bytes.peek();
            if (b == Bytes.END) {
                return false;
            }
            if (b == '"') {
                bytes.skip();
                if (bytes.peek() != '"') {
                    return closed();
                }
            }
            take(b);
            if (b == '\n' || b == '\r' && bytes.peek() != '\n') {
                line++;
                secondLine = secondLine == 0 ? bytes.position() : secondLine;
            }
        }
    }

    private boolean closed() throws IOException {
        while (bytes.peek() == ' ') {
            bytes.skip();
        }
        return bytes.peek() == ',' || atLineEnd();
    }

    private void take(int b) {
        bytes.skip();
        length++;
        if (length <= LONGEST) {
            cell.write(b);
        }
    }

    private void finishCell() {
        length++;
        if (length <= LONGEST) {
            encoding.decode(cell.toByteArray())
                    .ifPresentOrElse(
                            cells::add,
                            () -> problem = "a byte here is not " + encoding.label() + "; save the sheet as UTF-8");
        }
    }

    private boolean atLineEnd() throws IOException {
        int b = bytes.peek();
        return b == '\n' || b == '\r' || b == Bytes.END;
    }

    private void lineEnd() throws IOException {
        if (bytes.peek() == Bytes.END) {
            return;
        }
        if (bytes.peek() == '\r') {
            bytes.skip();
            if (bytes.peek() == '\n') {
                bytes.skip();
            }
        } else {
            bytes.skip();
        }
        line++;
    }

    private void skipEmptyLines() throws IOException {
        while (bytes.peek() != Bytes.END && atLineEnd()) {
            lineEnd();
        }
    }

    @Override
    public void close() throws IOException {
        bytes.close();
    }
}
