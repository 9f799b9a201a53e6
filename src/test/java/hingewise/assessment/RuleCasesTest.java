package hingewise.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Phone;
import hingewise.casefile.Report;
import hingewise.costing.PriceBook;
import hingewise.costing.csv.PriceBookReader;
import hingewise.costing.yaml.ShopReader;
import hingewise.planning.Step;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.RuleCase;
import hingewise.rulebook.yaml.RuleBookReader;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every case that stands beside the shipped rules is answered as it says. */
class RuleCasesTest {
    @TestFactory
    Stream<DynamicTest> theShippedRulesAnswerTheirOwnCases() {
        RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
        PriceBook prices = PriceBookReader.readShipped(rules).priceBook().orElseThrow();
        Assessor assessor =
                new Assessor(rules, prices, ShopReader.readShipped(rules).shop().orElseThrow());
        assertThat(rules.cases()).isNotEmpty();
        return rules.cases().stream()
                .map(c -> DynamicTest.dynamicTest(c.id() + ": " + c.title(), () -> check(assessor, c)));
    }

    private static void check(Assessor assessor, RuleCase ruleCase) {
        Assessment assessment = assessor.assess(caseFile(ruleCase));
        RuleCase.Expect expect = ruleCase.expect();
        List<String> ranked = assessment.diagnosis().causes().stream()
                .map(c -> c.cause().id())
                .limit(3)
                .toList();
        List<String> steps =
                assessment.tryFirst().stream().map(s -> s.confirmation().id()).toList();
        List<String> inside = assessment.tryFirst().stream()
                .filter(s -> !s.opens().isEmpty())
                .map(Step::confirmation)
                .map(c -> c.id())
                .toList();
        List<String> parts =
                assessment.parts().order().stream().map(p -> p.part().id()).toList();
        List<String> cautions =
                assessment.cautions().stream().map(c -> c.caution().id()).toList();
        SoftAssertions softly = new SoftAssertions();
        expect.leads().ifPresent(c -> softly.assertThat(ranked).as("leads").startsWith(c));
        softly.assertThat(ranked).as("first three").containsAll(expect.among());
        softly.assertThat(ranked).as("first three").doesNotContainAnyElementsOf(orNothing(expect.notAmong()));
        expect.firstTry()
                .ifPresent(c -> softly.assertThat(steps).as("first try").startsWith(c));
        expect.firstInside()
                .ifPresent(c -> softly.assertThat(inside).as("first inside").startsWith(c));
        softly.assertThat(parts).as("parts").containsAll(expect.parts());
        softly.assertThat(parts).as("parts").doesNotContainAnyElementsOf(orNothing(expect.noParts()));
        if (expect.noPartAtAll()) {
            softly.assertThat(parts).as("parts").isEmpty();
        }
        softly.assertThat(cautions).as("cautions").containsAll(expect.cautions());
        softly.assertThat(cautions).as("cautions").doesNotContainAnyElementsOf(orNothing(expect.noCautions()));
        softly.assertAll();
    }

    /** The assertion refuses an empty set. */
    private static List<String> orNothing(Set<String> ids) {
        return ids.isEmpty() ? List.of("-") : List.copyOf(ids);
    }

    private static CaseFile caseFile(RuleCase ruleCase) {
        List<Entry> entries = new ArrayList<>();
        for (RuleCase.Seen seen : ruleCase.seen()) {
            entries.add(new Report(
                    "e" + (entries.size() + 1),
                    Instant.EPOCH,
                    seen.kind().id(),
                    seen.kind(),
                    seen.about(),
                    seen.answer(),
                    Optional.empty(),
                    ""));
        }
        return new CaseFile(ruleCase.title(), true, new Phone(ruleCase.family(), ""), entries);
    }
}
