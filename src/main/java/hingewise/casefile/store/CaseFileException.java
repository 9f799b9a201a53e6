package hingewise.casefile.store;

import org.jspecify.annotations.Nullable;

/** A case file could not be read or written. The message is one sentence for the user: where, what, and what to do. */
public class CaseFileException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    CaseFileException(String message) {
        this(message, null);
    }

    CaseFileException(String message, @Nullable Throwable cause) {
        super(message, cause);
    }
}
