package hingewise.costing.csv;

import hingewise.costing.PriceBook;
import java.util.List;
import java.util.Optional;

/**
 * What came of reading a price book.
 *
 * @param priceBook present exactly when there are no problems
 * @param rest the rows that have no problem, to be used only if the user says so; empty where rows could not be told
 *     apart or there is none
 * @param problems all there are (of very many, the first), by line; one sentence each, with file, line and remedy
 */
public record Reading(Optional<PriceBook> priceBook, Optional<PriceBook> rest, List<String> problems) {
    public Reading {
        problems = List.copyOf(problems);
    }
}
