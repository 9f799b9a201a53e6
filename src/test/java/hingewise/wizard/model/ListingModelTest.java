package hingewise.wizard.model;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.wizard.Bench;
import hingewise.wizard.Inline;
import hingewise.wizard.Later;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ListingModelTest {
    private static final String TEXT = "The inner screen is cracked. It was never dropped.";

    @TempDir
    Path folder;

    private static int entries(WizardModel model) {
        return model.state().sitting().orElseThrow().file().entries().size();
    }

    @Test
    void aSuggestionEntersTheCaseOnlyWhenItIsAccepted() {
        WizardModel model = Bench.model(folder);
        model.startNew("clamshell", "Blue");
        ListingModel listing = new ListingModel(model);
        listing.read(TEXT);
        assertThat(listing.state().open()).hasSize(2);
        assertThat(entries(model)).isZero();

        listing.refuse(listing.state().open().get(0));
        assertThat(entries(model)).isZero();
        listing.accept(listing.state().open().get(0));
        assertThat(entries(model)).isEqualTo(1);
        assertThat(listing.state().open()).isEmpty();
        assertThat(model.answersTo("was-dropped"))
                .singleElement()
                .satisfies(r -> assertThat(r.answer()).isEqualTo("no"));
    }

    @Test
    void aTextThatWasForgottenMeanwhileSuggestsNothing() {
        Later later = new Later();
        WizardModel model = new WizardModel(Bench.setup(folder, List.of(), later, new Inline()));
        model.load();
        later.all();
        model.startNew("clamshell", "Blue");
        later.all();
        ListingModel listing = new ListingModel(model);
        listing.read(TEXT);
        assertThat(listing.state().running()).isTrue();
        listing.forget();
        later.all();
        assertThat(listing.state().open()).isEmpty();
    }

    @Test
    void leavingTheCaseForgetsItsListing() {
        WizardModel model = Bench.model(folder);
        model.startNew("clamshell", "Blue");
        ListingModel listing = new ListingModel(model);
        listing.read(TEXT);
        model.show(Page.START);
        assertThat(listing.state().open()).isEmpty();
    }
}
