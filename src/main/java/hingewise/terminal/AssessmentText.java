package hingewise.terminal;

import hingewise.assessment.Assessment;
import hingewise.casefile.CaseFile;
import hingewise.casefile.Report;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.RuleBook;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/** An assessment for a person to read. */
final class AssessmentText {
    private AssessmentText() {}

    /** @param inventedPrices whether prices come from the bundled demo price book */
    static Page of(Assessment assessment, RuleBook rules, boolean inventedPrices, Look look) {
        Page page = new Page(look);
        header(page, assessment.file(), rules);
        CautionSection.stops(page, assessment);
        CauseSection.write(page, look, assessment);
        CautionSection.care(page, assessment);
        StepSection.write(page, rules, assessment);
        PartsSection.write(page, rules, assessment, inventedPrices);
        RecordSection.contradictions(page, assessment.diagnosis());
        RecordSection.skipped(page, rules, assessment.diagnosis());
        RecordSection.untested(page, assessment);
        return page;
    }

    private static void header(Page page, CaseFile file, RuleBook rules) {
        page.hanging(0, "", file.title(), Optional.of(Tint.HEADING));
        String family = rules.family(file.phone().family()).label();
        String phone = file.phone().label().isBlank()
                ? family
                : family + ", " + file.phone().label();
        page.line(phone);
        page.line(entries(file));
        if (file.invented()) {
            page.line("Invented example: phone, people and findings do not exist.");
        }
    }

    private static String entries(CaseFile file) {
        String counted = Arrays.stream(EvidenceKind.values())
                .map(kind -> count(file, kind))
                .filter(words -> !words.startsWith("0 "))
                .collect(Collectors.joining(", "));
        return counted.isEmpty() ? "nothing recorded" : counted;
    }

    private static String count(CaseFile file, EvidenceKind kind) {
        long many = file.entries().stream()
                .filter(e -> e instanceof Report r && r.kind() == kind)
                .count();
        return Figures.count(many, kind == EvidenceKind.METER ? "measurement" : kind.id());
    }
}
