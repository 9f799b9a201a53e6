package hingewise.intake.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hingewise.intake.csv.SheetException;
import hingewise.intake.csv.Survey;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SifterTest {
    private static final BooleanSupplier ON = () -> false;
    private static final Comparator<RankedRow> BEST_FIRST = Comparator.comparing(RankedRow::corrected)
            .thenComparing(r -> r.row().appraisal().profit())
            .reversed()
            .thenComparing(r -> r.row().line());

    @TempDir
    private Path folder;

    private final List<String> skipped = new ArrayList<>();
    private final List<Long> bytesDone = new ArrayList<>();
    private final Watcher watcher = new Watcher() {
        @Override
        public void begins(Survey survey, Columns columns, long before) {
            bytesDone.clear();
        }

        @Override
        public void skipped(long line, String problem) {
            skipped.add(line + ": " + problem);
        }

        @Override
        public void progress(long bytes, long rows) {
            bytesDone.add(bytes);
        }

        @Override
        public void ranks(Tally tally) {}
    };

    private Path sheet(String... rows) throws IOException {
        return Files.write(
                folder.resolve("sheet.csv"),
                Stream.concat(Stream.of("id,text,price,shipping,family"), Stream.of(rows))
                        .toList());
    }

    private Path work() {
        return folder.resolve("work");
    }

    private Sifter.Order order(Path sheet, boolean resume, OptionalInt top, int workers) {
        return new Sifter.Order(sheet, work(), "settings", resume, top, Set.of("rank"), workers);
    }

    private static Sifter sifter(Ranking.Limits limits, Appraiser appraiser) {
        return new Sifter(FakeShop.FAMILIES, FakeShop.SHOP, () -> FakeShop::read, appraiser, limits);
    }

    private record Sifted(List<RankedRow> rows, Tally tally) {
        List<String> ids() {
            return rows.stream().map(r -> r.row().cells().get(0)).toList();
        }
    }

    private Sifted sift(Sifter sifter, Sifter.Order order, BooleanSupplier stop) throws IOException {
        List<RankedRow> rows = new ArrayList<>();
        Tally tally = sifter.sift(
                order,
                watcher,
                (columns, t) -> (rank, row) -> {
                    assertThat(rank).isEqualTo(rows.size() + 1);
                    rows.add(row);
                },
                stop);
        return new Sifted(rows, tally);
    }

    private Sifted sift(Path sheet) throws IOException {
        return sift(sifter(Ranking.Limits.USUAL, FakeShop::think), order(sheet, false, OptionalInt.empty(), 2), ON);
    }

    private Path invented(int rows, long seed) throws IOException {
        Random random = new Random(seed);
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            StringBuilder text = new StringBuilder("phone");
            for (int c = random.nextInt(5); c > 0; c--) {
                text.append(" bad").append(random.nextInt(6));
            }
            lines.add(i + "," + text + "," + random.nextInt(80) + ",5,clamshell");
        }
        return sheet(lines.toArray(String[]::new));
    }

    @Test
    void theBestListingComesFirst() throws IOException {
        Sifted sifted = sift(sheet("a,fine,60,5,clamshell", "b,bad1,10,5,clamshell", "c,bad1 bad2,95,5,clamshell"));
        assertThat(sifted.ids()).containsExactly("b", "a", "c");
        assertThat(sifted.rows())
                .extracting(RankedRow::verdict)
                .containsExactly(Verdict.BUY, Verdict.BUY, Verdict.OFFER_LESS);
        assertThat(work()).doesNotExist();
    }

    @Test
    void whatTheCorrectionTakesOffTheProfitComesOffTheCeilingToo() throws IOException {
        Sifted sifted = sift(sheet(
                "a,fine,5,5,clamshell", "b,fine,50,5,clamshell", "c,fine,60,5,clamshell", "d,fine,70,5,clamshell"));
        RankedRow best = sifted.rows().get(0);
        assertThat(best.corrected()).isLessThan(best.row().appraisal().profit());
        assertThat(best.row().appraisal().profit().minus(best.corrected()))
                .isEqualTo(best.row().appraisal().ceiling().minus(best.ceiling()));
        RankedRow worst = sifted.rows().get(3);
        assertThat(worst.corrected()).isGreaterThan(worst.row().appraisal().profit());
        assertThat(worst.ceiling()).isEqualTo(worst.row().appraisal().ceiling());
    }

    @Test
    void aBadRowIsToldWithItsLineAndTheOthersAreRanked() throws IOException {
        Sifted sifted = sift(sheet(
                "a,fine,sixty,5,clamshell",
                "b,\"two\nlines\",60,5,clamshell",
                "",
                "c,fine,60,5,tablet",
                "d,fine,60,5",
                ",fine,1.234,,clamshell",
                "e,\"open,60,5,clamshell",
                "f,fine,60,5,clamshell",
                ",,,,"));
        assertThat(sifted.ids()).containsExactlyInAnyOrder("b", "f");
        assertThat(skipped).hasSize(5);
        assertThat(skipped.get(0)).startsWith("2: the price \"sixty\" is not an amount");
        assertThat(skipped.get(1)).startsWith("6: no family is called \"tablet\"");
        assertThat(skipped.get(2)).startsWith("7: this row has 4 cells, not 5");
        assertThat(skipped.get(3))
                .startsWith("8: the id is blank")
                .contains("the price \"1.234\" has 3 decimals")
                .contains("the shipping is blank");
        assertThat(skipped.get(4)).startsWith("9: a quote is opened and never closed");
        assertThat(sifted.tally().skipped()).isEqualTo(5);
    }

    @Test
    void sortingOnDiskGivesTheOrderThatSortingInMemoryDoes() throws IOException {
        Path sheet = invented(500, 3);
        List<RankedRow> memory = sift(sheet).rows();
        for (int merged : new int[] {2, 3, 40}) {
            Sifter small = sifter(new Ranking.Limits(20_000, merged), FakeShop::think);
            assertThat(sift(small, order(sheet, false, OptionalInt.empty(), 1), ON)
                            .rows())
                    .as("%d merged at once", merged)
                    .isEqualTo(memory);
        }
        assertThat(memory).isSortedAccordingTo(BEST_FIRST).hasSize(500);
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(sheet);
        }
    }

    @Test
    void theBestFewAreTheFirstOfAll() throws IOException {
        Path sheet = invented(300, 4);
        List<RankedRow> all = sift(sheet).rows();
        Sifted top = sift(sifter(Ranking.Limits.USUAL, FakeShop::think), order(sheet, false, OptionalInt.of(7), 2), ON);
        assertThat(top.rows()).isEqualTo(all.subList(0, 7));
        assertThat(top.tally().appraised()).isEqualTo(300);
    }

    @Test
    void equalClaimsAreThoughtAboutOnce() throws IOException {
        AtomicInteger asked = new AtomicInteger();
        Sifter counting = sifter(Ranking.Limits.USUAL, claims -> {
            asked.incrementAndGet();
            return FakeShop.think(claims);
        });
        Path sheet = sheet(
                "a,bad1 bad2,60,5,clamshell",
                "b,bad2 then bad1,10,0,clamshell",
                "c,bad1,60,5,clamshell",
                "d,bad2 and bad1,7,7,clamshell");
        Sifted sifted = sift(counting, order(sheet, false, OptionalInt.empty(), 2), ON);
        assertThat(asked).hasValue(2);
        assertThat(sifted.tally().thought()).isEqualTo(2);
    }

    @Test
    void whatOneCannotThinkAboutIsSkipped() throws IOException {
        Sifter baffled = sifter(Ranking.Limits.USUAL, claims -> {
            if (!claims.claims().isEmpty()) {
                throw new UnappraisableException("too much is claimed");
            }
            return FakeShop.think(claims);
        });
        Path sheet = sheet("a,bad1,60,5,clamshell", "b,fine,60,5,clamshell", "c,bad1,60,5,clamshell");
        assertThat(sift(baffled, order(sheet, false, OptionalInt.empty(), 2), ON)
                        .ids())
                .containsExactly("b");
        assertThat(skipped).containsExactly("2: too much is claimed", "4: too much is claimed");
    }

    @Test
    void aRunThatWasStoppedGoesOnToTheSameResult() throws IOException {
        Path sheet = invented(400, 5);
        Files.writeString(sheet, "bad,row\n", StandardOpenOption.APPEND);
        Sifted whole = sift(sheet);
        for (int stopAfter : new int[] {1, 60, 399}) {
            skipped.clear();
            AtomicInteger asked = new AtomicInteger();
            Sifter sifter = sifter(Ranking.Limits.USUAL, FakeShop::think);
            assertThatThrownBy(() -> sift(
                            sifter,
                            order(sheet, false, OptionalInt.empty(), 2),
                            () -> asked.incrementAndGet() > stopAfter))
                    .isInstanceOf(StoppedException.class);
            assertThat(work()).exists();
            assertThatThrownBy(() -> sift(sifter, order(sheet, false, OptionalInt.empty(), 2), ON))
                    .isInstanceOf(SheetException.class)
                    .hasMessageContaining("--resume");
            Sifted rest = sift(sifter, order(sheet, true, OptionalInt.empty(), 2), ON);
            assertThat(rest.rows()).as("stopped after %d", stopAfter).isEqualTo(whole.rows());
            assertThat(rest.tally().appraised()).isEqualTo(400);
            assertThat(rest.tally().skipped()).isEqualTo(1);
            assertThat(skipped).hasSize(1);
        }
    }

    @Test
    void workThatWasCutOffIsDoneAgainFromItsLastWholeRow() throws IOException {
        Path sheet = invented(200, 6);
        Sifted whole = sift(sheet);
        AtomicInteger asked = new AtomicInteger();
        Sifter sifter = sifter(Ranking.Limits.USUAL, FakeShop::think);
        assertThatThrownBy(() ->
                        sift(sifter, order(sheet, false, OptionalInt.empty(), 1), () -> asked.incrementAndGet() > 150))
                .isInstanceOf(StoppedException.class);
        byte[] kept = Files.readAllBytes(work());
        for (int cut : new int[] {1, 9, 100, 1_000}) {
            byte[] torn = java.util.Arrays.copyOf(kept, kept.length - cut);
            Files.write(work(), torn);
            assertThat(sift(sifter, order(sheet, true, OptionalInt.empty(), 1), ON)
                            .rows())
                    .as("%d bytes cut off", cut)
                    .isEqualTo(whole.rows());
        }
        kept[kept.length - 20] ^= 1;
        Files.write(work(), kept);
        assertThat(sift(sifter, order(sheet, true, OptionalInt.empty(), 1), ON).rows())
                .as("a bit turned over")
                .isEqualTo(whole.rows());
    }

    @Test
    void workOfAnotherSheetIsNotTakenFurther() throws IOException {
        Path sheet = invented(100, 8);
        AtomicInteger asked = new AtomicInteger();
        Sifter sifter = sifter(Ranking.Limits.USUAL, FakeShop::think);
        Sifter.Order again = order(sheet, true, OptionalInt.empty(), 1);
        assertThatThrownBy(() -> sift(sifter, again, ON)).hasMessageContaining("leave out --resume");
        assertThatThrownBy(() ->
                        sift(sifter, order(sheet, false, OptionalInt.empty(), 1), () -> asked.incrementAndGet() > 20))
                .isInstanceOf(StoppedException.class);
        Sifter.Order otherRules = new Sifter.Order(sheet, work(), "other", true, OptionalInt.empty(), Set.of(), 1);
        assertThatThrownBy(() -> sift(sifter, otherRules, ON)).hasMessageContaining("another rule book");
        Files.writeString(sheet, "x,fine,1,1,clamshell\n", StandardOpenOption.APPEND);
        assertThatThrownBy(() -> sift(sifter, again, ON)).hasMessageContaining("another sheet");
        Files.write(work(), "something else".getBytes(StandardCharsets.UTF_8));
        assertThatThrownBy(() -> sift(sifter, again, ON)).hasMessageContaining("not the work of an earlier run");
    }

    @Test
    void theSheetIsUsedUpStepByStep() throws IOException {
        Path sheet = invented(200, 9);
        sift(sheet);
        assertThat(bytesDone)
                .isSorted()
                .doesNotHaveDuplicates()
                .hasSizeGreaterThan(4)
                .endsWith(Files.size(sheet));
    }
}
