package hingewise.intake.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hingewise.casefile.Phone;
import hingewise.intake.csv.Row;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ListingCheckerTest {
    private static final Columns COLUMNS = Columns.of(
            Path.of("sheet.csv"),
            new Row(1, 0, 2, List.of("id", "text", "price", "shipping", "family", "model", "quote"), ""),
            Set.of());
    private static final ListingChecker CHECKER = new ListingChecker(COLUMNS, FakeShop.FAMILIES, FakeShop.SHOP);

    private static Listing check(String price, String shipping, String family, String model, String quote) {
        return CHECKER.check(new Row(7, 0, 8, List.of("a", "words", price, shipping, family, model, quote), ""));
    }

    @Test
    void amountsAreInTheShopsCurrency() {
        Listing listing = check("120.50", "0", "clamshell", "", "");
        assertThat(listing.price()).isEqualTo(FakeShop.eur("120.50"));
        assertThat(listing.shipping()).isEqualTo(FakeShop.eur("0"));
        assertThat(listing.quote()).isEmpty();
    }

    @Test
    void aModelTellsTheFamilyHoweverItIsWritten() {
        assertThat(check("1", "1", "", "Invented LEAF  TWO, blue", "").phone())
                .isEqualTo(check("1", "1", "clamshell", "invented leaf two, Blue", "")
                        .phone())
                .isEqualTo(new Phone("clamshell", "invented leaf two, blue"));
        assertThat(check("1", "1", "clamshell", "unheard of", "").phone())
                .isEqualTo(new Phone("clamshell", "unheard of"));
        assertThat(check("1", "1", "clamshell", "", "").phone()).isEqualTo(new Phone("clamshell", ""));
    }

    @Test
    void whatTheShopDoesNotSellIsNotAppraised() {
        refused("no model of the shop file fits \"unheard of\"", "1", "", "unheard of", "");
        refused("the shop file says nothing of what \"book\" brings", "1", "book", "", "");
        refused("more than 200 characters", "1", "clamshell", "x".repeat(201), "");
        refused("neither family nor model is filled in", "1", "", "", "");
        refused("no family is called \"clamshel\". Did you mean \"clamshell\"?", "1", "clamshel", "", "");
    }

    @Test
    void aQuoteNeedsAServiceItIsFor() {
        assertThat(check("1", "1", "", "leaf two", "250").quote()).contains(FakeShop.eur("250"));
        refused("does not say what the maker's service renews", "1", "clamshell", "", "250");
    }

    @Test
    void amountsThatCouldBeMisreadAreRefused() {
        for (String price : List.of("12,50", "1.234,50", "€12", "12 EUR", "-5", "=5", "1e3", "9999999999", "\u0661")) {
            refused("is not an amount in plain digits", price, "clamshell", "", "");
        }
        refused("has 3 decimals", "1.234", "clamshell", "", "");
    }

    @Test
    void aMessageCarriesNothingThatSteersATerminal() {
        assertThatThrownBy(() -> check("\u001b[2J", "1", "clamshell", "", "")).hasMessageContaining("\"\uFFFD[2J\"");
    }

    private static void refused(String sentence, String price, String family, String model, String quote) {
        assertThatThrownBy(() -> check(price, "1", family, model, quote))
                .isInstanceOf(UnappraisableException.class)
                .hasMessageContaining(sentence);
    }
}
