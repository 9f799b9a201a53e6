package hingewise.wizard;

import java.util.Locale;
import java.util.Properties;
import java.util.function.UnaryOperator;
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

    @Override
    public void start(Runnable onThread) {
        Platform.startup(onThread);
    }

    private static boolean blank(@Nullable String value) {
        return value == null || value.isBlank();
    }
}
