package hingewise.intake.sheet;

import hingewise.casefile.Phone;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * All that an appraisal depends on but for what the phone costs. Equal claims in another order are equal.
 *
 * @param quote what the maker's service asks, in place of the shop file's
 */
public record Claims(Phone phone, List<Claim> claims, Optional<Money> quote) {
    public Claims {
        claims =
                claims.stream().sorted(Comparator.comparing(Claim::observation)).toList();
    }
}
