package hingewise.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.wizard.WizardLauncher.Display;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import org.junit.jupiter.api.Test;

class WizardLauncherTest {
    @Test
    void withoutADisplayNothingIsStartedAndTheTerminalIsNamed() {
        Properties linux = new Properties();
        linux.setProperty("os.name", "Linux");
        Display none = new SystemDisplay(linux, name -> " ");
        assertThat(none.present()).isFalse();
        assertThat(open(none))
                .hasValueSatisfying(words ->
                        assertThat(words).startsWith("There is no display here").contains("hingewise --help"));
    }

    @Test
    void aDisplayIsSeenByItsNameOrBySystemsThatAlwaysHaveOne() {
        Properties linux = new Properties();
        linux.setProperty("os.name", "Linux");
        assertThat(new SystemDisplay(linux, name -> name.equals("DISPLAY") ? ":0" : null).present())
                .isTrue();
        Properties windows = new Properties();
        windows.setProperty("os.name", "Windows 11");
        assertThat(new SystemDisplay(windows, name -> null).present()).isTrue();
    }

    @Test
    void aMissingFontIsSaidInWords() {
        Display noFont = display(() -> {
            throw new ExceptionInInitializerError(new NullPointerException("font"));
        });
        assertThat(open(noFont))
                .hasValueSatisfying(words -> assertThat(words)
                        .contains("no font was found")
                        .contains("fonts-dejavu-core")
                        .contains("hingewise --help"));
    }

    @Test
    void aDisplayThatCannotBeOpenedIsSaidInWords() {
        Display broken = display(() -> {
            throw new UnsupportedOperationException("Unable to open DISPLAY");
        });
        assertThat(open(broken))
                .hasValueSatisfying(words ->
                        assertThat(words).contains("Unable to open DISPLAY").contains("hingewise --help"));
    }

    private static Display display(Runnable start) {
        return new Display() {
            @Override
            public boolean present() {
                return true;
            }

            @Override
            public void start(Runnable onThread) {
                start.run();
            }
        };
    }

    private static Optional<String> open(Display display) {
        return new WizardLauncher(display)
                .open(Bench::assessor, Bench::reader, Path.of("cases"), List.of(), "tester", Clock.systemUTC());
    }
}
