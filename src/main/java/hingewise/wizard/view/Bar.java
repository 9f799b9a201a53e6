package hingewise.wizard.view;

import javafx.scene.layout.Region;

/** A share of a whole, drawn as a bar. */
final class Bar extends Region {
    private static final double HEIGHT = 8;
    private final Region filled = new Region();
    private final double share;

    /** @param share in 0–1 */
    Bar(double share) {
        this.share = share;
        getStyleClass().add("bar");
        filled.getStyleClass().add("bar-filled");
        getChildren().add(filled);
        setMinHeight(HEIGHT);
        setPrefHeight(HEIGHT);
        setMaxHeight(HEIGHT);
    }

    @Override
    protected void layoutChildren() {
        filled.resizeRelocate(0, 0, Math.max(HEIGHT / 4, share * getWidth()), getHeight());
    }
}
