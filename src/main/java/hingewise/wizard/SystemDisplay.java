package hingewise.wizard;

import java.util.Locale;
import java.util.Properties;
import java.util.function.UnaryOperator;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import org.jspecify.annotations.Nullable;

/**
 * The display of this computer. Whether there is one is decided before anything is started: once the start has failed,
 * the toolkit would block for ever.
 */
record SystemDisplay(Properties properties, UnaryOperator<@Nullable String> environment)
        implements WizardLauncher.Display {
    @Override
    public boolean present() {
        String system = properties.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        return system.startsWith("windows")
                || system.startsWith("mac")
                || properties.containsKey("glass.platform")
                || !blank(environment.apply("DISPLAY"));
    }

    /** The toolkit would warn of being on the class path, which is how this program is meant to be started. */
    @Override
    public void start(Runnable onThread) {
        Logger toolkit = Logger.getLogger("javafx");
        Level before = toolkit.getLevel();
        toolkit.setLevel(Level.SEVERE);
        try {
            Platform.startup(onThread);
        } finally {
            toolkit.setLevel(before);
        }
    }

    private static boolean blank(@Nullable String value) {
        return value == null || value.isBlank();
    }
}
