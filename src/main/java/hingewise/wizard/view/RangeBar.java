package hingewise.wizard.view;

import javafx.scene.layout.Region;

/**
 * A stretch between two amounts on a scale, with a mark at a third; a line stands where the scale is marked, such as at
 * no profit. The words beside it say the same in figures.
 */
final class RangeBar extends Region {
    private static final double HEIGHT = 16;
    private static final double MARK = 4;
    private static final double LEAST = 2;

    private final double from;
    private final double to;
    private final double mark;
    private final double line;
    private final Region stretch = new Region();
    private final Region at = new Region();
    private final Region zero = new Region();

    /** All by their place on the scale, in 0–1. */
    RangeBar(double from, double to, double mark, double line) {
        this.from = Math.min(from, to);
        this.to = Math.max(from, to);
        this.mark = mark;
        this.line = line;
        getStyleClass().add("range");
        stretch.getStyleClass().add("range-stretch");
        at.getStyleClass().add("range-mark");
        zero.getStyleClass().add("range-line");
        getChildren().addAll(stretch, zero, at);
        setMinHeight(HEIGHT);
        setPrefHeight(HEIGHT);
        setMaxHeight(HEIGHT);
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        stretch.resizeRelocate(from * width, HEIGHT / 4, Math.max(LEAST, (to - from) * width), HEIGHT / 2);
        zero.resizeRelocate(line * width, 0, 1, HEIGHT);
        at.resizeRelocate(Math.max(0, mark * width - MARK / 2), 0, MARK, HEIGHT);
    }
}
