package hingewise.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hingewise.casefile.CaseFile;
import hingewise.costing.PriceBook;
import hingewise.costing.Shops;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Reliability;
import hingewise.rulebook.RuleBook;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SensitivityTest {
    private static final long SEED = 7;

    private final RuleBook rules;

    SensitivityTest(@TempDir Path folder) throws IOException {
        rules = Small.book().readIn(folder);
    }

    private Sensitivity study(RuleBook book, double deviation, int draws, int threads) throws InterruptedException {
        Map<String, CaseFile> cases = book.cases().stream()
                .collect(Collectors.toMap(c -> c.id(), c -> CaseFiles.of(c), (a, b) -> a, LinkedHashMap::new));
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        try {
            return new SensitivityStudy(book, new PriceBook(List.of()), Shops.plain(), cases, draws, SEED)
                    .under(deviation, workers, () -> {});
        } finally {
            workers.shutdownNow();
        }
    }

    @Test
    void everyJudgedNumberIsMovedOnceAndNothingElse() {
        // By hand: 3 base rates, 1 history's rate, 1 raise, 6 signs, 7 leaks, 1 cure, 4 kinds of evidence twice.
        assertThat(Numbers.names(rules))
                .hasSize(27)
                .contains(
                        "base rate of panel-fractured",
                        "rate of opened-before",
                        "cover-cable-loose raised by opened-before",
                        "opened-before shows back-loose",
                        "leak of crease-blobs",
                        "reseat-cover-cable cures cover-cable-loose",
                        "reliability of claim, no");
        assertThat(Numbers.moved(rules, (name, value) -> value)).isEqualTo(rules);
    }

    @Test
    void theOddsAreMovedByTenfolds() {
        assertThat(Noise.moved(.5, 1)).isCloseTo(10.0 / 11, within(1e-15));
        assertThat(Noise.moved(.2, -1)).isCloseTo(.025 / 1.025, within(1e-15));
        assertThat(Noise.moved(.3, 0)).isCloseTo(.3, within(1e-15));
    }

    @Test
    void numbersStayWhereTheyMayLie() {
        RuleBook high = Numbers.moved(rules, (name, value) -> 1);
        assertThat(high.causes().get("panel-fractured").baseRate().common()).isEqualTo(.5);
        assertThat(high.causes().get("panel-fractured").signs().get(0).strength())
                .isEqualTo(.999);
        RuleBook low = Numbers.moved(rules, (name, value) -> 0);
        assertThat(low.observations().get("crease-blobs").leak()).isEqualTo(1e-5);
        assertThat(low.reliability().get(EvidenceKind.LOOK)).isEqualTo(new Reliability(.999, .001));
    }

    @Test
    void aReliabilityTakenFromTheBookMovesWithIt() {
        RuleBook moved = Noise.drawn(Numbers.names(rules), new Random(SEED)).on(rules, .5);
        assertThat(moved.observations().get("back-loose").reliability()).isEqualTo(moved.reliability());
        assertThat(moved.reliability()).isNotEqualTo(rules.reliability());
    }

    @Test
    void withHardlyAnyNoiseEveryAnswerStays() throws InterruptedException {
        Sensitivity result = study(rules, 1e-9, 5, 1);
        assertThat(result.vignetteDraws()).isEqualTo(5);
        assertThat(List.of(result.sameFirst(), result.sameThree(), result.sameTry(), result.sameOrder()))
                .containsOnly(1.0);
    }

    @Test
    void theSameSeedGivesTheSameFiguresHoweverManyWork() throws InterruptedException {
        assertThat(study(rules, .5, 12, 2)).isEqualTo(study(rules, .5, 12, 1));
    }

    @Test
    void aCaseOnTheEdgeIsFragileAndAPlainOneIsNot(@TempDir Path folder) throws IOException, InterruptedException {
        // A loose back alone is as likely gas as earlier work; blobs leave no doubt.
        RuleBook two = Small.book()
                .adding(
                        "cases",
                        "  loose:\n    title: Loose\n    family: clamshell\n    seen: [back-loose=yes, crease-blobs=no]\n"
                                + "    expect: {among: [panel-fractured]}\n    because: Invented.\n    source: invented\n")
                .readIn(folder);
        Sensitivity result = study(two, .5, 30, 2);
        assertThat(result.cases()).extracting(Sensitivity.Firmness::name).containsExactly("loose", "blobs");
        assertThat(result.cases().get(0).sameFirst()).isLessThan(.9);
        assertThat(result.cases().get(1).sameFirst()).isEqualTo(1);
    }

    @Test
    void theNumbersACaseRestsOnMatterMost() throws InterruptedException {
        // The odds of the fracture given blobs: base rate, strength, leak, reliability of a look. Nothing else bears.
        Sensitivity result = study(rules, .3, 200, 2);
        assertThat(result.influences().subList(0, 2))
                .extracting(Sensitivity.Influence::number)
                .allMatch(
                        n -> List.of("base rate of panel-fractured", "reliability of look, no", "leak of crease-blobs")
                                .contains(n));
        assertThat(result.influences()).allMatch(i -> i.share() <= 1);
    }

    @Test
    void correlationIsSquaredAndCleanedOfChance() {
        double[] x = Correlation.standardized(new double[] {1, 2, 3, 4});
        double[] y = Correlation.standardized(new double[] {2, 4, 6, 8});
        double[] z = Correlation.standardized(new double[] {5, 5, 5, 5});
        assertThat(Correlation.squared(x, y)).isCloseTo(1 - 1.0 / 3, within(1e-12));
        assertThat(Correlation.squared(x, z)).isZero();
    }

    @Test
    void progressIsToldAfterEachCopy() throws InterruptedException {
        List<Integer> told = new ArrayList<>();
        ExecutorService workers = Executors.newFixedThreadPool(2);
        try {
            new SensitivityStudy(rules, new PriceBook(List.of()), Shops.plain(), Map.of(), 4, SEED)
                    .under(.3, workers, () -> told.add(told.size()));
        } finally {
            workers.shutdownNow();
        }
        assertThat(told).containsExactly(0, 1, 2, 3);
    }

    @Test
    void anInterruptedStudyStops() {
        ExecutorService workers = Executors.newFixedThreadPool(1);
        SensitivityStudy study =
                new SensitivityStudy(rules, new PriceBook(List.of()), Shops.plain(), Map.of(), 4, SEED);
        Thread.currentThread().interrupt();
        try {
            assertThatThrownBy(() -> study.under(.3, workers, () -> {})).isInstanceOf(InterruptedException.class);
        } finally {
            Thread.interrupted();
            workers.shutdownNow();
        }
    }
}
