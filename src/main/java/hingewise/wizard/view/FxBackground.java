package hingewise.wizard.view;

import hingewise.wizard.model.Background;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javafx.application.Platform;

/** Work on threads of its own; results come back on the window's thread. */
public final class FxBackground implements Background {
    private final ExecutorService threads;

    private FxBackground(ExecutorService threads) {
        this.threads = threads;
    }

    /** One piece of work after the other, each finished even if the window closes meanwhile. */
    public static FxBackground inOrder() {
        return new FxBackground(Executors.newSingleThreadExecutor(named("hingewise-files", false)));
    }

    /** Every piece of work at once: one that takes long does not hold up a newer one. */
    public static FxBackground atOnce() {
        return new FxBackground(Executors.newCachedThreadPool(named("hingewise-reckoning", true)));
    }

    private static ThreadFactory named(String name, boolean daemon) {
        return work -> {
            Thread thread = new Thread(work, name);
            thread.setDaemon(daemon);
            return thread;
        };
    }

    @Override
    public <T> void run(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        threads.execute(() -> {
            try {
                T result = work.call();
                Platform.runLater(() -> done.accept(result));
            } catch (Exception e) {
                Platform.runLater(() -> failed.accept(e));
            } catch (StackOverflowError | OutOfMemoryError e) {
                Exception said = new IllegalStateException("the computer's memory did not suffice for this", e);
                Platform.runLater(() -> failed.accept(said));
            }
        });
    }

    /** Takes no more work and waits until what was begun is finished, so that no answer is lost. */
    public void close() {
        threads.shutdown();
        boolean interrupted = false;
        while (true) {
            try {
                if (threads.awaitTermination(1, TimeUnit.MINUTES)) {
                    break;
                }
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
