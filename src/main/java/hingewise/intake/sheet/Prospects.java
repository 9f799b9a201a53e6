package hingewise.intake.sheet;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Remembers the prospects that were asked for last, so that equal claims are thought about once. What two threads ask
 * for at the same time is worked out by one of them. For several threads at once.
 */
final class Prospects implements Appraiser {
    private final Appraiser appraiser;
    private final Map<Claims, CompletableFuture<Prospect>> latest;
    private final AtomicLong thought = new AtomicLong();

    /** @param most how many are remembered */
    Prospects(Appraiser appraiser, int most) {
        this.appraiser = appraiser;
        this.latest = new LinkedHashMap<>(16, .75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Claims, CompletableFuture<Prospect>> eldest) {
                return size() > most;
            }
        };
    }

    @Override
    public Prospect prospect(Claims claims) {
        CompletableFuture<Prospect> mine = new CompletableFuture<>();
        CompletableFuture<Prospect> known;
        synchronized (latest) {
            known = latest.putIfAbsent(claims, mine);
        }
        if (known == null) {
            thought.incrementAndGet();
            known = mine;
            try {
                mine.complete(appraiser.prospect(claims));
            } catch (RuntimeException | Error e) {
                // Whatever it was, who waits for it must not wait for ever.
                mine.completeExceptionally(e);
            }
        }
        try {
            return known.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw e;
        }
    }

    /** How many were worked out. */
    long thought() {
        return thought.get();
    }
}
