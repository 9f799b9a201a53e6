package hingewise.terminal;

import hingewise.assessment.Assessment;
import hingewise.assessment.Assessor;
import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Phone;
import hingewise.plain.Quoted;
import hingewise.rulebook.NearestId;
import hingewise.rulebook.RuleBook;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "assess",
        description = {
            "Say what is probably wrong with a phone, why, and what to try first.",
            "",
            "Give a case file, or a family and what was seen:",
            "  hingewise assess --family clamshell --seen crease-blobs=yes@photo",
            "The command \"observations\" lists what can be seen and answered; every question also takes the answer"
                    + " cant-tell.",
            ""
        })
final class AssessCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(arity = "0..1", paramLabel = "CASE", description = "A case file.")
    private Optional<Path> file = Optional.empty();

    @Option(names = "--family", paramLabel = "FAMILY", description = "The way of folding, when there is no case file.")
    private Optional<String> family = Optional.empty();

    @Option(
            names = "--seen",
            arity = "1..*",
            paramLabel = "ID=ANSWER[@KIND]",
            description = "What was reported, and by what kind of evidence: claim (the seller's words), photo,"
                    + " look (your own, if left out) or meter.")
    private List<String> seen = List.of();

    @Option(names = "--at", paramLabel = "ENTRY", description = "Answer as of this entry of the case file.")
    private Optional<String> at = Optional.empty();

    @Mixin
    private FiguresOption figures = new FiguresOption();

    @Option(
            names = "--explain",
            description =
                    "Also tell what deciding or offering now and going on are expected to cost, and how near the plan is to the best.")
    private boolean explain;

    @Option(names = "--json", description = "Print the answer as JSON, alone and complete.")
    private boolean json;

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Mixin
    private ColourOption colour = new ColourOption();

    AssessCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (file.isPresent() && (family.isPresent() || !seen.isEmpty())) {
            throw Refusal.badInput("give either a case file, or --family and --seen; not both");
        }
        if (at.isPresent() && file.isEmpty()) {
            throw Refusal.badInput("--at names an entry of a case file; give the case file too");
        }
        if (json && explain) {
            throw Refusal.badInput("--explain is for reading; leave it out or leave --json out");
        }
        RuleBook rules = rulesOption.read();
        CaseFile whole = file.map(Inputs::caseFile).orElseGet(() -> spoken(rules));
        CaseFile asked = at.map(entry -> asOf(whole, entry)).orElse(whole);
        Assessor assessor = figures.assessor(rules, console);
        Assessment assessment = assessor.assess(asked);
        boolean inventedPrices = figures.inventedPrices();
        if (json) {
            console.print(AssessmentJson.of(
                    assessment, assessor.appraise(assessment, Optional.empty()), rules, inventedPrices));
        } else {
            Look look = colour.on(console.look());
            Page page = AssessmentText.of(assessment, rules, inventedPrices, look, at.isPresent());
            if (explain && !assessment.stopped()) {
                PlanSection.write(page, assessment.plan());
            }
            console.print(page);
        }
        return ExitCode.OK.number();
    }

    private static CaseFile asOf(CaseFile whole, String entry) {
        List<String> ids = whole.entries().stream().map(Entry::id).toList();
        if (!ids.contains(entry)) {
            throw Refusal.badInput("the case has no entry " + Quoted.of(entry) + ". " + NearestId.advice(entry, ids));
        }
        return whole.asOf(entry);
    }

    private CaseFile spoken(RuleBook rules) {
        String known = family.orElseThrow(() -> Refusal.badInput("give a case file, or name the family with --family: "
                + String.join(", ", rules.families().keySet())));
        if (!rules.families().containsKey(known)) {
            throw Refusal.badInput("the rule book has no family " + Quoted.of(known) + ". "
                    + NearestId.advice(known, rules.families().keySet()));
        }
        List<? extends Entry> entries =
                SeenArgument.reports(rules, known, seen, console.clock().instant());
        return new CaseFile(SeenArgument.title(seen), false, new Phone(known, ""), List.copyOf(entries));
    }
}
