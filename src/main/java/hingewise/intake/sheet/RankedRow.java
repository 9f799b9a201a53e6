package hingewise.intake.sheet;

import hingewise.intake.sheet.Outcome.Appraised;
import org.joda.money.Money;

/**
 * A row with its expectation corrected by what the whole sheet tells.
 *
 * @param corrected expected profit after correction
 * @param kept what the correction kept of the estimate's distance from the sheet's mean, in 0–1
 * @param ceiling the most to pay: the appraisal's, less what the correction took off the profit, at least 0
 */
public record RankedRow(Appraised row, Money corrected, double kept, Money ceiling, Verdict verdict) {
    static RankedRow of(Appraised row, Shrinkage shrinkage) {
        Appraisal appraisal = row.appraisal();
        Money corrected = shrinkage.corrected(appraisal.profit(), appraisal.spread());
        Money off = appraisal.profit().minus(corrected);
        // Raised expectations raise no ceiling: the mean of a sheet is no reason to pay more for a phone.
        Money lowered = off.isPositive() ? appraisal.ceiling().minus(off) : appraisal.ceiling();
        Money ceiling = lowered.isPositive() ? lowered : Money.zero(lowered.getCurrencyUnit());
        return new RankedRow(
                row, corrected, shrinkage.kept(appraisal.spread()), ceiling, Verdict.of(row.price(), ceiling));
    }
}
