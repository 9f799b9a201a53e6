package hingewise.wizard.view;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.net.URL;
import java.util.Objects;
import javafx.scene.Scene;

/** Light or dark: the base theme with our own accent and pieces over it. */
public enum Theme {
    LIGHT,
    DARK;

    /** The other one. */
    public Theme other() {
        return this == LIGHT ? DARK : LIGHT;
    }

    void dress(Scene scene) {
        scene.setUserAgentStylesheet(
                this == LIGHT ? new PrimerLight().getUserAgentStylesheet() : new PrimerDark().getUserAgentStylesheet());
        scene.getStylesheets().setAll(sheet(this == LIGHT ? "light.css" : "dark.css"), sheet("wizard.css"));
    }

    private static String sheet(String name) {
        URL url = Theme.class.getResource("/hingewise/wizard/" + name);
        return Objects.requireNonNull(url, name).toExternalForm();
    }
}
