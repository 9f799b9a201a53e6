package hingewise.report.bench;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.planning.Sheet;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** What leads away from a station before it is gone through: a bulging back stops work, the rest only leads elsewhere. */
class OutcomesTest {
    private static final String BULGES = "back-bulges";

    private final RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
    private final Confirmation any = rules.confirmations().values().iterator().next();

    private Outcomes outcomes(String... asked) {
        List<Sheet.Need> first = Stream.of(asked)
                .map(o -> new Sheet.Need(
                        Objects.requireNonNull(rules.observations().get(o)), false))
                .toList();
        Sheet.Station station = new Sheet.Station(
                1, any, 1, 5, Money.zero(CurrencyUnit.EUR), List.of(), first, List.of(), List.of(LEFT));
        return new Outcomes(station, BULGES::equals);
    }

    private static final Sheet.Branch LEFT = new Sheet.Branch(.1, true, List.of(), new Sheet.Way.Go(2));

    private String whenYes(String observation) {
        return Objects.requireNonNull(rules.observations().get(observation))
                .whenYes()
                .replaceAll("\\.$", "");
    }

    @Test
    void whatStopsWorkIsNeverTheReasonToGoToAnotherStation() {
        assertThat(outcomes(BULGES, "moisture-signs").of(LEFT)).isEqualTo(whenYes("moisture-signs"));
        assertThat(outcomes(BULGES, "moisture-signs", "logo-loops").of(LEFT))
                .isEqualTo("a first answer is another, none that stops work");
    }

    @Test
    void whereNothingStopsWorkAnyOtherAnswerLeadsAway() {
        assertThat(outcomes("moisture-signs", "logo-loops").of(LEFT)).isEqualTo("a first answer is another");
        assertThat(outcomes("moisture-signs").stopsWork(LEFT)).isFalse();
    }

    @Test
    void whereAllOtherAnswersStopWorkTheBranchDoes() {
        assertThat(outcomes(BULGES).of(LEFT)).isEqualTo(whenYes(BULGES));
        assertThat(outcomes(BULGES).stopsWork(LEFT)).isTrue();
        assertThat(outcomes(BULGES, "moisture-signs").stopsWork(LEFT)).isFalse();
    }
}
