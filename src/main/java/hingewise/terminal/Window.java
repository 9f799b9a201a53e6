package hingewise.terminal;

import hingewise.assessment.Assessor;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

/** The window, as far as the terminal knows it. */
public interface Window {
    /**
     * Opens it and returns when it is closed.
     *
     * @param assessor reads rule book and prices; may take a moment
     * @param demoCases the case files that come with the program
     * @return empty after a window was shown; else why there is none and what to do instead
     */
    Optional<String> open(Callable<Assessor> assessor, List<Path> demoCases);
}
