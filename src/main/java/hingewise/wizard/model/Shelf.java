package hingewise.wizard.model;

import java.nio.file.Path;
import java.util.List;

/**
 * The cases that can be opened from the first page.
 *
 * @param own in the person's case folder, newest first
 * @param demos invented cases that come with the program
 */
public record Shelf(List<Listed> own, List<Listed> demos) {
    public Shelf {
        own = List.copyOf(own);
        demos = List.copyOf(demos);
    }

    /** Nothing to open. */
    public static Shelf empty() {
        return new Shelf(List.of(), List.of());
    }

    /**
     * A case that can be opened.
     *
     * @param about the phone and how far the case is
     */
    public record Listed(String title, String about, Path file) {}
}
