package hingewise.report.handbook;

import java.util.List;

/** Lines under one heading. */
public record Group(String heading, List<Item> items) {
    public Group {
        items = List.copyOf(items);
    }
}
