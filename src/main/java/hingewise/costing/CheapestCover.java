package hingewise.costing;

import hingewise.rulebook.Part;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The parts of least total price that renew every one of some components, with all that must be bought alongside; what
 * two of them need is bought once. Exact: branch and bound over the components, the bound being each component's share
 * of the price of the part that renews it most cheaply. A part without an offer is chosen only where nothing else does.
 */
final class CheapestCover {
    private static final Comparator<Bought> CHEAPER =
            Comparator.comparingInt(Bought::missing).thenComparing(Bought::price);
    private static final int SHARE_DECIMALS = 6;

    private final Map<String, List<Part>> renewing;
    private final Function<Part, Set<Part>> bundle;
    private final Function<Part, Optional<BigDecimal>> price;
    private final Map<String, BigDecimal> shares = new LinkedHashMap<>();
    private Optional<Bought> best = Optional.empty();

    /**
     * @param renewing the parts that may be chosen for each component; components without any are left out
     * @param all every part that may come alongside
     * @param bundle a part and all that must be bought with it
     * @param price the lowest price of a part, at least 0; empty without an offer
     */
    CheapestCover(
            Map<String, List<Part>> renewing,
            Collection<Part> all,
            Function<Part, Set<Part>> bundle,
            Function<Part, Optional<BigDecimal>> price) {
        this.renewing = renewing.entrySet().stream()
                .filter(e -> !e.getValue().isEmpty())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (a, b) -> a, LinkedHashMap::new));
        this.bundle = bundle;
        this.price = price;
        for (Part part : all) {
            List<String> renews =
                    part.renews().stream().filter(this.renewing::containsKey).toList();
            BigDecimal share = price.apply(part)
                    .orElse(BigDecimal.ZERO)
                    .divide(BigDecimal.valueOf(Math.max(1, renews.size())), SHARE_DECIMALS, RoundingMode.DOWN);
            renews.forEach(component -> shares.merge(component, share, BigDecimal::min));
        }
    }

    /** The parts, each followed by what it needs that is not there yet, in the order of the components. */
    Set<Part> parts() {
        search(renewing.keySet(), new Bought(Set.of(), BigDecimal.ZERO, 0));
        return best.map(Bought::parts).orElse(Set.of());
    }

    private void search(Set<String> need, Bought bought) {
        if (need.isEmpty()) {
            best = best.filter(b -> CHEAPER.compare(b, bought) <= 0).or(() -> Optional.of(bought));
            return;
        }
        BigDecimal least = need.stream()
                .map(component -> shares.getOrDefault(component, BigDecimal.ZERO))
                .reduce(bought.price(), BigDecimal::add);
        if (best.filter(b -> CHEAPER.compare(b, new Bought(Set.of(), least, bought.missing())) <= 0)
                .isPresent()) {
            return;
        }
        for (Part part : renewing.getOrDefault(need.iterator().next(), List.of())) {
            Bought more = with(bought, part);
            Set<String> left = new LinkedHashSet<>(need);
            more.parts().forEach(p -> left.removeAll(p.renews()));
            search(left, more);
        }
    }

    private Bought with(Bought bought, Part part) {
        Set<Part> parts = new LinkedHashSet<>(bought.parts());
        BigDecimal total = bought.price();
        int missing = bought.missing();
        for (Part each : bundle.apply(part)) {
            if (parts.add(each)) {
                Optional<BigDecimal> own = price.apply(each);
                total = total.add(own.orElse(BigDecimal.ZERO));
                missing += own.isEmpty() && each.renews().stream().anyMatch(renewing::containsKey) ? 1 : 0;
            }
        }
        return new Bought(parts, total, missing);
    }

    /** @param missing parts without an offer that renew something wanted */
    private record Bought(Set<Part> parts, BigDecimal price, int missing) {}
}
