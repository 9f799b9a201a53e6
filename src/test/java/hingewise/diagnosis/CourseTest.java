package hingewise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Story;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Rules;
import hingewise.rulebook.yaml.RuleBookReader;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CourseTest {
    @Test
    void everyStageIsTheAnswerAsOfItsEntry() {
        for (long seed = 1; seed <= 20; seed++) {
            Random random = new Random(seed);
            RuleBook rules = RandomTimelines.rules(random);
            CaseFile file = RandomTimelines.story(random).told();
            for (Course.Stage stage : Course.of(rules, file).stages()) {
                Diagnosis then = new Diagnostician(rules)
                        .diagnose(file.asOf(stage.entry().id()));
                stage.chances()
                        .forEach((cause, chance) -> assertThat(chance).isCloseTo(then.chanceOf(cause), within(1e-12)));
            }
        }
    }

    @Test
    void aWithdrawalTakesTheMoveBack() {
        RuleBook rules = new Rules()
                .cause("x", .1)
                .observation("dark", .01)
                .sign("x", "dark", .9)
                .tryOut("reseat", Map.of("x", .5), Map.of())
                .book();
        Course course = Course.of(
                rules,
                new Story(Rules.FAMILY).look("dark", "yes").withdrawn("e1").told());

        assertThat(course.shifts(0, .01, 3))
                .singleElement()
                .satisfies(s -> assertThat(s.after()).isGreaterThan(s.before()));
        assertThat(course.stages().get(1).chances()).isEqualTo(course.start());
    }

    /** The invented models of rules/models.yaml: their own strengths, and a plug reached from the other side. */
    @Test
    void aModelsCourseIsReckonedWithItsOwnRules() {
        RuleBook shipped = RuleBookReader.readShipped().ruleBook().orElseThrow();
        CaseFile file = new Story("ottermark-clam-two")
                .look("vibrates-no-image", "yes")
                .opened("port-back-off")
                .tried("reseat-inner-connector")
                .look("vibrates-no-image", "no")
                .told();
        Map<String, Double> last = Course.of(shipped, file).stages().get(3).chances();
        new Diagnostician(shipped)
                .diagnose(file)
                .causes()
                .forEach(c -> assertThat(last.get(c.cause().id()))
                        .as(c.cause().id())
                        .isCloseTo(c.probability(), within(1e-12)));
    }
}
