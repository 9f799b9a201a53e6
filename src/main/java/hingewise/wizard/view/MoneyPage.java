package hingewise.wizard.view;

import hingewise.offer.Mover;
import hingewise.offer.RouteWorth;
import hingewise.offer.Worth;
import hingewise.wizard.model.MoneyState;
import hingewise.wizard.model.WizardModel;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.joda.money.Money;

/** What may be paid, the routes as bars with their spread, and the numbers that move it as a tornado. */
final class MoneyPage extends VBox {
    private static final int SENTENCES = 3;

    MoneyPage(WizardModel model) {
        super(16);
        getStyleClass().add("note-page");
        model.money().stateProperty().addListener((o, was, is) -> show(is));
        show(model.money().state());
    }

    private void show(MoneyState state) {
        List<Node> cards = new ArrayList<>();
        state.trouble().ifPresent(words -> cards.add(card("What to pay", Ui.text(words, "note"))));
        state.latest().ifPresent(a -> {
            List<Node> first = new ArrayList<>(List.of(Ui.text(a.verdict())));
            a.worth().ifPresent(w -> first.addAll(bracket(w)));
            cards.add(card("What to pay", first.toArray(Node[]::new)));
            a.worth().ifPresent(w -> {
                cards.add(routes(w));
                if (!w.movers().isEmpty()) {
                    cards.add(tornado(w));
                }
            });
        });
        if (cards.isEmpty()) {
            cards.add(card("What to pay", Ui.text("It is being reckoned …", "muted")));
        }
        getChildren().setAll(cards);
    }

    private static VBox card(String heading, Node... pieces) {
        VBox card = Ui.column(8, Ui.heading(heading));
        card.getChildren().addAll(pieces);
        card.getStyleClass().add("card");
        return card;
    }

    private static List<Node> bracket(Worth worth) {
        String chosen = worth.countsOn()
                .map(c -> "if it is chosen after: " + c)
                .orElse("as well, for nothing to be looked at first is worth its cost");
        return List.of(
                Ui.text("By expected profit: " + money(worth.bracket().fixed())
                        + " if the route is chosen now and kept; "
                        + money(worth.bracket().ceiling()) + " " + chosen + "; "
                        + money(worth.bracket().perfect()) + " if it were known which route is best."),
                Ui.text("By chance of loss, at most " + Math.round(100 * worth.lossLimit()) + " %: "
                        + money(worth.lossCeiling()) + "."),
                Ui.text("Standard error of the most to pay: " + Figures.money(worth.error()) + ".", "muted"));
    }

    private static String money(Optional<Money> money) {
        return money.map(Figures::money).orElse("nothing");
    }

    private static VBox routes(Worth worth) {
        Scale scale = Scale.over(worth.routes().stream().flatMap(r -> Stream.of(r.low(), r.high(), r.expected())));
        List<Node> rows = new ArrayList<>();
        rows.add(Ui.text(
                "Profit at " + Figures.money(worth.price())
                        + ": the bar holds eight of ten cases, the mark is what is expected, the line is no profit.",
                "muted"));
        for (RouteWorth r : worth.routes()) {
            rows.add(Ui.column(
                    0,
                    Ui.text(r.route().label(), "name"),
                    new RangeBar(
                            scale.at(r.low()),
                            scale.at(r.high()),
                            scale.at(r.expected()),
                            scale.at(r.expected().minus(r.expected()))),
                    Ui.text(
                            "expected " + Figures.money(r.expected()) + ", eight of ten cases from "
                                    + Figures.money(r.low()) + " to " + Figures.money(r.high()) + ", chance of loss "
                                    + (r.chanceOfLoss() == 0 ? "none" : Figures.percent(r.chanceOfLoss()))
                                    + (r.detail().isEmpty() ? "" : " – " + r.detail()),
                            "muted")));
        }
        worth.closed().forEach(why -> rows.add(Ui.text(why, "muted")));
        return card("Routes", rows.toArray(Node[]::new));
    }

    private static VBox tornado(Worth worth) {
        Scale scale = Scale.over(worth.movers().stream().flatMap(m -> Stream.of(m.lower(), m.higher())));
        double now = worth.offerCeiling().map(scale::at).orElse(0.0);
        List<Node> rows = new ArrayList<>();
        worth.movers().stream().limit(SENTENCES).forEach(m -> rows.add(Ui.text(m.sentence())));
        rows.add(Ui.text("The bar is how far the most to pay moves; the line is where it stands.", "muted"));
        for (Mover m : worth.movers()) {
            rows.add(Ui.column(
                    0,
                    Ui.text(m.number() + " (" + Math.round(100 * m.change()) + " %)", "name"),
                    new RangeBar(scale.at(m.lower()), scale.at(m.higher()), scale.at(m.higher()), now),
                    Ui.text(
                            "lower: " + Figures.money(m.lower()) + ", higher (the mark): " + Figures.money(m.higher()),
                            "muted")));
        }
        return card("What moves it most", rows.toArray(Node[]::new));
    }

    /** Where amounts stand between the least and the most of them, in 0–1. */
    private record Scale(BigDecimal least, BigDecimal most) {
        static Scale over(Stream<Money> amounts) {
            List<BigDecimal> sorted = amounts.map(Money::getAmount).sorted().toList();
            return new Scale(sorted.get(0), sorted.get(sorted.size() - 1));
        }

        double at(Money money) {
            double width = most.subtract(least).doubleValue();
            return width == 0 ? 0 : money.getAmount().subtract(least).doubleValue() / width;
        }
    }
}
