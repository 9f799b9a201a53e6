package hingewise.wizard.view;

import hingewise.offer.RouteWorth;
import hingewise.offer.Worth;
import hingewise.wizard.model.MoneyState;
import hingewise.wizard.model.WizardModel;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;

/** The money in one line, below every page of a case; it takes no more room than that. */
final class MoneyStrip extends HBox {
    private final Label words = Ui.text("");

    MoneyStrip(WizardModel model) {
        super(8);
        setId("money-strip");
        getStyleClass().addAll("row", "money-strip");
        getChildren().add(Ui.growing(words));
        model.money().stateProperty().addListener((o, was, is) -> show(is));
        show(model.money().state());
    }

    private void show(MoneyState state) {
        words.setText(text(state) + (state.running() ? " (being reckoned anew …)" : ""));
    }

    private static String text(MoneyState state) {
        if (state.trouble().isPresent()) {
            return "The money could not be reckoned: " + state.trouble().get();
        }
        return state.latest()
                .map(a -> a.worth().map(MoneyStrip::text).orElse(a.verdict()))
                .orElse("What to pay is not reckoned yet");
    }

    private static String text(Worth worth) {
        if (worth.offerCeiling().isEmpty()) {
            return "Do not buy: no price is low enough";
        }
        RouteWorth best = worth.routes().get(0);
        return "Offer at most " + Figures.money(worth.offerCeiling().get()) + " · best route: "
                + best.route().label() + " · expected profit then " + Figures.money(best.expected())
                + " · chance of loss " + Figures.percent(best.chanceOfLoss());
    }
}
