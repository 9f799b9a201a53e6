package hingewise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.rulebook.yaml.RuleBookReader;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The shipped models are invented; what each must change is stated beside it in rules/models.yaml. */
class ModelLayerTest {
    private static final String SERIES = "ottermark-clam-one";
    private static final String BUILT_IN_CARD = "ottermark-clam-two";
    private static final String FOLIO = "brindle-folio";

    private final RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();

    private List<String> path(String family, String state) {
        return rules.of(family).pathTo(Optional.of(state)).stream()
                .map(Access::id)
                .toList();
    }

    @Test
    void thereAreThreeModelsAndTwoWaysOfFolding() {
        assertThat(rules.waysOfFolding()).extracting(Family::id).containsExactly("clamshell", "book");
        assertThat(rules.families()).containsKeys(SERIES, BUILT_IN_CARD, FOLIO).hasSize(5);
    }

    @Test
    void whereTheCellsArePluggedUnderBothBacksBothComeOffFirst() {
        assertThat(path("clamshell", "batteries-off")).containsExactly("board-back-off", "batteries-off");
        assertThat(path(SERIES, "batteries-off")).containsExactly("board-back-off", "port-back-off", "batteries-off");
    }

    @Test
    void whatIsFixedElsewhereIsReachedElsewhere() {
        assertThat(rules.confirmations().get("reseat-inner-connector").access()).contains("shields-off");
        assertThat(rules.of(BUILT_IN_CARD)
                        .confirmations()
                        .get("reseat-inner-connector")
                        .access())
                .contains("port-back-off");
        assertThat(rules.of(FOLIO).confirmations().get("reseat-inner-connector").access())
                .contains("batteries-off");
    }

    @Test
    void aModelIsAskedWhatItsFamilyIsAskedLessWhatItLacks() {
        assertThat(rules.observationsOf("clamshell"))
                .extracting(Observation::id)
                .contains("no-picture-by-wire");
        assertThat(rules.observationsOf(SERIES))
                .hasSize(rules.observationsOf("clamshell").size() - 2)
                .extracting(Observation::id)
                .doesNotContain("no-picture-by-wire", "film-edge-damaged");
        assertThat(rules.causesOf(BUILT_IN_CARD))
                .extracting(Cause::component)
                .doesNotContain("sim-tray", "sim-reader")
                .contains("embedded-sim", "inner-panel");
    }

    @Test
    void aModelsOwnBaseRateHoldsForItAlone() {
        ByFamily gap = rules.causes().get("gap-by-design").baseRate();
        assertThat(gap.in("clamshell")).isEqualTo(.03);
        assertThat(gap.in("book")).isEqualTo(.03);
        assertThat(gap.in(SERIES)).isEqualTo(.01);
        assertThat(gap.in(BUILT_IN_CARD)).isEqualTo(.25);
    }

    @Test
    void aModelTakesTheRatesOfItsFamilyWhereItHasNoneOfItsOwn() {
        assertThat(rules.causes().get("hinge-worn").baseRate().in("book")).isEqualTo(.012);
        assertThat(rules.causes().get("hinge-worn").baseRate().in(FOLIO)).isEqualTo(.012);
    }

    @Test
    void signsAreAsStrongAsTheModelSays() {
        assertThat(strength("clamshell")).isEqualTo(.25);
        assertThat(strength(SERIES)).isEqualTo(.9);
        assertThat(strength(FOLIO)).isEqualTo(.03);
    }

    private double strength(String family) {
        return rules.of(family).causes().get("battery-one-unplugged").signs().stream()
                .collect(Collectors.toMap(Sign::observation, Sign::strength))
                .getOrDefault("no-sign-of-life", 0.0);
    }

    @Test
    void aWayOfFoldingIsTheRuleBookItselfAndAModelIsRefinedOnce() {
        assertThat(rules.of("book")).isSameAs(rules);
        assertThat(rules.of("no such family")).isSameAs(rules);
        RuleBook once = rules.of(SERIES);
        assertThat(once.of(SERIES)).isSameAs(once);
    }
}
