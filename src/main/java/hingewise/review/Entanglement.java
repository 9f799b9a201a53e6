package hingewise.review;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Phone;
import hingewise.casefile.Report;
import hingewise.diagnosis.Diagnostician;
import hingewise.inference.CliqueLimitException;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Question;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.RuleCase;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * How entangled the network of one case is.
 *
 * @param section where it stands: {@code cases} for a case of the rule book, {@code families} for a random set of answers
 * @param id of the case, or of the family the answers are of
 * @param name what the case is called
 * @param largestClique yes/no variables in the largest clique: time and memory grow with two to this power
 */
public record Entanglement(String section, String id, String name, int largestClique) {
    /** A rule book is kept below this, so that real cases stay well inside what is solved exactly. */
    public static final int LIMIT = 18;

    public static final String CASES = "cases";
    public static final String FAMILIES = "families";

    private static final int RANDOM_SETS = 50;
    private static final int FEWEST = 5;
    private static final int MOST = 25;

    /** For every case of the rule book and for random sets of answers. */
    public static List<Entanglement> of(RuleBook rules, Random random) {
        Diagnostician diagnostician = new Diagnostician(rules);
        List<Entanglement> all = new ArrayList<>();
        for (RuleCase rule : rules.cases()) {
            all.add(measure(diagnostician, CASES, rule.id(), "case " + rule.id(), CaseFiles.of(rule)));
        }
        for (int i = 1; i <= RANDOM_SETS; i++) {
            CaseFile file = random(rules, random);
            all.add(measure(
                    diagnostician,
                    FAMILIES,
                    file.phone().family(),
                    "random set " + i + " (" + file.phone().family() + ", "
                            + file.entries().size() + " answers)",
                    file));
        }
        return all;
    }

    private static Entanglement measure(
            Diagnostician diagnostician, String section, String id, String name, CaseFile file) {
        try {
            return new Entanglement(
                    section, id, name, diagnostician.prepare(file).largestClique());
        } catch (CliqueLimitException e) {
            return new Entanglement(section, id, name, e.size());
        }
    }

    private static CaseFile random(RuleBook rules, Random random) {
        List<String> families = List.copyOf(rules.families().keySet());
        String family = families.get(random.nextInt(families.size()));
        List<Observation> shuffled = new ArrayList<>(rules.observationsOf(family));
        for (int i = 0; i < shuffled.size(); i++) {
            Collections.swap(shuffled, i, random.nextInt(i, shuffled.size()));
        }
        List<Report> reports = new ArrayList<>();
        for (Observation o : shuffled.subList(0, Math.min(shuffled.size(), random.nextInt(FEWEST, MOST + 1)))) {
            EvidenceKind kind = EvidenceKind.values()[random.nextInt(EvidenceKind.values().length)];
            reports.add(CaseFiles.report(
                    reports.size() + 1, kind, o.id(), random.nextBoolean() ? Question.YES : Question.NO));
        }
        return new CaseFile("random", true, new Phone(family, ""), List.copyOf(reports));
    }

    /** One remark for each case above the limit; a random set is remarked on at its family. */
    static List<Remark> remarks(List<Entanglement> all) {
        return all.stream()
                .filter(e -> e.largestClique > LIMIT)
                .map(e -> new Remark(
                        e.section,
                        e.id,
                        e.name + ": its largest clique has " + e.largestClique + " yes/no variables, more than "
                                + LIMIT,
                        "Let fewer causes share the observations it reports."))
                .toList();
    }
}
