package hingewise.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Closed;
import hingewise.casefile.Opened;
import hingewise.casefile.Phone;
import hingewise.casefile.Repair;
import hingewise.casefile.Report;
import hingewise.costing.csv.PriceBookReader;
import hingewise.costing.yaml.ShopReader;
import hingewise.rulebook.Caution;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** When a caution comes, where it belongs, and when it goes. Common practice, no source. */
class CautionsTest {
    private static final Instant AT = Instant.parse("2026-11-20T10:00:00Z");
    private static final RuleBook RULES =
            RuleBookReader.readShipped().ruleBook().orElseThrow();
    private static final Assessor ASSESSOR = new Assessor(
            RULES,
            PriceBookReader.readShipped(RULES).priceBook().orElseThrow(),
            ShopReader.readShipped(RULES).shop().orElseThrow());

    private CaseFile file = new CaseFile("A case", true, new Phone("clamshell", ""), List.of());

    private void said(EvidenceKind kind, String about, String answer) {
        file = file.with(new Report(file.nextId(), AT, "bench", kind, about, answer, Optional.empty(), ""));
    }

    private void looked(String about, String answer) {
        said(EvidenceKind.LOOK, about, answer);
    }

    private void batteriesRenewed() {
        file = file.with(new Opened(file.nextId(), AT, "bench", "port-back-off", ""));
        file = file.with(new Repair(file.nextId(), AT, "bench", List.of("battery-pair"), "service", ""));
        file = file.with(new Closed(file.nextId(), AT, "bench", ""));
    }

    private List<String> ids() {
        return ASSESSOR.assess(file).cautions().stream()
                .map(c -> c.caution().id())
                .toList();
    }

    private boolean stopped() {
        return ASSESSOR.assess(file).stopped();
    }

    @Test
    void aStopEndsOnceTheBatteriesAreRenewedAndTheBacksFoundFlat() {
        looked("back-bulges", "yes");
        looked("battery-smell", "yes");
        assertThat(stopped()).isTrue();
        batteriesRenewed();
        assertThat(stopped()).as("not looked at since").isTrue();
        looked("back-bulges", "no");
        assertThat(stopped()).as("the smell is not looked at since").isTrue();
        looked("battery-smell", "no");
        Assessment answer = ASSESSOR.assess(file);
        assertThat(answer.stopped()).isFalse();
        assertThat(answer.tryFirst()).isNotEmpty();
    }

    @Test
    void aDenialAloneDoesNotEndAStop() {
        looked("back-bulges", "yes");
        looked("back-bulges", "no");
        said(EvidenceKind.METER, "back-bulges", "no");
        assertThat(stopped()).isTrue();
    }

    @Test
    void nobodyElsesWordEndsAStop() {
        looked("back-bulges", "yes");
        batteriesRenewed();
        said(EvidenceKind.CLAIM, "back-bulges", "no");
        said(EvidenceKind.PHOTO, "back-bulges", "no");
        assertThat(stopped()).isTrue();
    }

    @Test
    void aRepairOfSomethingElseDoesNotEndAStop() {
        looked("back-bulges", "yes");
        file = file.with(new Opened(file.nextId(), AT, "bench", "cover-lifted", ""));
        file = file.with(new Repair(file.nextId(), AT, "bench", List.of("cover-screen"), "service", ""));
        file = file.with(new Closed(file.nextId(), AT, "bench", ""));
        looked("back-bulges", "no");
        assertThat(stopped()).isTrue();
    }

    @Test
    void aSignThatComesBackStopsAgain() {
        looked("back-bulges", "yes");
        batteriesRenewed();
        looked("back-bulges", "no");
        assertThat(stopped()).isFalse();
        looked("back-bulges", "yes");
        assertThat(stopped()).isTrue();
    }

    @Test
    void whileWorkStopsNothingIsSaidOfOpening() {
        looked("power-on", "buzz-no-image");
        looked("dead-cover-screen", "yes");
        assertThat(ids()).contains("before-opening", "batteries-first");
        looked("back-bulges", "yes");
        assertThat(ids()).contains("swollen-battery-stop", "battery-shipping");
        assertThat(ids()).doesNotContain("before-opening", "batteries-first", "heat-adhesive");
    }

    @Test
    void whatTheCaseBringsUpComesFirst() {
        looked("crease-blobs", "yes");
        looked("power-on", "buzz-no-image");
        looked("dead-cover-screen", "yes");
        looked("back-loose", "yes");
        List<ShownCaution> shown = ASSESSOR.assess(file).cautions();
        List<Boolean> brought = shown.stream().map(ShownCaution::brought).toList();
        assertThat(brought).contains(true, false).isSortedAccordingTo(java.util.Comparator.reverseOrder());
        assertThat(shown.stream()
                        .filter(ShownCaution::brought)
                        .map(c -> c.caution().id()))
                .contains("fold-sweep-with-blobs", "loose-back-swelling-first")
                .doesNotContain("heat-adhesive");
    }

    @Test
    void whatOpeningCallsForComesWithEveryStepThatOpens() {
        looked("power-on", "buzz-no-image");
        looked("dead-cover-screen", "yes");
        Assessment answer = ASSESSOR.assess(file);
        assertThat(answer.tryFirst()).anyMatch(s -> s.opens().contains("batteries-off"));
        answer.tryFirst().stream()
                .filter(s -> s.opens().contains("batteries-off"))
                .forEach(s -> assertThat(Cautions.of(RULES, s))
                        .as(s.confirmation().id())
                        .extracting(Caution::id)
                        .contains("batteries-first", "static-protection"));
    }
}
