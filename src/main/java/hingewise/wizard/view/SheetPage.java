package hingewise.wizard.view;

import hingewise.report.bench.BenchPage;
import hingewise.report.bench.BenchPage.Branch;
import hingewise.report.bench.BenchPage.End;
import hingewise.report.bench.BenchPage.Row;
import hingewise.report.bench.BenchPage.Station;
import hingewise.report.bench.BenchPage.Twig;
import hingewise.wizard.model.SheetModel;
import hingewise.wizard.model.SheetState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The whole plan as stations. Each station takes the focus, so that the keyboard walks through the sheet. */
final class SheetPage extends VBox {
    private static final double BAR_WIDTH = 160;

    private final SheetModel sheet;
    private final Map<Integer, Node> stations = new HashMap<>();

    SheetPage(SheetModel sheet) {
        super(16);
        this.sheet = sheet;
        getStyleClass().add("note-page");
        sheet.stateProperty().addListener((o, was, is) -> show(is));
        show(sheet.state());
    }

    private void show(SheetState state) {
        stations.clear();
        List<Node> cards = new ArrayList<>();
        state.trouble()
                .ifPresent(words -> cards.add(card(
                        "Bench sheet",
                        Ui.text(words, "note"),
                        Bands.button("sheet-again", "Make the sheet", sheet::again))));
        state.latest().ifPresentOrElse(page -> cards.addAll(cards(page)), () -> {
            if (state.running()) {
                cards.add(card("Bench sheet", making()));
            } else if (state.trouble().isEmpty()) {
                cards.add(card("Bench sheet", Ui.text("It is made as soon as the case has been reckoned.", "muted")));
            }
        });
        Focus.keeping(this, () -> getChildren().setAll(cards));
    }

    private Node making() {
        ProgressBar bar = new ProgressBar();
        bar.setAccessibleText("The sheet is being made");
        bar.setPrefWidth(BAR_WIDTH);
        return Ui.column(
                8,
                Ui.text("It is being made: every branch is planned to its end, which takes a few seconds.", "muted"),
                Ui.row(8, bar, Bands.button("sheet-stop", "Stop", sheet::stop)));
    }

    private static VBox card(String heading, Node... pieces) {
        VBox card = Ui.column(8, Ui.heading(heading));
        card.getChildren().addAll(pieces);
        card.getStyleClass().add("card");
        return card;
    }

    private List<Node> cards(BenchPage page) {
        List<Node> cards = new ArrayList<>();
        List<Node> first = new ArrayList<>();
        page.stops().forEach(s -> first.add(Ui.text(s, "caution-text")));
        page.overall().forEach(s -> first.add(Ui.text(s)));
        page.care().forEach(s -> first.add(Ui.text("Caution: " + s, "caution-text")));
        page.notes().forEach(s -> first.add(Ui.text(s, "muted")));
        cards.add(card("Bench sheet", first.toArray(Node[]::new)));
        if (!page.questions().isEmpty()) {
            cards.add(card("What may still be asked", rows(page.questions())));
        }
        if (!page.ready().isEmpty()) {
            cards.add(card("What to have ready", rows(page.ready())));
        }
        page.outline().ifPresent(root -> {
            cards.add(card("The way at a glance", twig(root)));
            page.stations().forEach(s -> cards.add(station(s)));
            cards.add(card(
                    "Where to stop", page.ends().stream().map(SheetPage::end).toArray(Node[]::new)));
        });
        return cards;
    }

    private Node twig(Twig twig) {
        String chance = twig.chance().isEmpty() ? "" : ", " + twig.chance();
        String words = twig.station() + "  " + twig.label() + chance;
        Node opener = Ui.opener(
                "sheet-twig-" + twig.station(), Ui.text(words), "Go to station " + words, () -> go(twig.station()));
        if (twig.twigs().isEmpty()) {
            return opener;
        }
        VBox below = Ui.column(0, twig.twigs().stream().map(this::twig).toList());
        below.getStyleClass().add("twigs");
        return Ui.column(0, opener, below);
    }

    private void go(int station) {
        Optional.ofNullable(stations.get(station)).ifPresent(Node::requestFocus);
    }

    private Node station(Station station) {
        Label name = Ui.text(station.number() + "  " + station.label(), "heading", "station");
        name.setId("sheet-station-" + station.number());
        name.setFocusTraversable(true);
        name.setAccessibleText("Station " + station.number() + ", " + station.label() + ", " + station.figures());
        stations.put(station.number(), name);
        VBox card = Ui.column(
                8, name, Ui.text(station.figures(), "muted"), rows(station.rows()), branches(station.branches()));
        card.getStyleClass().add("card");
        return card;
    }

    private static GridPane grid(HPos first) {
        GridPane grid = new GridPane(16, 4);
        ColumnConstraints name = new ColumnConstraints();
        name.setMinWidth(USE_PREF_SIZE);
        name.setHalignment(first);
        ColumnConstraints words = new ColumnConstraints();
        words.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().addAll(name, words);
        return grid;
    }

    private static Node rows(List<Row> rows) {
        GridPane grid = grid(HPos.LEFT);
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            addRow(
                    grid,
                    i,
                    Ui.line(row.name(), "muted"),
                    row.care() ? Ui.text("Caution: " + row.text(), "caution-text") : Ui.text(row.text()));
        }
        return grid;
    }

    private Node branches(List<Branch> branches) {
        GridPane grid = grid(HPos.RIGHT);
        grid.getStyleClass().add("twigs");
        for (int i = 0; i < branches.size(); i++) {
            Branch b = branches.get(i);
            String words = b.when() + " → " + b.to();
            Node way = b.station()
                    .<Node>map(s -> Ui.opener("", Ui.text(words), b.when() + ": go to " + b.to(), () -> go(s)))
                    .orElseGet(() -> Ui.text(words, "way"));
            addRow(grid, i, Ui.line(b.chance(), "figure", "way"), way);
        }
        return grid;
    }

    private static void addRow(GridPane grid, int row, Node first, Node second) {
        GridPane.setValignment(first, VPos.TOP);
        grid.addRow(row, first, second);
    }

    private static Node end(End end) {
        VBox pieces = Ui.column(8, Ui.text(end.letter() + "  " + end.chance() + ": " + end.label()));
        if (!end.rows().isEmpty()) {
            pieces.getChildren().add(rows(end.rows()));
        }
        return pieces;
    }
}
