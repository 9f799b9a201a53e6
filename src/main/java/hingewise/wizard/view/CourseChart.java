package hingewise.wizard.view;

import hingewise.wizard.model.Told;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntConsumer;
import javafx.css.PseudoClass;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;

/**
 * The leading causes as lines over the entries. Each entry is a button on the axis; the axis is one stop for Tab, and
 * the arrow keys, Home and End go along it. A line is known by its number and its dashes as well as by its colour.
 */
final class CourseChart extends Region {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final double LEFT = 48;
    private static final double RIGHT = 24;
    private static final double TOP = 16;
    private static final double PLOT = 232;
    private static final double BUTTON = 24;
    private static final double STEP = 26;
    private static final double NAME_GAP = 18;

    private final Told told;
    private final IntConsumer choose;
    private final List<Line> grid = new ArrayList<>();
    private final List<Label> scale = new ArrayList<>();
    private final List<Polyline> lines = new ArrayList<>();
    private final List<Label> names = new ArrayList<>();
    private final List<Button> stops = new ArrayList<>();
    private final Line guide = new Line();
    private int chosen;

    /** @param choose is told the number of a stop that is clicked or walked to */
    CourseChart(Told told, IntConsumer choose) {
        this.told = told;
        this.choose = choose;
        getStyleClass().add("chart");
        for (int quarter = 0; quarter <= 4; quarter++) {
            Line line = new Line();
            line.getStyleClass().add("chart-grid");
            grid.add(line);
            scale.add(Ui.line(25 * quarter + " %", "muted", "chart-scale"));
        }
        guide.getStyleClass().add("chart-guide");
        for (int i = 0; i < told.lines().size(); i++) {
            Polyline line = new Polyline();
            line.getStyleClass().addAll("course", style(i));
            lines.add(line);
            names.add(Ui.line(Integer.toString(i + 1), "name"));
        }
        for (int i = 0; i < told.stops().size(); i++) {
            stops.add(stop(i));
        }
        getChildren().addAll(grid);
        getChildren().add(guide);
        getChildren().addAll(lines);
        getChildren().addAll(scale);
        getChildren().addAll(names);
        getChildren().addAll(stops);
        getChildren().forEach(n -> n.setManaged(false));
        setMinWidth(LEFT + RIGHT + STEP * told.stops().size());
        setMinHeight(TOP + PLOT + BUTTON + 16);
        addEventFilter(KeyEvent.KEY_PRESSED, this::walk);
        setOnMouseClicked(e -> choose.accept((int) Math.floor((e.getX() - LEFT) / step())));
    }

    /** The look of the line of this rank: dashes tell the lines apart where colours do not. */
    static String style(int rank) {
        return "course-" + (rank + 1);
    }

    private Button stop(int number) {
        Told.Stop stop = told.stops().get(number);
        String end = stop.withdrawn() ? ", withdrawn later" : "";
        Button button = Ui.button(
                number == 0 ? "–" : Integer.toString(number), () -> choose.accept(number), "choice-small", "stop");
        button.setId("stop-" + number);
        button.setAccessibleRole(AccessibleRole.RADIO_BUTTON);
        button.setAccessibleText(number == 0 ? stop.words() : "Entry " + number + ": " + stop.words() + end);
        button.setMinWidth(BUTTON);
        button.setMinHeight(BUTTON);
        if (stop.withdrawn()) {
            button.getStyleClass().add("stop-withdrawn");
        }
        return button;
    }

    /** Marks the stop looked at; the keyboard follows where it was on the axis. */
    void show(int stop) {
        boolean walking = stops.stream().anyMatch(Button::isFocused);
        chosen = stop;
        for (int i = 0; i < stops.size(); i++) {
            stops.get(i).pseudoClassStateChanged(CHOSEN, i == stop);
            stops.get(i).setFocusTraversable(i == stop);
        }
        if (walking) {
            stops.get(stop).requestFocus();
        }
        requestLayout();
    }

    private void walk(KeyEvent event) {
        KeyCode code = event.getCode();
        int to = switch (code) {
            case LEFT -> chosen - 1;
            case RIGHT -> chosen + 1;
            case HOME -> 0;
            case END -> stops.size() - 1;
            default -> -2;
        };
        if (to > -2) {
            choose.accept(to);
            event.consume();
        }
    }

    private double step() {
        return (getWidth() - LEFT - RIGHT) / told.stops().size();
    }

    private double x(int stop) {
        return snapPositionX(LEFT + (stop + .5) * step());
    }

    private double y(double chance) {
        return snapPositionY(TOP + (1 - chance) * PLOT);
    }

    @Override
    protected double computePrefHeight(double width) {
        return getMinHeight();
    }

    @Override
    protected void layoutChildren() {
        double end = getWidth() - RIGHT;
        for (int quarter = 0; quarter < grid.size(); quarter++) {
            double y = y(.25 * quarter);
            put(grid.get(quarter), LEFT, y, end, y);
            Label label = scale.get(quarter);
            label.resizeRelocate(0, y - label.prefHeight(-1) / 2, LEFT - 8, label.prefHeight(-1));
        }
        put(guide, x(chosen), TOP, x(chosen), TOP + PLOT + 8);
        for (int i = 0; i < lines.size(); i++) {
            List<Double> points = new ArrayList<>();
            List<Double> chances = told.lines().get(i).chances();
            for (int stop = 0; stop < chances.size(); stop++) {
                points.add(x(stop));
                points.add(y(chances.get(stop)));
            }
            lines.get(i).getPoints().setAll(points);
        }
        name();
        double wide = Math.min(40, step() - 2);
        for (int i = 0; i < stops.size(); i++) {
            stops.get(i).resizeRelocate(x(i) - wide / 2, TOP + PLOT + 8, wide, BUTTON);
        }
    }

    /** Numbers at the ends of the lines, pushed apart where lines end close to each other. */
    private void name() {
        List<Integer> downwards = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            downwards.add(i);
        }
        downwards.sort(Comparator.comparingDouble(i -> y(last(i))));
        double lowest = TOP + PLOT + NAME_GAP / 2;
        double[] at = new double[names.size()];
        double above = Double.NEGATIVE_INFINITY;
        for (int i : downwards) {
            at[i] = Math.max(y(last(i)), above + NAME_GAP);
            above = at[i];
        }
        double below = lowest + NAME_GAP;
        for (int k = downwards.size() - 1; k >= 0; k--) {
            int i = downwards.get(k);
            at[i] = Math.min(at[i], below - NAME_GAP);
            below = at[i];
            Label name = names.get(i);
            name.resizeRelocate(
                    getWidth() - RIGHT + 8, at[i] - name.prefHeight(-1) / 2, name.prefWidth(-1), name.prefHeight(-1));
        }
    }

    private double last(int line) {
        List<Double> chances = told.lines().get(line).chances();
        return chances.get(chances.size() - 1);
    }

    private static void put(Line line, double fromX, double fromY, double toX, double toY) {
        line.setStartX(fromX);
        line.setStartY(fromY);
        line.setEndX(toX);
        line.setEndY(toY);
    }
}
