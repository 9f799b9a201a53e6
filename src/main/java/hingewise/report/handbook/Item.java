package hingewise.report.handbook;

import java.util.Optional;

/**
 * One line of a group.
 *
 * @param figure what stands before it, such as a share in per cent; empty when there is none
 * @param about what it is about; empty when it is plain text
 * @param text what else is said; may be empty
 */
public record Item(String figure, Optional<Ref> about, String text) {
    static Item of(Ref about) {
        return new Item("", Optional.of(about), "");
    }

    static Item of(String figure, Ref about) {
        return new Item(figure, Optional.of(about), "");
    }

    static Item of(String figure, Ref about, String text) {
        return new Item(figure, Optional.of(about), text);
    }

    static Item of(String figure, String text) {
        return new Item(figure, Optional.empty(), text);
    }
}
