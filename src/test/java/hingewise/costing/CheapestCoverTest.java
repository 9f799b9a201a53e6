package hingewise.costing;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Rules;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CheapestCoverTest {
    /** Worked by enumeration: every subset of the parts. */
    @Test
    void noSubsetOfThePartsIsCheaper() {
        for (long seed = 1; seed <= 300; seed++) {
            Book shop = Book.invented(new Random(seed));
            Set<Part> bought = shop.cover();
            assertThat(renewed(bought))
                    .as("seed %d renews all that can be renewed", seed)
                    .containsAll(shop.needed());
            assertThat(shop.priceOf(bought)).as("seed %d", seed).isEqualByComparingTo(shop.leastPrice());
        }
    }

    @Test
    void whatTwoPartsNeedIsPaidOnce() {
        Map<String, BigDecimal> prices = new HashMap<>();
        prices.put("one", BigDecimal.valueOf(10));
        prices.put("other", BigDecimal.valueOf(10));
        prices.put("glue", BigDecimal.valueOf(8));
        prices.put("both", BigDecimal.valueOf(30));
        Rules rules = new Rules()
                .cause("a", .1)
                .cause("b", .1)
                .assembly("both", Set.of("a", "b"), Set.of())
                .assembly("one", Set.of("a"), Set.of("glue"))
                .assembly("other", Set.of("b"), Set.of("glue"))
                .assembly("glue", Set.of(), Set.of());
        assertThat(new Book(rules.book(), prices, List.of("part of a", "part of b")).cover())
                .extracting(Part::id)
                .containsExactly("one", "glue", "other");
    }

    @Test
    void manyComponentsAtOnceAreNoTrouble() {
        Rules rules = new Rules();
        Map<String, BigDecimal> prices = new HashMap<>();
        List<String> needed = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            String cause = "c" + i;
            rules.cause(cause, .1)
                    .assembly("dear" + i, Set.of(cause), Set.of())
                    .assembly("cheap" + i, Set.of(cause), Set.of("glue"));
            prices.put("dear" + i, BigDecimal.valueOf(20 + i));
            prices.put("cheap" + i, BigDecimal.valueOf(10 + i));
            needed.add("part of " + cause);
        }
        prices.put("glue", BigDecimal.ONE);
        rules.assembly("glue", Set.of(), Set.of());
        assertThat(new Book(rules.book(), prices, needed).cover())
                .extracting(Part::id)
                .hasSize(41)
                .noneMatch(id -> id.startsWith("dear"));
    }

    private static Set<String> renewed(Set<Part> parts) {
        return parts.stream().flatMap(p -> p.renews().stream()).collect(Collectors.toSet());
    }

    /** A rule book's parts and what they cost; a part without a price has no offer. */
    private record Book(RuleBook rules, Map<String, BigDecimal> prices, List<String> broken) {
        static Book invented(Random random) {
            int causes = 1 + random.nextInt(5);
            int parts = 1 + random.nextInt(8);
            Rules rules = new Rules();
            IntStream.range(0, causes).forEach(i -> rules.cause("c" + i, .1));
            Map<String, BigDecimal> prices = new HashMap<>();
            for (int i = 0; i < parts; i++) {
                Set<String> renews = new TreeSet<>();
                IntStream.range(0, causes).filter(c -> random.nextInt(3) == 0).forEach(c -> renews.add("c" + c));
                Set<String> with = new TreeSet<>();
                int self = i;
                IntStream.range(0, parts)
                        .filter(p -> p != self && random.nextInt(5) == 0)
                        .forEach(p -> with.add("p" + p));
                rules.assembly("p" + i, renews, with);
                if (random.nextInt(6) > 0) {
                    prices.put("p" + i, BigDecimal.valueOf(random.nextInt(2000), 2));
                }
            }
            return new Book(
                    rules.book(),
                    prices,
                    IntStream.range(0, causes).mapToObj(i -> "part of c" + i).toList());
        }

        List<Part> renewing(String component) {
            return rules.parts().values().stream()
                    .filter(p -> p.renews().contains(component))
                    .toList();
        }

        Set<String> needed() {
            return broken.stream().filter(c -> !renewing(c).isEmpty()).collect(Collectors.toSet());
        }

        Set<Part> bundle(Part part) {
            return new RepairCosts(rules, new PriceBook(List.of()), Shops.plain(), Rules.FAMILY).bundle(part);
        }

        Optional<BigDecimal> price(Part part) {
            return Optional.ofNullable(prices.get(part.id()));
        }

        Set<Part> cover() {
            Map<String, List<Part>> renewing = new LinkedHashMap<>();
            broken.forEach(component -> renewing.put(component, renewing(component)));
            return new CheapestCover(renewing, rules.parts().values(), this::bundle, this::price).parts();
        }

        BigDecimal priceOf(Set<Part> bought) {
            return bought.stream().flatMap(p -> price(p).stream()).reduce(BigDecimal.ZERO, BigDecimal::add);
        }

        /** Of the subsets that renew all that is needed, those with the fewest parts nobody offers come first. */
        BigDecimal leastPrice() {
            List<Part> all = List.copyOf(rules.parts().values());
            long fewest = Long.MAX_VALUE;
            BigDecimal least = BigDecimal.ZERO;
            for (int subset = 0; subset < 1 << all.size(); subset++) {
                Set<Part> bought = new HashSet<>();
                for (int i = 0; i < all.size(); i++) {
                    if ((subset >> i & 1) == 1) {
                        bought.addAll(bundle(all.get(i)));
                    }
                }
                BigDecimal price = priceOf(bought);
                long missing = bought.stream()
                        .filter(p -> price(p).isEmpty() && p.renews().stream().anyMatch(broken::contains))
                        .count();
                if (renewed(bought).containsAll(needed())
                        && (missing < fewest || missing == fewest && price.compareTo(least) < 0)) {
                    fewest = missing;
                    least = price;
                }
            }
            return least;
        }
    }
}
