package hingewise.wizard.model;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.casefile.Price;
import hingewise.wizard.Bench;
import hingewise.wizard.Inline;
import hingewise.wizard.Later;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MoneyModelTest {
    @TempDir
    Path folder;

    @Test
    void theMoneyFollowsEachAssessmentInTheBackground() {
        Later pricing = new Later();
        WizardModel model = priced(pricing);
        assertThat(model.money().state()).isEqualTo(MoneyState.none());

        model.startNew("clamshell", "Blue");
        pricing.all();
        assertThat(model.money().state().latest()).isPresent();
        var before = model.money().state().latest();

        model.jump("crease-blobs");
        model.answer("yes");
        assertThat(model.money().state().running()).isTrue();
        assertThat(model.money().state().latest())
                .as("the last figures stay until there are new ones")
                .isEqualTo(before);
        pricing.all();
        assertThat(model.money().state().running()).isFalse();
        assertThat(model.money().state().latest()).isPresent().isNotEqualTo(before);
    }

    @Test
    void aRecordedPriceIsWhatRoutesAreComparedAt() {
        WizardModel model = priced(new Inline());
        model.startNew("clamshell", "Blue");
        assertThat(model.recorder().price(Price.What.ASKED, " 123.40 ", "EUR")).isTrue();
        assertThat(model.money().state().latest().orElseThrow().worth().orElseThrow())
                .satisfies(w -> assertThat(w.asked()).isTrue())
                .satisfies(w -> assertThat(w.price()).hasToString("EUR 123.40"));
    }

    @Test
    void aPriceThatIsNoAmountIsRefusedInWords() {
        WizardModel model = Bench.model(folder);
        model.startNew("clamshell", "Blue");
        assertThat(model.recorder().price(Price.What.PAID, "12,40", "EUR")).isFalse();
        assertThat(model.state().notice().orElseThrow())
                .contains("the amount is \"12,40\"; write a number with at most 2 decimals");
    }

    @Test
    void aClosedPhoneIsNotClosedAgain() {
        WizardModel model = Bench.model(folder);
        model.startNew("clamshell", "Blue");
        assertThat(model.recorder().closed()).isTrue();
        assertThat(model.recorder().closed()).isFalse();
        assertThat(model.state().sitting().orElseThrow().file().entries()).hasSize(1);
    }

    private WizardModel priced(Background pricing) {
        WizardModel model = new WizardModel(Bench.setup(folder, List.of(), new Inline(), pricing, new Inline()));
        model.load();
        return model;
    }
}
