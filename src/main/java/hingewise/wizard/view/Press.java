package hingewise.wizard.view;

import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.layout.Region;

/** A button that holds any content, as wide as the button; words in it wrap and make it taller. */
final class Press extends Button {
    private final Region content;

    Press(Region content, String accessibleText, Runnable action) {
        this.content = content;
        setGraphic(content);
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        setAccessibleText(accessibleText);
        setOnAction(e -> action.run());
        setMinHeight(USE_PREF_SIZE);
        setMaxWidth(Double.MAX_VALUE);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefWidth(double height) {
        Insets around = getInsets();
        return around.getLeft() + snapSizeX(content.prefWidth(-1)) + around.getRight();
    }

    @Override
    protected double computePrefHeight(double width) {
        Insets around = getInsets();
        double inner = width < 0 ? -1 : Math.max(0, width - around.getLeft() - around.getRight());
        return around.getTop() + snapSizeY(content.prefHeight(inner)) + around.getBottom();
    }

    @Override
    protected void layoutChildren() {
        Insets around = getInsets();
        content.resizeRelocate(
                around.getLeft(),
                around.getTop(),
                getWidth() - around.getLeft() - around.getRight(),
                getHeight() - around.getTop() - around.getBottom());
    }
}
