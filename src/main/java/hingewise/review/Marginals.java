package hingewise.review;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Phone;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.Diagnostician;
import hingewise.rulebook.Marginal;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Chances before any entry that are out of line with the records from outside that the rule book itself names. */
final class Marginals {
    /** Records are counted in round numbers: so far beyond their ends, as a part of them, is still in line. */
    private static final double ROUNDING = .05;

    private Marginals() {}

    static List<Remark> of(RuleBook rules) {
        List<Remark> remarks = new ArrayList<>();
        for (String family : rules.families().keySet()) {
            Diagnosis unknown = new Diagnostician(rules)
                    .diagnose(new CaseFile("nothing known", false, new Phone(family, ""), List.of()));
            Set<String> causes =
                    rules.causesOf(family).stream().map(c -> c.id()).collect(Collectors.toSet());
            for (Marginal m : rules.marginals().values()) {
                List<String> own = m.causes().stream().filter(causes::contains).toList();
                if (m.families().contains(family) && own.size() + m.histories().size() > 0) {
                    double chance = unknown.chanceOfAny(own, m.histories());
                    if (chance < m.from() * (1 - ROUNDING) || chance > m.to() * (1 + ROUNDING)) {
                        remarks.add(remark(m, family, chance));
                    }
                }
            }
        }
        return remarks;
    }

    private static Remark remark(Marginal m, String family, double chance) {
        return new Remark(
                "marginals",
                m.id(),
                String.format(
                        Locale.ROOT,
                        "%s in family %s has a chance of %.3f before any entry, and the records say %.3f to %.3f",
                        m.label(),
                        family,
                        chance,
                        m.from(),
                        m.to()),
                "Look at the base rates and at what raises them, or at what the records count.");
    }
}
