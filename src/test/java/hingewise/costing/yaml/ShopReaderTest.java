package hingewise.costing.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hingewise.casefile.Phone;
import hingewise.costing.MixedCurrencyException;
import hingewise.costing.Shop;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Rules;
import hingewise.rulebook.yaml.RuleBookReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShopReaderTest {
    private static final RuleBook RULES =
            RuleBookReader.readShipped().ruleBook().orElseThrow();
    private static final Path SHIPPED = Path.of("demo-cases", "shop.yaml");

    @TempDir
    Path folder;

    @Test
    void theInventedShopIsReadStrictlyWithoutAProblem() {
        ShopReading reading = ShopReader.read(SHIPPED, RULES);
        assertThat(reading.problems()).isEmpty();
        Shop shop = reading.shop().orElseThrow();
        assertThat(shop.labourPerHour()).isEqualTo(Money.parse("EUR 32.00"));
        assertThat(shop.refused()).containsEntry("inner-assembly", Set.of("aftermarket"));
        assertThat(shop.condition().leaving("sim-card")).isZero();
        assertThat(shop.condition().leaving("earpiece")).isEqualByComparingTo(".2");
        assertThat(ShopReader.readShipped(RULES)).isEqualTo(reading);
    }

    @Test
    void aPhonesLabelChoosesItsModel() {
        Shop shop = ShopReader.read(SHIPPED, RULES).shop().orElseThrow();
        assertThat(shop.model(new Phone("clamshell", "KESTREL leaf 2, sand")))
                .hasValueSatisfying(m -> assertThat(m.id()).isEqualTo("kestrel-leaf-2"));
        assertThat(shop.model(new Phone("clamshell", "")))
                .hasValueSatisfying(m -> assertThat(m.id()).isEqualTo("any-clamshell"));
        assertThat(shop.model(new Phone("scroll", ""))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            format: 1               | format: 2                 | :1: the format is "2", and this program reads only format 1.
            currency: EUR           | currency: EUX             | :6: "EUX" is not a currency. Write an ISO 4217 code such as EUR.
            currency: EUR           | currency: JPY             | :11: "bad-part" is 9.00, with more decimals than the currency has. Write a whole number.
            # rates: {USD: 0.92}    | rates: {UXD: 0.92}        | :7: "UXD" is not a currency.
            # rates: {USD: 0.92}    | rates: {USD: 0}           | :7: "USD" is 0, which is out of range. Write a number from .000001 to 1000000.
            labour-per-hour: 32.00  | labour-per-hour: 32,00    | :9: "labour-per-hour" is "32,00", which is not a number. Write a plain decimal
            labour-per-hour: 32.00  | labour-per-hour: -32.00   | :9: "labour-per-hour" is -32.00, which is out of range.
            labour-per-hour: 32.00  | labour: 32.00             | has no "labour-per-hour".
            price-of-failure: 90.00 | price-of-failure: 90.005  | :10: "price-of-failure" is 90.005, with more decimals than the currency has.
            loss-limit: .25         | loss-limit: 25            | "loss-limit" is 25, which is out of range.
            fee: .10                | fee: 10 %                 | "fee" is "10 %", which is not a number.
            fee: .10                | fea: .10                  | "fea" is not a key of "selling". Did you mean "fee"?
            corner-dents: .05       | corner-dent: .05          | "corner-dent" is not an observation. Did you mean "corner-dents"?
            battery-pair: {service: | batery-pair: {service:    | "batery-pair" is not a part. Did you mean "battery-pair"?
            battery-pair: {service: | battery-pair: {srvice:    | "srvice" is not a key of "battery-pair". Did you mean "service"?
            otherwise: .20          | hinges: .20               | "left" does not say what any other fault takes off.
            family: book            | family: bok               | "bok" is not a family. Did you mean "book"?
            inner-assembly: [aftermarket] | inner-assembly: aftermarket | "inner-assembly" is "aftermarket", where a list should be.
            inner-assembly: [aftermarket] | inner-assembly: [after] | "after" is not a grade of part.
            """)
    void everyMistakeIsSaidWithLineValueAndRemedy(String good, String bad, String says) throws IOException {
        ShopReading reading = read(Files.readString(SHIPPED).replace(good, bad));
        assertThat(reading.shop()).isEmpty();
        assertThat(reading.problems())
                .anySatisfy(p -> assertThat(p)
                        .startsWith(folder.resolve("shop.yaml") + ":")
                        .contains(says));
    }

    @Test
    void allMistakesAreSaidAtOnce() throws IOException {
        assertThat(read(Files.readString(SHIPPED)
                                .replace("labour-per-hour: 32.00", "labour-per-hour: much")
                                .replace("shipping-in: 6.50", "shipping-in: -1")
                                .replace("spread: .05", "spread: 5"))
                        .problems())
                .hasSize(3);
        assertThat(read("format: 1\n").problems())
                .hasSize(8)
                .allSatisfy(p -> assertThat(p).contains(":1: the shop has no "));
    }

    @Test
    void whatIsNoShopAtAllIsRefused() throws IOException {
        assertThat(read("").problems()).singleElement().asString().contains("the file holds nothing");
        assertThat(read("[1, 2]").problems()).singleElement().asString().contains("the file holds a list");
        assertThat(read("a: b: c").problems()).singleElement().asString().contains("not readable YAML");
        Path none = folder.resolve("none.yaml");
        assertThat(ShopReader.read(none, RULES).problems())
                .singleElement()
                .asString()
                .contains("is not a file");
    }

    @Test
    void anotherRuleBookTakesFromTheInventedShopWhatItKnows() {
        RuleBook other = new Rules().cause("a", .1).book();
        Shop shop = ShopReader.readShipped(other).shop().orElseThrow();
        assertThat(shop.models()).isEmpty();
        assertThat(shop.condition().left()).isEmpty();
        assertThat(shop.labourPerHour()).isEqualTo(Money.parse("EUR 32.00"));
    }

    @Test
    void anAmountIsChangedOnlyAtARateThatIsGiven() throws IOException {
        Shop none = ShopReader.read(SHIPPED, RULES).shop().orElseThrow();
        assertThatThrownBy(() -> none.in(Money.parse("USD 10.00")))
                .isInstanceOf(MixedCurrencyException.class)
                .hasMessageContaining("add to the shop file \"rates: {USD: …}\"");
        Shop rated = read(Files.readString(SHIPPED).replace("# rates: {USD: 0.92}", "rates: {USD: 0.925, JPY: 0.006}"))
                .shop()
                .orElseThrow();
        assertThat(rated.in(Money.parse("USD 10.00"))).isEqualTo(Money.parse("EUR 9.25"));
        // 0.925 and 0.935 lie half way between two cents: to the even one.
        assertThat(rated.in(Money.parse("USD 1.00"))).isEqualTo(Money.parse("EUR 0.92"));
        assertThat(rated.in(Money.parse("JPY 1000"))).isEqualTo(Money.parse("EUR 6.00"));
    }

    private ShopReading read(String text) throws IOException {
        Path file = folder.resolve("shop.yaml");
        Files.writeString(file, text);
        return ShopReader.read(file, RULES);
    }
}
