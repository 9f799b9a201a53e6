package hingewise.terminal;

import hingewise.assessment.Assessment;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.LikelySet;
import hingewise.diagnosis.RankedCause;
import hingewise.diagnosis.Reason;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is probably wrong, and why. */
final class CauseSection {
    /** Causes below this are listed only to fill the first three. */
    private static final double LISTED = .05;

    private static final int LISTED_AT_MOST = 8;
    /** Causes from this chance on are explained; the first always is. */
    private static final double EXPLAINED = .2;

    private static final int EXPLAINED_AT_MOST = 3;
    private static final int REASONS_AT_MOST = 4;
    /** A smaller change of the log-odds is not worth a line: it moves an even chance by five in a hundred at most. */
    private static final double SMALLEST_REASON = .2;

    private static final double LARGE_REASON = 1;

    private CauseSection() {}

    static void write(Page page, Look look, Assessment assessment) {
        Diagnosis diagnosis = assessment.diagnosis();
        List<RankedCause> listed = listed(diagnosis.causes());
        page.heading("What is probably wrong");
        for (RankedCause cause : listed) {
            page.hanging(
                    0,
                    Figures.percentColumn(cause.probability()) + "  " + Figures.bar(cause.probability(), look) + "  ",
                    cause.cause().label() + " – " + cause.words());
        }
        int rest = diagnosis.causes().size() - listed.size();
        if (rest > 0) {
            page.faint(9, "and " + Figures.count(rest, "less likely cause"));
        }
        reasons(page, listed);
        combinations(page, diagnosis);
    }

    private static List<RankedCause> listed(List<RankedCause> causes) {
        long likely = causes.stream().filter(c -> c.probability() >= LISTED).count();
        return causes.subList(0, (int) Math.min(causes.size(), Math.min(LISTED_AT_MOST, Math.max(3, likely))));
    }

    private static void reasons(Page page, List<RankedCause> listed) {
        page.heading("Why");
        for (int i = 0; i < listed.size(); i++) {
            RankedCause cause = listed.get(i);
            if (i == 0 || i < EXPLAINED_AT_MOST && cause.probability() >= EXPLAINED) {
                explain(page, cause);
            }
        }
        page.faint(
                0,
                "\"Without\" is the chance if that entry were left out. How a change is shared out among the entries is"
                        + " a convention; the chances are not.");
    }

    private static void explain(Page page, RankedCause cause) {
        page.line(cause.cause().label() + ": " + Figures.percent(cause.probability()) + ", before any entry "
                + Figures.percent(cause.prior()));
        List<Reason> told = cause.reasons().stream()
                .filter(r -> worthALine(cause, r))
                .sorted(Comparator.comparingDouble((Reason r) -> Math.abs(r.weight()))
                        .reversed())
                .limit(REASONS_AT_MOST)
                .sorted(Comparator.comparing((Reason r) -> r.weight() < 0))
                .toList();
        for (Reason reason : told) {
            boolean speaksFor = reason.weight() > 0;
            page.hanging(
                    2,
                    speaksFor ? "for      " : "against  ",
                    reason.text() + " [without: " + Figures.percent(reason.without()) + "]",
                    Optional.of(speaksFor ? Tint.FOR : Tint.AGAINST));
        }
        int untold = cause.reasons().size() - told.size();
        if (told.isEmpty()) {
            page.faint(2, "no entry moves it much");
        } else if (untold > 0) {
            page.faint(2, "and " + Figures.count(untold, "smaller reason"));
        }
        page.blank();
    }

    /** Large, or visible in the figures: one of two reports that say the same may weigh without changing them. */
    private static boolean worthALine(RankedCause cause, Reason reason) {
        double size = Math.abs(reason.weight());
        boolean visible = !Figures.percent(reason.without()).equals(Figures.percent(cause.probability()));
        return size >= LARGE_REASON || size >= SMALLEST_REASON && visible;
    }

    private static void combinations(Page page, Diagnosis diagnosis) {
        if (diagnosis.combinations().isEmpty()) {
            return;
        }
        Map<String, String> labels = diagnosis.causes().stream()
                .collect(Collectors.toMap(c -> c.cause().id(), c -> c.cause().label()));
        page.heading("Likely combinations");
        page.faint(0, "Exactly these of the likeliest causes; the less likely may be there or not.");
        for (LikelySet set : diagnosis.combinations()) {
            String together =
                    set.causes().stream().map(id -> labels.getOrDefault(id, id)).collect(Collectors.joining(" + "));
            page.hanging(
                    0,
                    Figures.percentColumn(set.probability()) + "  ",
                    set.causes().isEmpty() ? "none of these" : together);
        }
    }
}
