package hingewise.terminal;

import hingewise.assessment.Assessor;
import hingewise.intake.ListingReader;
import hingewise.rulebook.RuleBook;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;

/** The window, as far as the terminal knows it. */
public interface Window {
    /**
     * Opens it and returns when it is closed.
     *
     * @param assessor reads rule book and prices; may take a moment
     * @param reader makes a reader of texts by the assessor's rule book; may take a moment
     * @param demoCases the case files that come with the program
     * @return empty after a window was shown; else why there is none and what to do instead
     */
    Optional<String> open(Callable<Assessor> assessor, Function<RuleBook, ListingReader> reader, List<Path> demoCases);
}
