package hingewise.wizard.model;

import hingewise.plain.Quoted;
import java.util.Objects;
import java.util.stream.Collectors;

/** Sentences for the person. */
final class Words {
    private Words() {}

    /** What an exception says, a line each, fit to be shown; its name where it says nothing. */
    static String of(Throwable thrown) {
        String message = Objects.requireNonNullElse(
                thrown.getMessage(),
                "something went wrong (" + thrown.getClass().getSimpleName() + ")");
        return message.lines().map(Quoted::line).collect(Collectors.joining("\n"));
    }
}
