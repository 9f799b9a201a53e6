package hingewise.terminal;

import hingewise.assessment.Assessment;
import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Repair;
import hingewise.casefile.Report;
import hingewise.casefile.Try;
import hingewise.report.EntryText;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.RuleBook;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** An assessment for a person to read. */
final class AssessmentText {
    private AssessmentText() {}

    /**
     * @param inventedPrices whether prices come from the bundled demo price book
     * @param past whether later entries were left aside
     */
    static Page of(Assessment assessment, RuleBook all, boolean inventedPrices, Look look, boolean past) {
        RuleBook rules = all.of(assessment.file().phone().family());
        Page page = new Page(look);
        header(page, assessment.file(), rules, past);
        CautionSection.stops(page, assessment);
        CauseSection.write(page, look, assessment);
        Care care = Care.of(rules, assessment, StepSection.told(assessment));
        CautionSection.care(page, assessment, care);
        StepSection.write(page, rules, assessment, care);
        PartsSection.write(page, rules, assessment, inventedPrices);
        care.atParts(page);
        RecordSection.contradictions(page, assessment.diagnosis());
        RecordSection.skipped(page, rules, assessment.diagnosis());
        RecordSection.sinceRepair(page, assessment);
        RecordSection.untested(page, assessment);
        return page;
    }

    private static void header(Page page, CaseFile file, RuleBook rules, boolean past) {
        page.hanging(0, "", file.title(), Optional.of(Tint.HEADING));
        String family = rules.family(file.phone().family()).label();
        String phone = file.phone().label().isBlank()
                ? family
                : family + ", " + file.phone().label();
        page.line(phone);
        page.line(entries(file));
        if (past) {
            Entry last = file.entries().get(file.entries().size() - 1);
            page.line(
                    "As of entry " + last.id() + " (" + EntryText.time(last) + " UTC); what came later is left aside.");
        }
        if (file.invented()) {
            page.line("Invented example: phone, people and findings do not exist.");
        }
    }

    private static String entries(CaseFile file) {
        List<Entry> standing = file.standing();
        Stream<String> reported = Arrays.stream(EvidenceKind.values())
                .map(kind -> count(
                        standing,
                        e -> e instanceof Report r && r.kind() == kind,
                        kind == EvidenceKind.METER ? "measurement" : kind.id()));
        long tries = standing.stream().filter(Try.class::isInstance).count();
        Stream<String> done = Stream.of(
                tries + (tries == 1 ? " try" : " tries"), count(standing, Repair.class::isInstance, "repair"));
        String counted = Stream.concat(reported, done)
                .filter(words -> !words.startsWith("0 "))
                .collect(Collectors.joining(", "));
        return counted.isEmpty() ? "nothing recorded" : counted;
    }

    private static String count(List<Entry> standing, Predicate<Entry> which, String one) {
        return Figures.count(standing.stream().filter(which).count(), one);
    }
}
