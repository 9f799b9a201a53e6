package hingewise.wizard.view;

import hingewise.wizard.model.WizardModel;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.WritableImage;
import javafx.scene.transform.Transform;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.testfx.util.WaitForAsyncUtils;

/** The wizard's window in a test, and its picture. */
final class Window {
    private static final int TURNS = 250;

    private static final Path PICTURES = Path.of("target", "pictures");

    final WizardModel model;
    final Answering dialogs = new Answering();
    private final Stage stage;

    private Window(Stage stage, WizardModel model) {
        this.stage = stage;
        this.model = model;
    }

    static Window open(Stage stage, WizardModel model, Theme theme, double width, double height) {
        Window window = new Window(stage, model);
        window.get(() -> {
            stage.setScene(new WizardView(model, window.dialogs, theme).inScene(width, height));
            stage.setWidth(width);
            stage.setHeight(height);
            stage.show();
            return stage;
        });
        WaitForAsyncUtils.waitForFxEvents();
        return window;
    }

    /** Does something on the window's thread and waits until it is drawn. */
    void run(Runnable action) {
        get(() -> {
            action.run();
            return true;
        });
        WaitForAsyncUtils.waitForFxEvents();
    }

    <T> T get(Callable<T> action) {
        return WaitForAsyncUtils.waitForAsyncFx(20_000, action);
    }

    Scene scene() {
        return stage.getScene();
    }

    void resize(double width, double height) {
        run(() -> {
            stage.setWidth(width);
            stage.setHeight(height);
        });
        // The toolkit tells a scene its new size when it comes to it.
        for (int turn = 0;
                turn < TURNS && get(() -> scene().getWidth() != width || scene().getHeight() != height);
                turn++) {
            WaitForAsyncUtils.sleep(20, TimeUnit.MILLISECONDS);
        }
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Writes the picture of the window, so many times as large, and gives what the audit finds wrong in it. */
    List<String> picture(String name, int scale) {
        List<String> wrong = new ArrayList<>();
        WritableImage once = get(() -> {
            WritableImage taken = scene().snapshot(null);
            if (scale == 1) {
                new Audit(scene(), taken).problems().forEach(p -> wrong.add(name + ": " + p));
            }
            return taken;
        });
        WritableImage image = scale == 1
                ? once
                : get(() -> {
                    SnapshotParameters larger = new SnapshotParameters();
                    larger.setTransform(Transform.scale(scale, scale));
                    return scene().getRoot().snapshot(larger, null);
                });
        try {
            Files.createDirectories(PICTURES);
            ImageIO.write(
                    SwingFXUtils.fromFXImage(image, null),
                    "png",
                    PICTURES.resolve(name + ".png").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return wrong;
    }

    /** A person who has decided beforehand which file to name. */
    static final class Answering implements FileDialogs {
        Optional<Path> next = Optional.empty();

        @Override
        public Optional<Path> open(Path folder) {
            return next;
        }

        @Override
        public Optional<Path> save(Path proposed) {
            return next;
        }
    }
}
