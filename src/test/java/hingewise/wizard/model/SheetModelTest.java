package hingewise.wizard.model;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.wizard.Bench;
import hingewise.wizard.DemoCase;
import hingewise.wizard.Inline;
import hingewise.wizard.Later;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetModelTest {
    @TempDir
    Path folder;

    private final Later reckoning = new Later();

    private WizardModel model(Path demo) {
        WizardModel model =
                new WizardModel(Bench.setup(folder.resolve("cases"), List.of(demo), reckoning, new Inline()));
        model.load();
        model.openCopy(demo);
        reckoning.all();
        return model;
    }

    @Test
    void itIsMadeOnlyWhileItIsLookedAt() throws IOException {
        WizardModel model = model(DemoCase.in(folder));
        SheetModel sheet = new SheetModel(model);
        assertThat(sheet.state()).isEqualTo(SheetState.none());
        assertThat(reckoning.waiting()).isZero();
        model.show(Page.SHEET);
        assertThat(sheet.state().running()).isTrue();
        reckoning.all();
        assertThat(sheet.state().running()).isFalse();
        assertThat(sheet.state().latest()).isPresent();
    }

    @Test
    void stoppedItIsMadeWhenAskedForAgain() throws IOException {
        WizardModel model = model(DemoCase.in(folder));
        SheetModel sheet = new SheetModel(model);
        model.show(Page.SHEET);
        sheet.stop();
        reckoning.all();
        assertThat(sheet.state().latest()).isEmpty();
        assertThat(sheet.state().trouble()).contains("Stopped: no sheet was made.");
        sheet.again();
        assertThat(sheet.state().running()).isTrue();
        reckoning.all();
        assertThat(sheet.state().latest()).isPresent();
    }

    @Test
    void aSheetOfTheCaseBeforeAnAnswerIsNotShown() throws IOException {
        WizardModel model = model(DemoCase.in(folder));
        SheetModel sheet = new SheetModel(model);
        model.show(Page.SHEET);
        reckoning.all();
        model.takeBack(
                model.state().sitting().orElseThrow().file().entries().get(0).id());
        reckoning.next();
        assertThat(sheet.state().latest()).isEmpty();
        assertThat(sheet.state().running()).isTrue();
    }
}
