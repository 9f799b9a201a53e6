package hingewise.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.casefile.Story;
import hingewise.diagnosis.Diagnostician;
import hingewise.diagnosis.PossiblePhones;
import hingewise.rulebook.Damages;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Rules;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SpecimenTest {
    private static final int PHONES = 8_000;
    private static final RuleBook BOOK = new Rules()
            .cause("cracked", .4)
            .cause("lifted", .5)
            .cause("broken", .001)
            .book();

    /** Each state acts by itself; whether one is there is told by what was there before the act. */
    @Test
    void damageComesAsOftenAsWhatIsThereAlreadyMakesIt() {
        PossiblePhones phones =
                new Diagnostician(BOOK).diagnose(new Story(Rules.FAMILY).told()).possiblePhones(PHONES, 5);
        Damages damages = new Damages(
                Map.of("broken", .05), Map.of("cracked", Map.of("broken", .3), "lifted", Map.of("broken", .2)));
        Map<Set<String>, int[]> counts = new HashMap<>();
        for (int i = 0; i < PHONES; i++) {
            Specimen phone = new Specimen(phones, i, List.copyOf(BOOK.causes().values()), new Chance(7).of(i));
            Set<String> before = phone.present();
            if (!before.contains("broken")) {
                int[] count = counts.computeIfAbsent(before, b -> new int[2]);
                count[0]++;
                // Curing the crack in the same act takes nothing away from what it does there.
                count[1] +=
                        phone.undergoes("fold", Map.of("cracked", 1.0), damages).contains("broken") ? 1 : 0;
                assertThat(phone.present()).doesNotContain("cracked");
            }
        }
        assertThat(counts).hasSize(4);
        counts.forEach((before, count) -> {
            double wanted = 1 - .95 * (before.contains("cracked") ? .7 : 1) * (before.contains("lifted") ? .8 : 1);
            assertThat(count[1] / (double) count[0])
                    .as("seeds 5 and 7, with %s", before)
                    .isCloseTo(wanted, within(4 * Math.sqrt(wanted * (1 - wanted) / count[0])));
        });
    }
}
