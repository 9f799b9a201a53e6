package hingewise.costing.yaml;

import hingewise.costing.Shop;
import java.util.List;
import java.util.Optional;

/**
 * What came of reading a shop file.
 *
 * @param shop present exactly when there are no problems
 * @param problems all there are, by line; one sentence each, with file, line, value and remedy
 */
public record ShopReading(Optional<Shop> shop, List<String> problems) {
    public ShopReading {
        problems = List.copyOf(problems);
    }
}
