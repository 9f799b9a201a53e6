package hingewise.terminal;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Withdrawal;
import hingewise.diagnosis.Contradiction;
import hingewise.diagnosis.Course;
import hingewise.diagnosis.Readings;
import hingewise.report.EntryText;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "history",
        description = {"Print a case's timeline, and how the leading causes moved at each entry.", ""})
final class HistoryCommand implements Callable<Integer> {
    /** Smaller moves are noise to a reader. */
    private static final double WORTH_TELLING = .02;

    private static final int MOST_TOLD = 4;

    private final Console console;

    @Parameters(paramLabel = "CASE", description = "A case file.")
    private Path file = Path.of("");

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Mixin
    private ColourOption colour = new ColourOption();

    HistoryCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        RuleBook rules = rulesOption.read();
        CaseFile asked = Inputs.caseFile(file);
        console.print(text(rules, asked, Course.of(rules, asked), colour.on(console.look())));
        return ExitCode.OK.number();
    }

    private static Page text(RuleBook rules, CaseFile asked, Course course, Look look) {
        Page page = new Page(look);
        page.line("History: " + asked.title());
        if (asked.invented()) {
            page.line("Invented example: phone, people and findings do not exist.");
        }
        Set<String> withdrawn = asked.entries().stream()
                .flatMap(e -> e instanceof Withdrawal w ? Stream.of(w.withdraws()) : Stream.empty())
                .collect(Collectors.toSet());
        Readings readings = Readings.of(rules, asked);
        for (int i = 0; i < course.stages().size(); i++) {
            Entry entry = course.stages().get(i).entry();
            page.blank();
            page.hanging(
                    0,
                    String.format("%-6s", entry.id()),
                    EntryText.of(rules, entry) + (withdrawn.contains(entry.id()) ? " [withdrawn later]" : ""));
            page.faint(6, EntryText.time(entry) + ", " + entry.by());
            if (!entry.remark().isBlank()) {
                page.faint(6, "remark: " + entry.remark());
            }
            oddities(page, rules, readings, entry);
            shifts(page, rules, course, i, look);
        }
        return page.blank()
                .faint(
                        0,
                        "Times are in UTC. Told are the causes that moved most at each entry. At a try, an opening or a"
                                + " repair that is what the act by itself is expected to do; what was seen after it"
                                + " stands at the entries that follow.");
    }

    /** What is left out of the reckoning, and what is told otherwise than before. */
    static void oddities(Page page, RuleBook rules, Readings readings, Entry entry) {
        readings.skipped().stream()
                .filter(s -> s.entry().equals(entry.id()))
                .forEach(s -> page.faint(6, "left out: " + observation(rules, s.observation()) + " " + s.why()));
        for (Contradiction contradiction : readings.contradictions()) {
            int here = contradiction.readings().stream()
                    .map(r -> r.entry().id())
                    .toList()
                    .indexOf(entry.id());
            List<String> against = contradiction.readings().stream()
                    .limit(Math.max(here, 0))
                    .filter(r -> r.yes() != contradiction.readings().get(here).yes())
                    .map(r -> r.entry().id() + " (" + r.entry().kind().id() + ", "
                            + r.entry().by() + ")")
                    .toList();
            if (!against.isEmpty()) {
                page.faint(
                        6,
                        "told differently: " + contradiction.observation().label() + ", against "
                                + String.join(", ", against));
            }
        }
    }

    private static String observation(RuleBook rules, String id) {
        return Optional.ofNullable(rules.observations().get(id))
                .map(Observation::label)
                .orElse(id);
    }

    /** The causes that moved most at one entry. */
    static void shifts(Page page, RuleBook rules, Course course, int stage, Look look) {
        List<Course.Shift> shifts = course.shifts(stage, WORTH_TELLING, MOST_TOLD);
        for (Course.Shift shift : shifts) {
            page.hanging(
                    6,
                    Figures.percentColumn(shift.before()) + (look.unicode() ? " → " : " > ")
                            + Figures.percentColumn(shift.after()) + "  ",
                    label(rules, shift.cause()));
        }
        if (shifts.isEmpty()) {
            page.faint(6, "moves no cause by 2 in 100 or more");
        }
    }

    private static String label(RuleBook rules, String cause) {
        return Optional.ofNullable(rules.causes().get(cause)).map(Cause::label).orElse(cause);
    }
}
