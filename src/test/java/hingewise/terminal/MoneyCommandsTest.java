package hingewise.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MoneyCommandsTest {
    private static final String CASE = "src/test/resources/terminal/case.json";

    @TempDir
    Path folder;

    @Test
    void theOfferSaysTheMostToPayItsBracketTheRoutesAndWhatMovesIt() {
        Ran ran = Ran.small("offer", CASE, "--prices", Ran.SMALL_PRICES, "--shop", Ran.SMALL_SHOP);
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains("What to pay", "By expected profit, the most to pay is", "By chance of loss, at most 30 %")
                .contains("repair here", "sell as it is", "break for parts", "return to the seller", "do not buy")
                .contains("What moves it most")
                .doesNotContain("bundled");
        assertThat(ran.out().lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(Page.WIDTH));
    }

    @Test
    void theOfferAsJsonHasTheSameFiguresAsDecimals() throws IOException {
        JsonNode offer =
                json(Ran.small("offer", CASE, "--json", "--prices", Ran.SMALL_PRICES, "--shop", Ran.SMALL_SHOP));
        assertThat(offer.at("/verdict").asText()).startsWith("Offer at most ");
        assertThat(offer.at("/verdict").asText())
                .contains(offer.at("/offerCeiling").asText());
        double fixed = offer.at("/bracket/fixed").asDouble();
        double perfect = offer.at("/bracket/perfect").asDouble();
        assertThat(offer.at("/bracket/ceiling").asDouble()).isBetween(fixed, perfect);
        List<String> ids = new ArrayList<>();
        offer.at("/routes").forEach(r -> ids.add(r.get("id").asText()));
        assertThat(ids)
                .containsExactlyInAnyOrder("repair-here", "return", "sell-as-is", "break-for-parts", "do-not-buy");
        assertThat(offer.at("/movers").size()).isGreaterThanOrEqualTo(3);
    }

    @Test
    void anAskingPriceIsAnAmountInTheShopsCurrency() {
        Ran ran = Ran.small("offer", CASE, "--prices", Ran.SMALL_PRICES, "--shop", Ran.SMALL_SHOP, "--asked", "12,50");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("--asked is \"12,50\"; write an amount in EUR with at most 2 decimals");
    }

    @Test
    void partsAreListedForASpreadsheet() {
        Ran ran = Ran.small("parts", CASE, "--csv", "--prices", Ran.SMALL_PRICES, "--shop", Ran.SMALL_SHOP);
        assertThat(ran.out())
                .isEqualTo("part,label,quantity,supplier,price,currency,grade,days,for\r\n"
                        + "inner-assembly,inner display assembly,1,Invented Parts,240.00,EUR,service,3,"
                        + "Inner panel fractured at the fold\r\n"
                        + "back-adhesive,adhesive for the back,1,Invented Parts,2.90,EUR,service,1,"
                        + "Inner panel fractured at the fold\r\n");
    }

    @Test
    void partsSayWhatMayBeLostEitherWay() throws IOException {
        JsonNode parts =
                json(Ran.small("parts", CASE, "--json", "--prices", Ran.SMALL_PRICES, "--shop", Ran.SMALL_SHOP));
        assertThat(parts.at("/order/0/id").asText()).isEqualTo("inner-assembly");
        assertThat(parts.at("/order/0/sure").asBoolean()).isTrue();
        assertThat(parts.at("/purchase/goods").asText()).isEqualTo("242.90");
        assertThat(parts.at("/purchase/sending").asText()).isEqualTo("4.00");
        assertThat(Ran.small("parts", CASE, "--prices", Ran.SMALL_PRICES, "--shop", Ran.SMALL_SHOP)
                        .out())
                .contains("What may be lost", "sure (");
    }

    @Test
    void aBadPriceBookIsRefusedWithEveryRowAndUsedWithoutThemIfToldTo() throws IOException {
        Path prices = folder.resolve("prices.csv");
        Files.writeString(
                prices,
                Files.readString(Path.of(Ran.SMALL_PRICES))
                        + "battery-pair,Invented,-3,EUR,service,1,0\nhinge,Invented,3,,service,1,0\n");
        Ran refused = Ran.small("parts", CASE, "--prices", prices.toString(), "--shop", Ran.SMALL_SHOP);
        assertThat(refused.exit()).isEqualTo(2);
        assertThat(refused.err())
                .contains(":5: the price \"-3\" is negative")
                .contains(":6: no part is called \"hinge\"")
                .contains(":6: the currency \"\" is not one of ISO 4217")
                .contains("--skip-bad-rows");
        Ran skipped =
                Ran.small("parts", CASE, "--skip-bad-rows", "--prices", prices.toString(), "--shop", Ran.SMALL_SHOP);
        assertThat(skipped.exit()).isZero();
        assertThat(skipped.err()).contains("left out: ").contains(":5: the price");
        assertThat(skipped.out()).contains("240.00 EUR");
    }

    private static JsonNode json(Ran ran) throws IOException {
        assertThat(ran.err()).isEmpty();
        return new ObjectMapper()
                .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .setNodeFactory(JsonNodeFactory.withExactBigDecimals(true))
                .readTree(ran.out());
    }
}
