package hingewise.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Opened;
import hingewise.casefile.Report;
import hingewise.casefile.store.CaseFileStore;
import hingewise.costing.csv.PriceBookReader;
import hingewise.costing.yaml.ShopReader;
import hingewise.planning.Plan;
import hingewise.planning.Sheet;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Tool;
import hingewise.rulebook.yaml.RuleBookReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The sheets of the cases that come with the program. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BenchSheetTest {
    private final Assessor assessor = assessor();
    private List<BenchSheet> sheets = List.of();

    private static Assessor assessor() {
        RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
        return new Assessor(
                rules,
                PriceBookReader.readShipped(rules).priceBook().orElseThrow(),
                ShopReader.readShipped(rules).shop().orElseThrow());
    }

    @BeforeAll
    void everyCaseHasASheet() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-cases"))) {
            sheets = files.filter(f -> f.toString().endsWith(".json"))
                    .sorted()
                    .map(f -> assessor.sheet(assessor.assess(CaseFileStore.read(f))))
                    .toList();
        }
        assertThat(sheets).hasSizeGreaterThanOrEqualTo(9);
        assertThat(sheets).filteredOn(s -> s.sheet().isEmpty()).hasSize(1);
    }

    private static String title(BenchSheet bench) {
        return bench.assessment().file().title();
    }

    private Stream<BenchSheet> drawn() {
        return sheets.stream().filter(s -> s.sheet().isPresent());
    }

    @Test
    void aSheetBeginsWithWhatIsToBeTriedFirst() {
        drawn().forEach(bench -> {
            Sheet sheet = bench.sheet().orElseThrow();
            assertThat(sheet.stations().isEmpty())
                    .as(title(bench))
                    .isEqualTo(!bench.assessment().plan().goesOn());
            sheet.stations().stream()
                    .findFirst()
                    .ifPresent(s -> assertThat(s.confirmation())
                            .as(title(bench))
                            .isEqualTo(bench.assessment().tryFirst().get(0).confirmation()));
        });
    }

    /** The case of a dark phone with a look at its backs, and the same without. */
    private static CaseFile told(boolean flat) throws IOException {
        CaseFile file = CaseFileStore.read(Path.of("demo-cases/clamshell-buzzes-no-image.json"));
        return new CaseFile(
                file.title(),
                true,
                file.phone(),
                file.entries().stream()
                        .filter(e ->
                                flat || !(e instanceof Report r && r.about().equals("back-bulges")))
                        .toList());
    }

    @Test
    void nobodyOpensAPhoneBeforeItIsKnownThatNoBackBulges() throws IOException {
        Sheet known = assessor.sheet(assessor.assess(told(true))).sheet().orElseThrow();
        assertThat(known.stations().get(0).opens()).isNotEmpty();
        BenchSheet bench = assessor.sheet(assessor.assess(told(false)));
        Sheet sheet = bench.sheet().orElseThrow();
        Sheet.Station look = sheet.stations().get(0);
        assertThat(look.confirmation().settles()).contains("back-bulges");
        assertThat(look.opens()).isEmpty();
        assertThat(look.branches()).hasSize(2);
        assertThat(look.branches().get(0).way()).isEqualTo(new Sheet.Way.Go(2));
        assertThat(look.branches().get(0).reports().get(0)).containsEntry("back-bulges", false);
        assertThat(look.branches().get(1).way()).isInstanceOf(Sheet.Way.AskAgain.class);
        assertThat(look.branches().get(1).stopsWork(List.of(), assessor.rules()::stops))
                .isTrue();
        // Behind the look it is the sheet of the phone whose backs lie flat.
        assertThat(sheet.stations().stream().skip(1).map(Sheet.Station::confirmation))
                .startsWith(known.stations().get(0).confirmation());
        assertThat(sheet.stations()).filteredOn(s -> !s.opens().isEmpty()).isNotEmpty();
        assertThat(sheet.stations())
                .allMatch(s ->
                        s.first().stream().noneMatch(n -> n.observation().id().equals("back-bulges")));
        double led = look.branches().stream().mapToDouble(Sheet.Branch::chance).sum();
        assertThat(led).isCloseTo(1, within(1e-9));
        assertThat(sheet.stations().get(1).chance())
                .isCloseTo(look.branches().get(0).chance(), within(1e-9));
        assertThat(sheet.minutes())
                .isCloseTo(look.minutes() + look.branches().get(0).chance() * known.minutes(), within(2.0));
    }

    @Test
    void theListSaysThatABulgingBackMustBeRuledOutFirst() throws IOException {
        assertThat(assessor.assess(told(false)).tryFirst())
                .filteredOn(s -> !s.opens().isEmpty())
                .isNotEmpty()
                .allMatch(s -> s.askFirst().contains("back-bulges"));
    }

    @Test
    void branchesAddUpToTheirStationAndEveryWayLeadsSomewhere() {
        drawn().forEach(bench -> {
            Sheet sheet = bench.sheet().orElseThrow();
            Map<Integer, Double> led = sheet.stations().stream()
                    .flatMap(s -> s.branches().stream())
                    .filter(b -> b.way() instanceof Sheet.Way.Go)
                    .collect(Collectors.groupingBy(
                            b -> ((Sheet.Way.Go) b.way()).station(), Collectors.summingDouble(Sheet.Branch::chance)));
            for (Sheet.Station station : sheet.stations()) {
                double reached = station.number() == 1 ? 1 : led.getOrDefault(station.number(), 0.0);
                String where = title(bench) + ", station " + station.number();
                assertThat(station.chance()).as(where).isCloseTo(reached, within(1e-9));
                assertThat(station.branches().stream()
                                .mapToDouble(Sheet.Branch::chance)
                                .sum())
                        .as(where)
                        .isCloseTo(station.chance(), within(1e-9));
                assertThat(station.chance()).as(where).isGreaterThanOrEqualTo(Sheet.LEAST_CHANCE);
            }
        });
    }

    /** What is too rare to be drawn is decided at once: there all that could still be saved may be lost. */
    @Test
    void aSheetIsExpectedToCostAboutWhatThePlanSays() {
        drawn().forEach(bench -> {
            Plan plan = bench.assessment().plan();
            double chance = .02 * plan.now().getAmount().doubleValue();
            double rare = bench.sheet().orElseThrow().stations().stream()
                    .flatMap(s -> s.branches().stream())
                    .filter(b -> b.way() instanceof Sheet.Way.AskAgain)
                    .mapToDouble(Sheet.Branch::chance)
                    .sum();
            assertThat(bench.sheet().orElseThrow().expected().getAmount().doubleValue())
                    .as(title(bench))
                    .isBetween(
                            plan.expected().getAmount().doubleValue() - chance,
                            plan.expected().getAmount().doubleValue()
                                    + chance
                                    + rare * plan.atMost().getAmount().doubleValue());
        });
    }

    @Test
    void theSameCaseGetsTheSameSheet() {
        List<BenchSheet> some =
                drawn().filter(b -> title(b).startsWith("Dark inside")).toList();
        assertThat(some).isNotEmpty();
        for (BenchSheet bench : some) {
            BenchSheet again = assessor.sheet(assessor.assess(bench.assessment().file()));
            assertThat(again.sheet()).as(title(bench)).isEqualTo(bench.sheet());
            assertThat(again.atStations()).as(title(bench)).isEqualTo(bench.atStations());
            assertThat(again.atEnds()).as(title(bench)).isEqualTo(bench.atEnds());
        }
    }

    @Test
    void everyCautionOfAStationStandsThereOrFurtherUp() {
        drawn().forEach(bench -> {
            Sheet sheet = bench.sheet().orElseThrow();
            for (int i = 0; i < sheet.stations().size(); i++) {
                int upTo = i;
                List<String> said = Stream.concat(
                                bench.assessment().cautions().stream()
                                        .filter(ShownCaution::brought)
                                        .map(c -> c.caution().id()),
                                bench.atStations().subList(0, upTo + 1).stream()
                                        .flatMap(c -> c.here().stream())
                                        .map(c -> c.caution().id()))
                        .toList();
                assertThat(said)
                        .as(title(bench))
                        .doesNotHaveDuplicates()
                        .containsAll(sheet.stations().get(i).confirmation().cautions());
            }
        });
    }

    @Test
    void whileWorkStopsThereIsNoSheetAndNothingButQuestions() {
        BenchSheet stopped =
                sheets.stream().filter(s -> s.sheet().isEmpty()).findFirst().orElseThrow();
        assertThat(stopped.assessment().stopped()).isTrue();
        assertThat(stopped.assessment().tryFirst())
                .allMatch(s -> s.confirmation().kind() == Confirmation.Kind.QUESTION);
    }

    @Test
    void everyToolOfAStationIsNamedOnce() {
        drawn().forEach(bench -> {
            List<String> named = bench.tools().stream().map(Tool::id).toList();
            List<String> taken = bench.sheet().orElseThrow().stations().stream()
                    .flatMap(s -> Stream.concat(
                            s.confirmation().tools().stream(),
                            s.opens().stream().flatMap(a -> a.tools().stream())))
                    .toList();
            assertThat(named).as(title(bench)).doesNotHaveDuplicates().containsAll(taken);
        });
        assertThat(drawn().flatMap(b -> b.tools().stream()).map(Tool::id)).contains("heating-plate", "plastic-lever");
    }

    @Test
    void whatIsOpenAlreadyTakesNoToolsToOpen() {
        BenchSheet closed = drawn().filter(b -> b.tools().stream().anyMatch(t -> t.id().equals("suction-lifter")))
                .findFirst()
                .orElseThrow();
        CaseFile file = closed.assessment().file();
        Instant now = file.entries().get(file.entries().size() - 1).at();
        CaseFile opened = file.with(new Opened(file.nextId(), now, "bench", "bare-frame", ""));
        CaseFile further = opened.with(new Opened(opened.nextId(), now, "bench", "cover-lifted", ""));
        assertThat(assessor.sheet(assessor.assess(further)).tools())
                .extracting(Tool::id)
                .doesNotContain("suction-lifter");
    }

    @Test
    void beforeThePhoneIsHereNoToolsAreNeeded() {
        CaseFile listed = sheets.stream()
                .map(b -> b.assessment().file())
                .map(f -> new CaseFile(
                        f.title(),
                        true,
                        f.phone(),
                        f.entries().stream()
                                .filter(e -> e instanceof Report r
                                        && (r.kind() == EvidenceKind.CLAIM || r.kind() == EvidenceKind.PHOTO))
                                .toList()))
                .findFirst()
                .orElseThrow();
        BenchSheet sheet = assessor.sheet(assessor.assess(listed));
        assertThat(sheet.assessment().plan().decision().ofOffer()).isTrue();
        assertThat(sheet.tools()).isEmpty();
    }
}
