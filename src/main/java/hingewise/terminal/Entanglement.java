package hingewise.terminal;

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
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * How entangled the network of one case is.
 *
 * @param name what the case is called
 * @param largestClique yes/no variables in the largest clique: time and memory grow with two to this power
 */
record Entanglement(String name, int largestClique) {
    /** A rule book is kept below this, so that real cases stay well inside what is solved exactly. */
    static final int LIMIT = 18;

    private static final int RANDOM_SETS = 50;
    private static final int FEWEST = 5;
    private static final int MOST = 25;

    /** For every case of the rule book and for random sets of answers. */
    static List<Entanglement> of(RuleBook rules, Random random) {
        Diagnostician diagnostician = new Diagnostician(rules);
        List<Entanglement> all = new ArrayList<>();
        for (RuleCase rule : rules.cases()) {
            all.add(measure(diagnostician, "case " + rule.id(), caseOf(rule)));
        }
        for (int i = 1; i <= RANDOM_SETS; i++) {
            CaseFile file = random(rules, random);
            all.add(measure(
                    diagnostician,
                    "random set " + i + " (" + file.phone().family() + ", "
                            + file.entries().size() + " answers)",
                    file));
        }
        return all;
    }

    private static Entanglement measure(Diagnostician diagnostician, String name, CaseFile file) {
        try {
            return new Entanglement(name, diagnostician.prepare(file).largestClique());
        } catch (CliqueLimitException e) {
            return new Entanglement(name, e.size());
        }
    }

    private static CaseFile caseOf(RuleCase rule) {
        List<Report> reports = new ArrayList<>();
        for (RuleCase.Seen seen : rule.seen()) {
            reports.add(report(reports.size(), seen.kind(), seen.about(), seen.answer()));
        }
        return new CaseFile(rule.title(), true, new Phone(rule.family(), ""), List.copyOf(reports));
    }

    private static CaseFile random(RuleBook rules, Random random) {
        List<String> families = List.copyOf(rules.families().keySet());
        String family = families.get(random.nextInt(families.size()));
        List<Observation> shuffled = new ArrayList<>(rules.observationsOf(family));
        Collections.shuffle(shuffled, random);
        List<Report> reports = new ArrayList<>();
        for (Observation o : shuffled.subList(0, Math.min(shuffled.size(), random.nextInt(FEWEST, MOST + 1)))) {
            EvidenceKind kind = EvidenceKind.values()[random.nextInt(EvidenceKind.values().length)];
            reports.add(report(reports.size(), kind, o.id(), random.nextBoolean() ? Question.YES : Question.NO));
        }
        return new CaseFile("random", true, new Phone(family, ""), List.copyOf(reports));
    }

    private static Report report(int number, EvidenceKind kind, String about, String answer) {
        return new Report("e" + number, Instant.EPOCH, kind.id(), kind, about, answer, Optional.empty(), "");
    }

    static void write(Page page, List<Entanglement> all) {
        page.heading("Largest clique, in yes/no variables (at most " + LIMIT + ")");
        Comparator<Entanglement> size = Comparator.comparingInt(Entanglement::largestClique);
        for (String sort : List.of("case", "random set")) {
            all.stream()
                    .filter(e -> e.name.startsWith(sort))
                    .max(size)
                    .ifPresent(worst -> page.line("Over "
                            + Figures.count(
                                    all.stream()
                                            .filter(e -> e.name.startsWith(sort))
                                            .count(),
                                    sort)
                            + " at most " + worst.largestClique + ": " + worst.name + "."));
        }
    }

    /** One sentence for each case above the limit. */
    static List<String> problems(List<Entanglement> all) {
        return all.stream()
                .filter(e -> e.largestClique > LIMIT)
                .map(e -> e.name + ": its largest clique has " + e.largestClique + " yes/no variables, more than "
                        + LIMIT + ". Let fewer causes share the observations it reports.")
                .toList();
    }
}
