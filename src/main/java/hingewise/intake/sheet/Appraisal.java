package hingewise.intake.sheet;

import java.util.List;
import org.joda.money.Money;

/**
 * What is thought of one listing by itself, before it is compared with others. Amounts are in the shop's currency.
 *
 * @param profit expected if it is bought at the price asked
 * @param spread standard deviation of the profit, at least 0
 * @param chanceOfLoss chance that the profit is below 0, in 0–1
 * @param ceiling the most to pay for it; 0 if it is not to be bought at any price
 * @param claims what was taken from its text, and nobody looked at
 * @param causes the likeliest, likeliest first
 * @param ask what to ask the seller, the question worth most first
 * @param stops ids of the cautions that stop all work on such a phone; it is not to be bought then
 */
public record Appraisal(
        Money profit,
        Money spread,
        double chanceOfLoss,
        Money ceiling,
        List<String> claims,
        List<LikelyCause> causes,
        List<String> ask,
        List<String> stops) {
    public Appraisal {
        claims = List.copyOf(claims);
        causes = List.copyOf(causes);
        ask = List.copyOf(ask);
        stops = List.copyOf(stops);
    }

    /**
     * A cause and how likely it is.
     *
     * @param chance in 0–1
     */
    public record LikelyCause(String id, String label, double chance) {}
}
