package hingewise.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SimulateTest {
    @Test
    void bothTablesArePrintedAndProgressGoesApart() {
        Ran ran = Ran.small("simulate", "--cases", "4", "--each", "2", "--seed", "3", "--shop", Ran.SMALL_SHOP);
        assertThat(ran.err()).contains("following 8 phones; Ctrl-C stops", "8 of 8 phones followed");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains("seed 3")
                .contains("Drawn from the rule book itself")
                .containsPattern("disturbed by noise of\\s+0\\.3")
                .containsPattern("(?m)^as planned +[0-9.]+")
                .containsPattern("(?m)^everything known +[0-9.]+");
    }

    @Test
    void numbersThatMakeNoSenseAreRefused() {
        assertThat(Ran.small("simulate", "--cases", "50", "--each", "50"))
                .satisfies(r -> assertThat(r.exit()).isEqualTo(2))
                .satisfies(r -> assertThat(r.err())
                        .contains("--cases is 50 and --each is 50; give at most 1000000 cases, and at least 2 times"));
        assertThat(Ran.small("simulate", "--noise", "0"))
                .satisfies(r -> assertThat(r.exit()).isEqualTo(2))
                .satisfies(r -> assertThat(r.err()).contains("--noise is 0.0; give a number above 0 and at most 1"));
        assertThat(Ran.small("simulate", "--cases", "many").exit()).isEqualTo(2);
    }
}
