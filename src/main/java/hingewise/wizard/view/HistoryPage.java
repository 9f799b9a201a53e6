package hingewise.wizard.view;

import hingewise.casefile.Entry;
import hingewise.casefile.Report;
import hingewise.wizard.model.HistoryModel;
import hingewise.wizard.model.HistoryState;
import hingewise.wizard.model.Told;
import hingewise.wizard.model.WizardModel;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;

/** How the case came to stand as it does: the leading causes over the entries, and what the chosen entry did. */
final class HistoryPage extends VBox {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'").withZone(ZoneOffset.UTC);
    private static final double SAMPLE = 32;
    private static final double BESIDE = 424;

    private final WizardModel model;
    private final HistoryModel history;
    private final VBox picture = Ui.column(16);
    private final VBox legend = Ui.column(8);
    private final VBox about = Ui.column(8);
    private final Label state = Ui.text("", "muted");
    private Optional<Told> drawn = Optional.empty();
    private Optional<CourseChart> chart = Optional.empty();

    HistoryPage(WizardModel model) {
        super(16);
        this.model = model;
        this.history = model.history();
        getStyleClass().add("note-page");
        picture.getStyleClass().add("card");
        about.getStyleClass().add("card");
        Ui.growing(picture).setPrefWidth(0);
        arrange(0);
        history.stateProperty().addListener((o, was, is) -> show(is));
        show(history.state());
    }

    /** Puts the entry beside the picture where the window is wide enough. */
    void arrange(double width) {
        boolean beside = Room.of(width) == Room.WIDE;
        about.setMinWidth(beside ? BESIDE : 0);
        about.setMaxWidth(beside ? BESIDE : USE_COMPUTED_SIZE);
        getChildren().clear();
        getChildren().addAll(beside ? List.of(Ui.topRow(16, picture, about)) : List.of(picture, about));
    }

    private void show(HistoryState now) {
        if (chart.isEmpty() || !now.told().equals(drawn)) {
            drawn = now.told();
            draw();
        }
        state.setText(now.running() ? "The last entries are being reckoned …" : "");
        state.setVisible(now.running());
        state.setManaged(now.running());
        chart.ifPresent(c -> c.show(now.chosen()));
        about.setVisible(now.stop().isPresent());
        now.told().ifPresent(told -> {
            legend(told, now.chosen());
            List<Node> pieces = about(told, now.chosen());
            now.trouble().ifPresent(words -> pieces.add(0, trouble(words)));
            Focus.keeping(about, () -> about.getChildren().setAll(pieces));
        });
        if (now.told().isEmpty()) {
            about.getChildren().clear();
            now.trouble().ifPresent(words -> picture.getChildren().add(trouble(words)));
        }
    }

    private Node trouble(String words) {
        return Ui.column(8, Ui.text(words, "note"), Bands.button("history-again", "Reckon again", history::again));
    }

    private void draw() {
        chart = drawn.map(told -> new CourseChart(told, history::choose));
        List<Node> pieces = new ArrayList<>();
        pieces.add(Ui.heading("How the leading causes moved"));
        pieces.add(state);
        chart.ifPresentOrElse(
                c -> {
                    ScrollPane scroll = Ui.scrolling(c, "The course of the causes");
                    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.AS_NEEDED);
                    scroll.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
                    pieces.add(scroll);
                    pieces.add(legend);
                },
                () -> pieces.add(Ui.text("It shows as soon as the case has been reckoned.", "muted")));
        picture.getChildren().setAll(pieces);
    }

    /** Which line is which cause, and how likely it was at the stop looked at. */
    private void legend(Told told, int chosen) {
        GridPane rows = grid();
        for (int i = 0; i < told.lines().size(); i++) {
            Told.Line line = told.lines().get(i);
            Line sample = new Line(0, 0, SAMPLE, 0);
            sample.getStyleClass().addAll("course", CourseChart.style(i));
            rows.addRow(
                    i,
                    Ui.row(8, sample, Ui.line(Integer.toString(i + 1), "name")),
                    Ui.text(line.label()),
                    Ui.line(Figures.percent(line.chances().get(chosen)), "figure"));
        }
        legend.getChildren().setAll(rows);
    }

    private static GridPane grid() {
        GridPane grid = new GridPane(16, 4);
        ColumnConstraints fixed = new ColumnConstraints();
        fixed.setMinWidth(USE_PREF_SIZE);
        ColumnConstraints words = new ColumnConstraints();
        words.setHgrow(Priority.ALWAYS);
        ColumnConstraints number = new ColumnConstraints();
        number.setHalignment(HPos.RIGHT);
        number.setMinWidth(USE_PREF_SIZE);
        grid.getColumnConstraints().addAll(fixed, words, number);
        return grid;
    }

    private List<Node> about(Told told, int chosen) {
        Told.Stop stop = told.stops().get(chosen);
        int last = told.stops().size() - 1;
        List<Node> pieces = new ArrayList<>();
        pieces.add(Ui.heading(chosen == 0 ? "Before the first entry" : "Entry " + chosen + " of " + last));
        pieces.add(Ui.text(stop.words()));
        stop.entry().ifPresent(e -> pieces.add(record(e)));
        if (stop.withdrawn()) {
            pieces.add(Ui.text("Withdrawn later: today's answer does without it.", "note"));
        }
        if (chosen > 0) {
            pieces.add(Ui.text("What it moved", "name"));
            pieces.add(moved(stop.moved()));
        }
        pieces.add(Ui.text(chosen == 0 ? "Answer before any entry" : "Answer as of this entry", "name"));
        pieces.add(Ui.text(answer(stop.answer())));
        pieces.add(ways(stop, chosen, last));
        return pieces;
    }

    private static Node record(Entry entry) {
        String remark = entry.remark().isBlank() ? "" : " – \"" + entry.remark() + "\"";
        return Ui.text(TIME.format(entry.at()) + ", " + entry.by() + remark, "muted");
    }

    private static Node moved(List<Told.Moved> moves) {
        if (moves.isEmpty()) {
            return Ui.text("Nothing by 2 % or more.", "muted");
        }
        GridPane rows = grid();
        for (int i = 0; i < moves.size(); i++) {
            Told.Moved move = moves.get(i);
            rows.addRow(
                    i,
                    Ui.line(move.after() > move.before() ? "up" : "down", "muted"),
                    Ui.text(move.label()),
                    Ui.line(Figures.percent(move.before()) + " → " + Figures.percent(move.after()), "figure"));
        }
        return rows;
    }

    private static String answer(List<Told.Chance> answer) {
        List<String> said = answer.stream()
                .map(c -> c.label() + ": " + c.word() + ", " + Figures.percent(c.value()))
                .toList();
        return said.isEmpty() ? "No cause is known." : String.join("\n", said);
    }

    private Node ways(Told.Stop stop, int chosen, int last) {
        Button before = Bands.button("history-before", "Entry before", () -> history.choose(chosen - 1));
        before.setDisable(chosen == 0);
        Button after = Bands.button("history-after", "Entry after", () -> history.choose(chosen + 1));
        after.setDisable(chosen == last);
        FlowPane ways = new FlowPane(8, 8, before, after);
        stop.entry().ifPresent(entry -> {
            if (entry instanceof Report report) {
                ways.getChildren()
                        .add(Bands.button("history-question", "Go to the question", () -> model.jump(report.about())));
            }
            if (stop.standing()) {
                ways.getChildren()
                        .add(Bands.button(
                                "history-take-back",
                                "Take this entry back",
                                () -> model.recorder().takenBack(entry.id())));
            }
        });
        return ways;
    }
}
