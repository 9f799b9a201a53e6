package hingewise.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Phone;
import hingewise.casefile.Report;
import hingewise.casefile.store.CaseFileStore;
import hingewise.oracle.WekaOracle;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is exported is solved again by Weka's junction tree (weka-stable 3.8.6), read by its own reader. */
class ExportNetworkTest {
    private static final String CASE = "src/test/resources/terminal/case.json";

    @TempDir
    Path folder = Path.of("");

    @Test
    void wekaFindsTheSameAnswersForTheDemoCase() throws IOException {
        agrees("demo case", "demo-cases/clamshell-buzzes-no-image.json");
    }

    @Test
    void wekaFindsTheSameAnswersForRandomEvidence() throws IOException {
        RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
        for (long seed = 0; seed < 4; seed++) {
            Path file = folder.resolve("case-" + seed + ".json");
            CaseFileStore.write(random(rules, new Random(seed)), file);
            agrees("seed " + seed, file.toString());
        }
    }

    private static CaseFile random(RuleBook rules, Random random) {
        String family = random.nextBoolean() ? "clamshell" : "book";
        List<Observation> shuffled = new ArrayList<>(rules.observationsOf(family));
        Collections.shuffle(shuffled, random);
        List<Entry> entries = new ArrayList<>();
        for (Observation o : shuffled.subList(0, random.nextInt(4, 12))) {
            EvidenceKind kind = EvidenceKind.values()[random.nextInt(4)];
            entries.add(new Report(
                    "e" + entries.size(),
                    Instant.EPOCH,
                    "somebody",
                    kind,
                    o.id(),
                    random.nextInt(3) == 0 ? "yes" : "no",
                    Optional.empty(),
                    ""));
        }
        return new CaseFile("random", true, new Phone(family, ""), entries);
    }

    private void agrees(String name, String caseFile) throws IOException {
        Path network = folder.resolve("network.xml");
        Ran ran = Ran.shipped("export-network", caseFile, network.toString(), "--posteriors");
        assertThat(ran.err()).isEmpty();
        List<String> observed = ran.out().lines().filter(l -> l.contains("=")).toList();
        assertThat(observed).as(name).isNotEmpty();
        Map<String, Double> weka = WekaOracle.solveFile(Files.readString(network), observed);
        List<String[]> answers = ran.out()
                .lines()
                .filter(l -> !l.contains("="))
                .map(l -> l.split(" "))
                .toList();
        assertThat(answers).as(name).hasSize(2 * (weka.size() - observed.size()));
        for (String[] answer : answers) {
            double yes = weka.getOrDefault(answer[0], Double.NaN);
            assertThat(Double.parseDouble(answer[2]))
                    .as("%s: %s %s", name, answer[0], answer[1])
                    .isCloseTo(answer[1].equals("yes") ? yes : 1 - yes, within(1e-9));
        }
    }

    @Test
    void anExistingFileIsReplacedAsAWhole() throws IOException {
        Path target = Files.writeString(folder.resolve("network.xml"), "old ".repeat(100_000));
        assertThat(Ran.small("export-network", CASE, target.toString()).exit()).isZero();
        assertThat(Files.readString(target)).startsWith("<?xml").endsWith("</BIF>\n");
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(target);
        }
    }

    @Test
    void theCaseFileItselfIsNeverReplaced() throws IOException {
        Path copy = Files.copy(Path.of(CASE), folder.resolve("case.json"));
        Ran ran = Ran.small("export-network", copy.toString(), copy.toString());
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("is the case file itself");
        assertThat(copy).hasSameTextualContentAs(Path.of(CASE));
    }

    @Test
    void aFolderThatIsNotThereIsNamed() {
        Ran ran =
                Ran.small("export-network", CASE, folder.resolve("no/such.xml").toString());
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("its folder does not exist");
        assertThat(Ran.small("export-network", CASE, folder.toString()).err()).contains("is a folder");
        assertThat(Ran.small("export-network", CASE).exit()).isEqualTo(2);
    }
}
