package hingewise.wizard.model;

import java.util.concurrent.Callable;
import java.util.function.Consumer;

/** Runs work away from the window, so that the window never waits. */
public interface Background {
    /**
     * Starts the work. Exactly one of the two is called afterwards, on the window's thread: {@code done} with the
     * result, or {@code failed} with what was thrown.
     */
    <T> void run(Callable<T> work, Consumer<T> done, Consumer<Exception> failed);
}
