package hingewise.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class EvidenceTest {
    @Test
    void reportsOnOneVariableMultiplyAndOrderIsKept() {
        Evidence evidence = Evidence.none()
                .weighted("b", .5, .25)
                .yes("a")
                .weighted("b", .5, 1)
                .no("c");
        assertThat(evidence.findings().keySet()).containsExactly("b", "a", "c");
        assertThat(evidence.findings())
                .containsEntry("b", new Weighted(.25, .25))
                .containsEntry("a", new Hard(true));
    }

    @Test
    void withdrawingGivesBackWhatWasThereBefore() {
        Evidence before = Evidence.none().yes("a");
        assertThat(before.no("b").without("b")).isEqualTo(before).hasSameHashCodeAs(before);
        assertThat(before.no("b")).isNotEqualTo(before);
        assertThat(before.without("a")).isEqualTo(Evidence.none());
    }

    @Test
    void aReportOnACertainVariableKeepsOnlyItsLikelihood() {
        assertThat(Evidence.none().yes("a").weighted("a", .5, .25).findings()).containsEntry("a", new Weighted(.5, 0));
        assertThat(Evidence.none().yes("a").yes("a").findings()).containsEntry("a", new Hard(true));
    }

    @Test
    void contradictionsAreNamed() {
        assertThatThrownBy(() -> Evidence.none().yes("a").no("a"))
                .isInstanceOf(ImpossibleEvidenceException.class)
                .hasMessageContaining("'a' contradict");
    }

    @Test
    void unusableLikelihoodsAreNamed() {
        assertThatThrownBy(() -> new Weighted(0, 0)).hasMessageContaining("0.0 : 0.0");
        assertThatThrownBy(() -> new Weighted(-1, 1)).hasMessageContaining("-1.0");
        assertThatThrownBy(() -> new Weighted(Double.NaN, 1)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> new Weighted(Double.POSITIVE_INFINITY, 1)).hasMessageContaining("Infinity");
    }

    @Test
    void findingsCannotBeChangedFromOutside() {
        assertThatThrownBy(() -> Evidence.none().yes("a").findings().clear())
                .isInstanceOf(UnsupportedOperationException.class);
    }
}
