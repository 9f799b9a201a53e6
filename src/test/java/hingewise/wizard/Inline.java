package hingewise.wizard;

import hingewise.wizard.model.Background;
import java.util.concurrent.Callable;
import java.util.function.Consumer;

/** Does the work at once, on the caller's thread. */
public final class Inline implements Background {
    @Override
    public <T> void run(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        T result;
        try {
            result = work.call();
        } catch (Exception e) {
            failed.accept(e);
            return;
        }
        done.accept(result);
    }
}
