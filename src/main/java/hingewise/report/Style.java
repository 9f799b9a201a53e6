package hingewise.report;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** How pages look. */
public final class Style {
    private static final String SHARED = "page.css";

    private Style() {}

    /**
     * What all pages share, and after it what is a page's own.
     *
     * @param own name of a style sheet beside the class that makes the page
     */
    public static String of(Class<?> maker, String own) {
        return read(Style.class, SHARED) + read(maker, own);
    }

    private static String read(Class<?> beside, String name) {
        try (InputStream in = Objects.requireNonNull(beside.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("the style " + name + " is not delivered", e);
        }
    }
}
