package hingewise.wizard.model;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.casefile.CaseFile;
import hingewise.diagnosis.Course;
import hingewise.wizard.Bench;
import hingewise.wizard.DemoCase;
import hingewise.wizard.Inline;
import hingewise.wizard.Later;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HistoryModelTest {
    @TempDir
    Path folder;

    @Test
    void theStoryIsReckonedOnlyWhenItsPageIsShown() throws Exception {
        Later reckoning = new Later();
        WizardModel model = new WizardModel(Bench.setup(folder, List.of(), reckoning, new Inline()));
        model.load();
        reckoning.all();
        model.openCopy(DemoCase.in(folder));
        reckoning.all();
        model.jump("dead-cover-screen");
        model.answer("yes");
        assertThat(reckoning.waiting()).isEqualTo(1);
        assertThat(model.history().state()).isEqualTo(HistoryState.none());

        model.show(Page.HISTORY);
        assertThat(reckoning.waiting()).isEqualTo(2);
        assertThat(model.history().state().running()).isTrue();
        reckoning.all();
        assertThat(told(model).file()).isEqualTo(file(model));
    }

    @Test
    void theLinesFollowTheCourseOfTheCase() throws Exception {
        WizardModel model = opened();
        Course course = Course.of(Bench.rules(), file(model));
        List<Told.Line> lines = told(model).lines();
        assertThat(lines).hasSizeBetween(3, 5);
        double highest = course.stages().get(file(model).entries().size() - 1).chances().values().stream()
                .reduce(0.0, Math::max);
        assertThat(lines.get(0).chances())
                .hasSize(file(model).entries().size() + 1)
                .last()
                .isEqualTo(highest);
    }

    @Test
    void whatWasTakenBackStaysInTheStoryAndIsMarked() throws Exception {
        WizardModel model = opened();
        int entries = file(model).entries().size();
        String first = file(model).entries().get(0).id();
        assertThat(told(model).stops().get(1).standing()).isTrue();
        assertThat(model.recorder().takenBack(first)).isTrue();
        assertThat(told(model).stops()).hasSize(entries + 2);
        assertThat(told(model).stops().get(1).withdrawn()).isTrue();
        assertThat(told(model).stops().get(1).standing()).isFalse();
        assertThat(model.history().state().chosen()).isEqualTo(entries + 1);
    }

    @Test
    void theChosenStopStaysWithinTheStory() throws Exception {
        WizardModel model = opened();
        model.history().choose(-5);
        assertThat(model.history().state().stop().orElseThrow().entry()).isEmpty();
        model.history().choose(1000);
        assertThat(model.history().state().chosen())
                .isEqualTo(file(model).entries().size());
    }

    @Test
    void anotherCaseDoesNotShowTheStoryOfTheOneBefore() throws Exception {
        Later reckoning = new Later();
        WizardModel model = new WizardModel(Bench.setup(folder, List.of(), reckoning, new Inline()));
        model.load();
        reckoning.all();
        model.openCopy(DemoCase.in(folder));
        model.show(Page.HISTORY);
        reckoning.all();
        model.startNew("book", "Red");
        model.show(Page.HISTORY);
        assertThat(model.history().state().told()).isEmpty();
        reckoning.all();
        assertThat(told(model).stops()).hasSize(1);
    }

    private WizardModel opened() throws Exception {
        WizardModel model = Bench.model(folder);
        model.openCopy(DemoCase.in(folder));
        model.acknowledge(model.state().unread());
        model.show(Page.HISTORY);
        return model;
    }

    private static Told told(WizardModel model) {
        return model.history().state().told().orElseThrow();
    }

    private static CaseFile file(WizardModel model) {
        return model.state().sitting().orElseThrow().file();
    }
}
