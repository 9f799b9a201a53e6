package hingewise.costing.csv;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.costing.Offer;
import hingewise.costing.OrderLine;
import hingewise.costing.Regret;
import hingewise.rulebook.Part;
import hingewise.rulebook.Rules;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PartsCsvTest {
    private static final Part PART = new Rules()
            .cause("a", .1)
            .partFor("part", "a")
            .book()
            .parts()
            .values()
            .iterator()
            .next();
    private static final Regret NONE = new Regret(Money.parse("EUR 0"), Money.parse("EUR 0"));

    @Test
    void oneLineAPartEndsInCarriageReturnAndLineFeed() {
        String csv = PartsCsv.of(List.of(line("Nord, Invented \"A\"")), id -> "Fault " + id);
        assertThat(csv)
                .isEqualTo("part,label,quantity,supplier,price,currency,grade,days,for\r\n" + PART.id() + ","
                        + PART.label() + ",2,\"Nord, Invented \"\"A\"\"\",12.50,EUR,service,3,Fault a; Fault b\r\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@x", "\tx", "\rx", "\nx"})
    void aCellThatASpreadsheetWouldCalculateIsDefused(String supplier) {
        String csv = PartsCsv.of(List.of(line(supplier)), id -> id);
        assertThat(csv).contains(",\"'" + supplier + "\",");
    }

    /** The example of the OWASP page "CSV Injection". */
    @Test
    void quotesWithinADefusedCellAreDoubled() {
        assertThat(PartsCsv.of(List.of(line("=1+2\";=1+2")), id -> id)).contains(",\"'=1+2\"\";=1+2\",");
    }

    @Test
    void aPartWithoutAnOfferLeavesItsCellsEmpty() {
        OrderLine line = new OrderLine(PART, 1, Optional.empty(), Set.of("a"), 1, NONE);
        assertThat(PartsCsv.of(List.of(line), id -> id)).endsWith(",1,,,,,,a\r\n");
    }

    private static OrderLine line(String supplier) {
        Offer offer = new Offer(PART.id(), supplier, Money.parse("EUR 12.50"), "service", 3, 0);
        return new OrderLine(PART, 2, Optional.of(offer), Set.of("b", "a"), 1, NONE);
    }
}
