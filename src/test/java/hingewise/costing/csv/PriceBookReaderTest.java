package hingewise.costing.csv;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.costing.Offer;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PriceBookReaderTest {
    private static final String HEADER = "part,supplier,price,currency,grade,days,bad-on-arrival\n";
    private static final String GOOD = "back,Invented Parts,12.50,EUR,pulled,3,0.15\n";
    private static final LocalDate TODAY = LocalDate.parse("2026-03-02");
    private static final Vocabulary KNOWN =
            new Vocabulary(Set.of("back", "coil"), new LinkedHashSet<>(List.of("service", "aftermarket", "pulled")));

    @TempDir
    Path folder;

    @Test
    void aRowBecomesAnOffer() throws IOException {
        assertThat(read(HEADER + GOOD).priceBook().orElseThrow().offers())
                .containsExactly(new Offer("back", "Invented Parts", Money.parse("EUR 12.50"), "pulled", 3, .15));
    }

    @Test
    void columnsMayStandInAnyOrderAndAnyUsualLineEndIsTaken() throws IOException {
        String turned = "\uFEFFsupplier,part,days,grade,currency,bad-on-arrival,price\r\n"
                + "\"Invented, \"\"the\"\" Parts\", back ,3,pulled,EUR,.15,12.5\r\n\r\n";
        assertThat(read(turned).priceBook().orElseThrow().offers())
                .containsExactly(
                        new Offer("back", "Invented, \"the\" Parts", Money.parse("EUR 12.50"), "pulled", 3, .15));
    }

    /** Minor units: ISO 4217. */
    @ParameterizedTest
    @CsvSource({"EUR,12.50,12.505,2", "USD,1.05,1.050,2", "JPY,1250,1250.5,0", "ISK,900,900.5,0", "KWD,3.125,3.1255,3"})
    void aPriceHasTheDecimalsOfItsCurrency(String currency, String good, String tooFine, int decimals)
            throws IOException {
        assertThat(read(HEADER + "back,S," + good + "," + currency + ",pulled,3,0\n")
                        .priceBook()
                        .orElseThrow()
                        .offers())
                .extracting(Offer::price)
                .containsExactly(Money.parse(currency + " " + good));
        assertThat(read(HEADER + "back,S," + tooFine + "," + currency + ",pulled,3,0\n")
                        .problems())
                .singleElement()
                .asString()
                .endsWith("decimals, but " + currency + " has " + decimals + " (ISO 4217); round it");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            back,I      | bakc,I      | no part is called "bakc". Did you mean "back"?
            Invented Parts | ~~       | the supplier is blank; fill it in
            Invented Parts | Inv\u001b[2J | the supplier "Inv\uFFFD[2J" holds a line break or a character that cannot be seen
            Invented Parts | "Inv     | a quote was probably never closed, close it
            12.50       | "12,50"     | the price "12,50" has a comma; write a point, as in 12.50
            12.50       | 12,50       | this row has 8 cells, not 7; write a price with a point
            12.50       | -12.50      | the price "-12.50" is negative; write what is paid, 0 or more
            12.50       | 12.50 EUR   | the price "12.50 EUR" is not an amount
            12.50       | 1e3         | the price "1e3" is not an amount
            12.50       | 1234567890  | the price "1234567890" is not an amount below a thousand million
            12.50       | ~~          | the price "" is not an amount
            EUR         | eur         | the currency "eur" is not one of ISO 4217; write three capitals, as in EUR
            EUR         | XXX         | the currency "XXX" is not one of ISO 4217
            pulled      | puled       | no grade is called "puled". Did you mean "pulled"?
            pulled      | mint        | no grade is called "mint". Known are: service, aftermarket, pulled.
            ,3,         | ,soon,      | the days "soon" are not a whole number from 0 to 365; correct them
            ,3,         | ,-1,        | the days "-1" are not
            ,3,         | ,366,       | the days "366" are not
            0.15        | 1           | the chance of arriving bad "1" is not a number from 0 to .999
            0.15        | 0.9991      | the chance of arriving bad "0.9991" is not
            0.15        | 15 %        | the chance of arriving bad "15 %" is not a number from 0 to .999; write 5 % as 0.05
            ,0.15       | ~~          | this row has 6 cells, not 7; fill in what is missing
            """)
    void everyMistakeIsSaidWithItsLineAndItsRemedy(String good, String bad, String says) throws IOException {
        Reading reading = read(HEADER + "coil,Invented Parts,1,EUR,service,1,0\n" + GOOD.replace(good, bad));
        assertThat(reading.priceBook()).isEmpty();
        assertThat(reading.problems())
                .singleElement()
                .asString()
                .startsWith(folder.resolve("prices.csv") + ":3: ")
                .contains(says);
    }

    @Test
    void anOfferMayHoldForSomePhonesAndQuantitiesAndForAWhile() throws IOException {
        String header = HEADER.strip() + ",from-quantity,available,variant,colour,valid-until\n";
        String row = GOOD.strip();
        assertThat(read(header + row + ",3,5,512,sand,2026-03-02\n" + row + ",,,,,\n")
                        .priceBook()
                        .orElseThrow()
                        .offers())
                .extracting(Offer::limits)
                .containsExactly(
                        new Offer.Limits(3, OptionalInt.of(5), "512", "sand"),
                        new Offer.Limits(1, OptionalInt.empty(), "", ""));
        assertThat(read(header + row + ",0,x,512,sand,2026-03-01\n" + row + ",1,1,,,March\n")
                        .problems())
                .extracting(p -> p.substring(p.indexOf(".csv:") + 5))
                .containsExactly(
                        "2: \"from-quantity\" is \"0\", not a whole number from 1 to 999; correct it, or leave it blank",
                        "2: \"available\" is \"x\", not a whole number from 0 to 999; correct it, or leave it blank",
                        "2: this offer ended on 2026-03-01, and today is 2026-03-02; ask again, or remove the row",
                        "3: the date \"March\" is not one; write it as in 2026-03-02");
    }

    @Test
    void theRestOfABadSheetIsThereForWhoAsksForIt() throws IOException {
        Reading reading = read(HEADER + "bakc,,x,EUR,new,1.5,2\n" + GOOD);
        assertThat(reading.priceBook()).isEmpty();
        assertThat(reading.rest().orElseThrow().offers()).hasSize(1);
        assertThat(read(HEADER.replace("price", "prize") + GOOD).rest()).isEmpty();
        assertThat(read(HEADER + GOOD + "coil,\"Inv,1,EUR,pulled,3,0\n").rest()).isEmpty();
    }

    @Test
    void allMistakesAreSaidAtOnceInTheOrderOfTheFile() throws IOException {
        Reading reading = read(HEADER + "bakc,,x,EU,new,1.5,2\n" + GOOD + GOOD);
        assertThat(reading.problems()).hasSize(8);
        assertThat(reading.problems().get(7))
                .endsWith(
                        ":4: line 3 has the same part, supplier and grade already (and the same limits, if any); keep the"
                                + " one that is right");
    }

    @Test
    void wrongColumnsAreNamed() throws IOException {
        assertThat(read("part,suplier,price,currency,grade,days\n" + GOOD).problems())
                .extracting(problem -> problem.substring(problem.indexOf(":1:") + 4))
                .containsExactly(
                        "no column is called \"suplier\". Did you mean \"supplier\"?",
                        "the column \"supplier\" is missing; add it",
                        "the column \"bad-on-arrival\" is missing; add it");
        assertThat(read("part,part\n" + GOOD).problems())
                .singleElement()
                .asString()
                .endsWith("the column \"part\" stands here twice; remove one");
        assertThat(read(HEADER.replace(',', ';') + GOOD.replace(',', ';')).problems())
                .singleElement()
                .asString()
                .endsWith(":1: the columns are divided by semicolons or tabs; divide them by commas");
    }

    @Test
    void anEmptyBookIsNotTakenForABook() throws IOException {
        assertThat(read("").problems()).singleElement().asString().contains("is empty; begin with the row part,");
        assertThat(read(HEADER).problems()).singleElement().asString().contains("offers nothing");
    }

    @Test
    void bytesThatAreNotUtf8AreRefused() throws IOException {
        Path file = folder.resolve("prices.csv");
        Files.write(file, (HEADER + GOOD.replace("Inv", "Inv\u00e9")).getBytes(StandardCharsets.ISO_8859_1));
        assertThat(PriceBookReader.read(file, KNOWN, TODAY).problems())
                .containsExactly(file + ":2: a byte here is not UTF-8; save the file as UTF-8");
    }

    @Test
    void aMissingFileAndAFolderAreNamed() {
        Path none = folder.resolve("none.csv");
        assertThat(PriceBookReader.read(none, KNOWN, TODAY).problems())
                .containsExactly(none + ": there is no such file; check its name and folder");
        assertThat(PriceBookReader.read(folder, KNOWN, TODAY).problems())
                .containsExactly(folder + ": is a folder; name a price book in it");
    }

    @Test
    void aHundredThousandRowsAreReadAndAnEnormousFileIsNot() throws IOException {
        StringBuilder many = new StringBuilder(HEADER);
        for (int i = 0; i < 100_000; i++) {
            many.append("back,Invented ").append(i).append(",12.50,EUR,pulled,3,0.15\n");
        }
        assertThat(read(many.toString()).priceBook().orElseThrow().offers()).hasSize(100_000);
        assertThat(read(many.toString().replace("back", "bag")).problems())
                .hasSize(201)
                .last()
                .asString()
                .endsWith(": and 99800 more; mend these first");

        Path file = folder.resolve("huge.csv");
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(1L << 30);
        }
        assertThat(PriceBookReader.read(file, KNOWN, TODAY).problems())
                .containsExactly(file + ": is larger than 16 MiB; keep only the parts you buy");
    }

    @Test
    void aDamagedBookIsReadOrRefusedButNeverCrashes() throws IOException {
        byte[] good = (HEADER + GOOD + GOOD.replace("back", "\"coil\"")).getBytes(StandardCharsets.UTF_8);
        for (long seed = 1; seed <= 2000; seed++) {
            Random random = new Random(seed);
            byte[] damaged = good.clone();
            for (int i = random.nextInt(1, 5); i > 0; i--) {
                damaged[random.nextInt(damaged.length)] =
                        (byte) (random.nextBoolean() ? ",\"\n\r\\;. -0".charAt(random.nextInt(10)) : random.nextInt());
            }
            Reading reading = PriceBookReader.read(Files.write(folder.resolve("prices.csv"), damaged), KNOWN, TODAY);
            assertThat(reading.priceBook().isPresent())
                    .as("seed %d: %s", seed, reading.problems())
                    .isEqualTo(reading.problems().isEmpty());
        }
    }

    private Reading read(String content) throws IOException {
        return PriceBookReader.read(Files.writeString(folder.resolve("prices.csv"), content), KNOWN, TODAY);
    }
}
