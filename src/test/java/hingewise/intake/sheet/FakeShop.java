package hingewise.intake.sheet;

import hingewise.casefile.Phone;
import hingewise.costing.Shop;
import hingewise.costing.Shops;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.Money;

/** A shop of two models, and thoughts about phones that a test can foretell: every claim takes 10 off a worth of 100. */
final class FakeShop {
    static final Set<String> FAMILIES = Set.of("clamshell", "book");
    static final Shop SHOP = new Shops()
            .models(
                    model("leaf", "clamshell", Optional.of("Leaf Two"), Optional.of(service())),
                    model("any", "clamshell", Optional.empty(), Optional.empty()))
            .shop();

    private FakeShop() {}

    private static Shop.Model model(String id, String family, Optional<String> label, Optional<Shop.Service> service) {
        Money hundred = eur("100");
        return new Shop.Model(
                id, family, label, hundred, new BigDecimal(".1"), hundred, Map.of(), Map.of(), 60, service);
    }

    private static Shop.Service service() {
        return new Shop.Service(eur("300"), Set.of(), 10, eur("10"), eur("20"), new BigDecimal(".5"), Map.of());
    }

    static Money eur(String amount) {
        return Shops.eur(amount);
    }

    /** Every word of a text that begins with "bad" is a claim. */
    static List<Claim> read(Phone phone, String text) {
        return List.of(text.split("\\W+")).stream()
                .filter(w -> w.startsWith("bad"))
                .distinct()
                .map(w -> new Claim(w, true))
                .toList();
    }

    static Prospect think(Claims claims) {
        Money worth = eur("100").minus(10L * claims.claims().size());
        return (price, shipping) -> new Appraisal(
                worth.minus(price).minus(shipping),
                eur("20"),
                .25,
                worth.minus(shipping).isPositive() ? worth.minus(shipping) : eur("0"),
                claims.claims().stream().map(Claim::written).toList(),
                List.of(new Appraisal.LikelyCause("panel", "Panel, broken", .5)),
                List.of("Does it ring?"),
                List.of());
    }
}
