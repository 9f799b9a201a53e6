package hingewise.terminal;

import java.io.Closeable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;

/** Whether the user has interrupted the program, which then waits until what was done is safe. */
final class Interruption implements BooleanSupplier, Closeable {
    private static final long LONGEST_WAIT_SECONDS = 60;

    private final AtomicBoolean asked = new AtomicBoolean();
    private final CountDownLatch safe = new CountDownLatch(1);
    private final Thread hook = new Thread(this::askAndWait, "interruption");

    private Interruption() {}

    static Interruption watch() {
        Interruption interruption = new Interruption();
        Runtime.getRuntime().addShutdownHook(interruption.hook);
        return interruption;
    }

    private void askAndWait() {
        asked.set(true);
        try {
            if (!safe.await(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS)) {
                return;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public boolean getAsBoolean() {
        return asked.get();
    }

    @Override
    public void close() {
        safe.countDown();
        if (!asked.get()) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                // The program is ending this very moment; the hook finds the work safe.
                asked.set(true);
            }
        }
    }
}
