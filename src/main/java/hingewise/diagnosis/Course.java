package hingewise.diagnosis;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.inference.Solution;
import hingewise.rulebook.Cause;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How the chances of the causes moved, entry by entry.
 *
 * @param start chance of each cause by id, before any entry
 * @param stages one for each entry of the case, withdrawn ones and withdrawals included
 */
public record Course(Map<String, Double> start, List<Stage> stages) {
    public Course {
        stages = List.copyOf(stages);
    }

    /**
     * The case once an entry had been recorded.
     *
     * @param chances chance of each cause by id
     */
    public record Stage(Entry entry, Map<String, Double> chances) {}

    /**
     * How one cause moved at one entry.
     *
     * @param before its chance without the entry, in 0–1
     * @param after its chance with it, in 0–1
     */
    public record Shift(String cause, double before, double after) {}

    /** @throws CaseException if the case names something the rule book lacks or says something impossible */
    public static Course of(RuleBook all, CaseFile file) {
        RuleBook rules = all.of(file.phone().family());
        List<Stage> stages = new ArrayList<>();
        for (Entry entry : file.entries()) {
            stages.add(new Stage(entry, chances(rules, file.asOf(entry.id()))));
        }
        CaseFile empty = new CaseFile(file.title(), file.invented(), file.phone(), List.of());
        return new Course(chances(rules, empty), stages);
    }

    private static Map<String, Double> chances(RuleBook rules, CaseFile file) {
        Readings readings = Readings.of(rules, file);
        String family = file.phone().family();
        Solution solution = new Situations(rules, family, readings.happenings()).solve(file.standing());
        Map<String, Double> chances = new LinkedHashMap<>();
        for (Cause cause : rules.causesOf(family)) {
            chances.put(cause.id(), solution.probability(Names.cause(cause.id())));
        }
        return chances;
    }

    /** The causes that moved most at a stage, those that moved most first; moves of less than {@code least} left out. */
    public List<Shift> shifts(int stage, double least, int most) {
        Map<String, Double> before = stage == 0 ? start : stages.get(stage - 1).chances();
        Map<String, Double> after = stages.get(stage).chances();
        return after.entrySet().stream()
                .map(e -> new Shift(e.getKey(), before.getOrDefault(e.getKey(), 0.0), e.getValue()))
                .filter(s -> Math.abs(s.after() - s.before()) >= least)
                .sorted(Comparator.comparingDouble((Shift s) -> -Math.abs(s.after() - s.before()))
                        .thenComparing(Shift::cause))
                .limit(most)
                .toList();
    }
}
