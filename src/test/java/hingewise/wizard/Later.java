package hingewise.wizard;

import hingewise.wizard.model.Background;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Callable;
import java.util.function.Consumer;

/** Keeps the work until the test lets it happen. */
public final class Later implements Background {
    private final Deque<Runnable> waiting = new ArrayDeque<>();

    @Override
    public <T> void run(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        waiting.add(() -> new Inline().run(work, done, failed));
    }

    /** Does what has waited longest. */
    public void next() {
        waiting.remove().run();
    }

    /** Does all that waits. */
    public void all() {
        while (!waiting.isEmpty()) {
            next();
        }
    }

    public int waiting() {
        return waiting.size();
    }
}
