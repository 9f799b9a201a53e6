package hingewise.wizard.model;

import java.util.concurrent.Callable;
import java.util.function.Consumer;

/** Reckons cases in the background. Only the newest counts: the result of an earlier one is dropped. */
final class Reckoner<T> {
    private final Background background;
    private final Consumer<T> done;
    private final Consumer<String> failed;
    private int newest;

    /** @param failed is told why there is no result, in words */
    Reckoner(Background background, Consumer<T> done, Consumer<String> failed) {
        this.background = background;
        this.done = done;
        this.failed = failed;
    }

    void reckon(Callable<T> work) {
        int ticket = ++newest;
        background.run(
                work,
                result -> {
                    if (ticket == newest) {
                        done.accept(result);
                    }
                },
                thrown -> {
                    if (ticket == newest) {
                        failed.accept(Words.of(thrown));
                    }
                });
    }

    /** Drops what is being reckoned. */
    void drop() {
        newest++;
    }
}
