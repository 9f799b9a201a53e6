package hingewise.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hingewise.assessment.Assessment;
import hingewise.assessment.Assessor;
import hingewise.casefile.store.CaseFileStore;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AssessJsonTest {
    private static final String CASE = "src/test/resources/terminal/case.json";

    private static JsonNode json(Ran ran) throws IOException {
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isZero();
        return new ObjectMapper().readTree(ran.out());
    }

    private static List<String> members(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void everyPartOfTheAnswerIsThereUnderItsName() throws IOException {
        JsonNode answer = json(Ran.small("assess", CASE, "--json"));
        assertThat(members(answer))
                .contains(
                        "currency",
                        "causes",
                        "combinations",
                        "tryFirst",
                        "parts",
                        "cautions",
                        "contradictions",
                        "skipped",
                        "untested");
        assertThat(members(answer.at("/causes/0")))
                .containsExactly("id", "label", "component", "prior", "probability", "words", "reasons");
        assertThat(members(answer.at("/causes/0/reasons/0"))).containsExactly("text", "weight", "entry", "without");
        assertThat(members(answer.at("/combinations/0"))).containsExactly("causes", "probability");
        assertThat(members(answer.at("/tryFirst/0")))
                .containsExactly(
                        "id",
                        "kind",
                        "label",
                        "minutes",
                        "cost",
                        "opens",
                        "askFirst",
                        "saves",
                        "net",
                        "cautions",
                        "why");
        assertThat(members(answer.at("/parts/0")))
                .containsExactly(
                        "id",
                        "quantity",
                        "offer",
                        "price",
                        "for",
                        "chance",
                        "sure",
                        "regretOfOrdering",
                        "regretOfWaiting");
        assertThat(members(answer.at("/money"))).contains("offerCeiling", "bracket", "routes", "verdict", "movers");
        assertThat(members(answer.at("/money/bracket"))).containsExactly("fixed", "ceiling", "perfect");
        assertThat(members(answer.at("/money/routes/0"))).contains("id", "expected", "chanceOfLoss");
        assertThat(members(answer.at("/cautions/0"))).containsExactly("id", "stops", "text");
        assertThat(answer.at("/untested/0").asText()).isEqualTo("cover-plug-out");
        assertThat(answer.at("/currency").asText()).isEqualTo("EUR");
    }

    @Test
    void numbersAreThoseOfTheAssessmentToTheLastBit() throws IOException {
        RuleBook rules =
                RuleBookReader.read(Path.of(Ran.SMALL_RULES)).ruleBook().orElseThrow();
        Assessment assessment = new Assessor(
                        rules,
                        Inputs.prices(Optional.of(Path.of(Ran.SMALL_PRICES)), rules, LocalDate.EPOCH),
                        Inputs.shop(Optional.of(Path.of(Ran.SMALL_SHOP)), rules))
                .assess(CaseFileStore.read(Path.of(CASE)));
        JsonNode answer = json(Ran.small("assess", CASE, "--json"));
        for (int c = 0; c < assessment.diagnosis().causes().size(); c++) {
            var cause = assessment.diagnosis().causes().get(c);
            JsonNode written = answer.at("/causes/" + c);
            assertThat(written.at("/id").asText()).isEqualTo(cause.cause().id());
            assertThat(written.at("/prior").asDouble()).isEqualTo(cause.prior());
            assertThat(written.at("/probability").asDouble()).isEqualTo(cause.probability());
            for (int r = 0; r < cause.reasons().size(); r++) {
                assertThat(written.at("/reasons/" + r + "/weight").asDouble())
                        .isEqualTo(cause.reasons().get(r).weight());
                assertThat(written.at("/reasons/" + r + "/without").asDouble())
                        .isEqualTo(cause.reasons().get(r).without());
            }
        }
    }

    @Test
    void theReasonsOfACauseSumToItsWholeChange() throws IOException {
        JsonNode answer = json(Ran.shipped("assess", "demo-cases/clamshell-buzzes-no-image.json", "--json"));
        assertThat(answer.at("/causes")).hasSizeGreaterThan(50);
        for (JsonNode cause : answer.at("/causes")) {
            double sum = 0;
            for (JsonNode reason : cause.at("/reasons")) {
                sum += reason.at("/weight").asDouble();
            }
            double change = logit(cause.at("/probability").asDouble())
                    - logit(cause.at("/prior").asDouble());
            assertThat(sum).as(cause.at("/id").asText()).isCloseTo(change, within(1e-9));
        }
    }

    private static double logit(double p) {
        return Math.log(p) - Math.log1p(-p);
    }

    @Test
    void hostileTextIsEscaped() throws IOException {
        Ran ran = Ran.small("assess", "src/test/resources/terminal/hostile.json", "--json");
        assertThat(ran.out()).doesNotContain("\u001B");
        assertThat(json(ran).at("/title").asText()).startsWith("Red \u001B[31m title");
    }

    @Test
    void theSameBytesComeOutWhateverTheTerminalCanShow() {
        assertThat(Ran.small(new Look(true, false), "assess", CASE, "--json").out())
                .isEqualTo(Ran.small("assess", CASE, "--json").out());
    }

    @Test
    void everyListedStepHasItsCautionsWhetherOrNotItIsWorthDoing() throws IOException {
        RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
        JsonNode answer = json(Ran.shipped("assess", "demo-cases/clamshell-buzzes-no-image.json", "--json"));
        int with = 0;
        for (JsonNode step : answer.at("/tryFirst")) {
            List<String> told = new ArrayList<>();
            step.at("/cautions").forEach(c -> told.add(c.at("/id").asText()));
            assertThat(told)
                    .as(step.at("/id").asText())
                    .containsAll(
                            rules.confirmations().get(step.at("/id").asText()).cautions());
            with += told.isEmpty() ? 0 : 1;
        }
        assertThat(with).isPositive();
    }
}
