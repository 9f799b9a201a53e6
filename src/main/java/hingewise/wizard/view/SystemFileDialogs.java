package hingewise.wizard.view;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** The file dialogs of the system. */
public final class SystemFileDialogs implements FileDialogs {
    private final Supplier<Window> owner;

    public SystemFileDialogs(Supplier<Window> owner) {
        this.owner = owner;
    }

    @Override
    public Optional<Path> open(Path folder) {
        return path(chooser(folder).showOpenDialog(owner.get()));
    }

    @Override
    public Optional<Path> save(Path proposed) {
        Path folder = proposed.toAbsolutePath().getParent();
        FileChooser chooser = chooser(folder == null ? proposed : folder);
        chooser.setInitialFileName(proposed.getFileName().toString());
        return path(chooser.showSaveDialog(owner.get()));
    }

    private static FileChooser chooser(Path folder) {
        FileChooser chooser = new FileChooser();
        if (Files.isDirectory(folder)) {
            chooser.setInitialDirectory(folder.toFile());
        }
        return chooser;
    }

    private static Optional<Path> path(@org.jspecify.annotations.Nullable File file) {
        return Optional.ofNullable(file).map(File::toPath);
    }
}
