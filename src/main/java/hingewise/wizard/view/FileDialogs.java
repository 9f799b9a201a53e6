package hingewise.wizard.view;

import java.nio.file.Path;
import java.util.Optional;

/** Asks the person for files. */
public interface FileDialogs {
    /** A case file to open. */
    Optional<Path> open(Path folder);

    /** Where to save; {@code proposed} names folder and file. */
    Optional<Path> save(Path proposed);
}
