package hingewise.casefile.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Phone;
import hingewise.casefile.Price;
import hingewise.casefile.Report;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Question;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CaseFileRoundTripTest {
    @TempDir
    Path folder;

    @Test
    void aCaseIsWrittenAsAPersonWouldWriteIt() throws IOException {
        Path file = folder.resolve("case.json");
        CaseFileStore.write(
                new CaseFile(
                        "Lot 7",
                        true,
                        new Phone("clamshell", "Invented One, blue"),
                        List.of(new Report(
                                "e1",
                                Instant.parse("2026-11-20T10:00:00Z"),
                                "seller",
                                EvidenceKind.CLAIM,
                                "dead-cover-screen",
                                Question.YES,
                                Optional.empty(),
                                "since \"the fall\""))),
                file);

        assertThat(Files.readString(file)).isEqualTo("""
                        {
                          "format" : "hingewise-case",
                          "version" : 1,
                          "title" : "Lot 7",
                          "invented" : true,
                          "phone" : {
                            "family" : "clamshell",
                            "label" : "Invented One, blue"
                          },
                          "entries" : [
                            {
                              "id" : "e1",
                              "at" : "2026-11-20T10:00:00Z",
                              "by" : "seller",
                              "kind" : "claim",
                              "about" : "dead-cover-screen",
                              "answer" : "yes",
                              "remark" : "since \\"the fall\\""
                            }
                          ]
                        }
                        """);
    }

    /** An older program reads a case without a price; one with a price it must not take for a whole case. */
    @Test
    void onlyACaseWithAPriceIsOfTheSecondVersion() throws IOException {
        Path file = folder.resolve("case.json");
        CaseFile before = new CaseFile("Lot 7", true, new Phone("clamshell", ""), List.of());
        CaseFileStore.write(before, file);
        assertThat(Files.readString(file)).contains("\"version\" : 1,");
        CaseFileStore.write(
                before.with(new Price(
                        "e1",
                        Instant.parse("2026-11-20T10:00:00Z"),
                        "seller",
                        Price.What.ASKED,
                        Price.amount("120.50", "EUR"),
                        "")),
                file);
        assertThat(Files.readString(file))
                .contains(
                        "\"version\" : 2,",
                        "\"kind\" : \"asked\"",
                        "\"amount\" : \"120.50\"",
                        "\"currency\" : \"EUR\"");
        assertThat(CaseFileStore.read(file).entries()).hasSize(1);
    }

    @Test
    void whatIsWrittenReadsBackEqual() {
        for (long seed = 1; seed <= 300; seed++) {
            Path file = folder.resolve("case.json");
            CaseFile written = new RandomCases(new Random(seed)).next();
            CaseFileStore.write(written, file);
            assertThat(CaseFileStore.read(file)).as("seed %d", seed).isEqualTo(written);
        }
    }

    @Test
    void writingTheSameCaseTwiceGivesTheSameBytes() {
        CaseFile some = new RandomCases(new Random(5)).next();
        assertThat(CaseFileStore.write(some, folder.resolve("a.json")).digest())
                .isEqualTo(CaseFileStore.write(some, folder.resolve("b.json")).digest());
    }

    @Test
    void aDamagedFileIsRefusedInWordsOrReadButNeverCrashes() throws IOException {
        for (long seed = 1; seed <= 1500; seed++) {
            Random random = new Random(seed);
            byte[] damaged = damage(CaseFormat.encode(new RandomCases(random).next()), random);
            Path file = Files.write(folder.resolve("case.json"), damaged);
            assertThatCode(() -> {
                        try {
                            CaseFile read = CaseFileStore.read(file);
                            assertThat(read).isEqualTo(CaseFormat.decode(new Source(file), CaseFormat.encode(read)));
                        } catch (CaseFileException e) {
                            assertThat(e).hasMessageStartingWith(file.toString());
                            assertThat(e.getMessage()).doesNotContainPattern("\\p{Cntrl}");
                        }
                    })
                    .as("seed %d", seed)
                    .doesNotThrowAnyException();
        }
    }

    private static byte[] damage(byte[] bytes, Random random) {
        byte[] damaged = bytes.clone();
        for (int i = random.nextInt(1, 4); i > 0; i--) {
            int at = random.nextInt(damaged.length);
            switch (random.nextInt(4)) {
                case 0 -> damaged[at] = (byte) random.nextInt();
                case 1 -> damaged[at] = (byte) "\"{}[],:0-\\ ".charAt(random.nextInt(11));
                case 2 -> damaged = Arrays.copyOf(damaged, Math.max(1, at));
                default -> {
                    int from = random.nextInt(damaged.length);
                    int length = Math.min(random.nextInt(40), damaged.length - Math.max(at, from));
                    System.arraycopy(damaged, from, damaged, at, length);
                }
            }
        }
        return damaged;
    }
}
