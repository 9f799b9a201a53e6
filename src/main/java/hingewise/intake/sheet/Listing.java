package hingewise.intake.sheet;

import hingewise.casefile.Phone;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * A row of a sheet, checked. Amounts are in the shop's currency.
 *
 * @param line where the row begins in the sheet, from 1
 * @param cells the whole row as it was written
 * @param shipping paid for the phone to come
 * @param quote what the maker's service asks for this phone, in place of the shop file's; empty when the sheet has none
 */
public record Listing(
        long line, List<String> cells, String text, Phone phone, Money price, Money shipping, Optional<Money> quote) {
    public Listing {
        cells = List.copyOf(cells);
    }
}
