package hingewise.terminal;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Closed;
import hingewise.casefile.Entry;
import hingewise.casefile.Meanwhile;
import hingewise.casefile.Opened;
import hingewise.casefile.Price;
import hingewise.casefile.Repair;
import hingewise.casefile.Report;
import hingewise.casefile.TimelineException;
import hingewise.casefile.Try;
import hingewise.casefile.Withdrawal;
import hingewise.casefile.store.CaseFileException;
import hingewise.casefile.store.CaseFileStore;
import hingewise.casefile.store.Stored;
import hingewise.diagnosis.Course;
import hingewise.diagnosis.Readings;
import hingewise.plain.Quoted;
import hingewise.report.EntryText;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.NearestId;
import hingewise.rulebook.RuleBook;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.joda.money.Money;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "record",
        description = {
            "Add an entry to a case file and say what it moved. Nothing is written unless it can stand.",
            "",
            "  record CASE claim|photo|look|meter ID=ANSWER ...  what was reported",
            "  record CASE try CONFIRMATION                      what was tried; what was",
            "              [--result ID=ANSWER ...]              seen after it",
            "  record CASE repair PART ... --grade GRADE         what was fitted",
            "  record CASE opened ACCESS                         how far it was opened",
            "  record CASE closed",
            "  record CASE meanwhile WHAT                        time that may change it",
            "  record CASE asked|paid AMOUNT CURRENCY            what the phone itself costs",
            "  record CASE withdraw ENTRY                        an entry taken back",
            ""
        })
final class RecordCommand implements Callable<Integer> {
    private static final String BENCH = "bench";
    private static final Set<String> SELLERS = Set.of(EvidenceKind.CLAIM.id(), Price.What.ASKED.id());

    private final Console console;
    private final Map<String, Kind> kinds = new LinkedHashMap<>();

    @Parameters(index = "0", paramLabel = "CASE", description = "A case file.")
    private Path file = Path.of("");

    @Parameters(index = "1", paramLabel = "KIND", description = "What kind of entry.")
    private String kind = "";

    @Parameters(index = "2..*", arity = "0..*", paramLabel = "WHAT", description = "What it says, by kind as above.")
    private List<String> what = List.of();

    @Option(names = "--result", arity = "1..*", paramLabel = "ID=ANSWER", description = "What was seen after a try.")
    private List<String> results = List.of();

    @Option(names = "--grade", paramLabel = "GRADE", description = "What kind of parts were fitted.")
    private Optional<String> grade = Optional.empty();

    @Option(
            names = "--by",
            paramLabel = "NAME",
            description = "Who says so; seller for a claim or a price asked, else bench.")
    private Optional<String> by = Optional.empty();

    @Option(names = "--time", paramLabel = "TIME", description = "When, such as 2026-11-20T10:00:00Z; now if left out.")
    private Optional<String> time = Optional.empty();

    @Option(names = "--remark", paramLabel = "TEXT", description = "A free remark.")
    private String remark = "";

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    /** Adds entries of one kind to a case. */
    private interface Kind {
        CaseFile add(CaseFile before, Stamp stamp);
    }

    private record Stamp(Instant at, String by, String remark) {}

    RecordCommand(Console console) {
        this.console = console;
        for (EvidenceKind evidence : EvidenceKind.values()) {
            kinds.put(evidence.id(), (before, stamp) -> reports(before, stamp, evidence, what, Optional.empty()));
        }
        kinds.put("try", this::tried);
        kinds.put(
                "repair",
                (before, s) -> before.with(
                        new Repair(before.nextId(), s.at(), s.by(), some("PART"), grade.orElse(""), s.remark())));
        kinds.put(
                "opened",
                (before, s) -> before.with(new Opened(before.nextId(), s.at(), s.by(), one("ACCESS"), s.remark())));
        kinds.put("closed", (before, s) -> {
            if (!what.isEmpty()) {
                throw Refusal.badInput(
                        Quoted.of(kind) + " takes nothing more, but here is " + Quoted.of(String.join(" ", what)));
            }
            before.closed().ifPresent(c -> {
                throw Refusal.badInput("the phone is closed already (entry " + c.id()
                        + "); record how far it was opened" + " before it is closed again");
            });
            return before.with(new Closed(before.nextId(), s.at(), s.by(), s.remark()));
        });
        for (Price.What price : Price.What.values()) {
            kinds.put(
                    price.id(),
                    (before, s) ->
                            before.with(new Price(before.nextId(), s.at(), s.by(), price, amount(), s.remark())));
        }
        kinds.put(
                "meanwhile",
                (before, s) -> before.with(new Meanwhile(before.nextId(), s.at(), s.by(), one("WHAT"), s.remark())));
        kinds.put(
                "withdraw",
                (before, s) -> before.with(new Withdrawal(before.nextId(), s.at(), s.by(), one("ENTRY"), s.remark())));
    }

    @Override
    public Integer call() {
        RuleBook rules = rulesOption.read();
        Kind known = Optional.ofNullable(kinds.get(kind))
                .orElseThrow(() -> Refusal.badInput(
                        "no entry is of the kind " + Quoted.of(kind) + ". " + NearestId.advice(kind, kinds.keySet())));
        if (!results.isEmpty() && !kind.equals("try")) {
            throw Refusal.badInput("--result goes with a try; " + Quoted.of(kind) + " has none");
        }
        if (grade.isPresent() && !kind.equals("repair")) {
            throw Refusal.badInput("--grade goes with a repair; " + Quoted.of(kind) + " has none");
        }
        if (grade.isEmpty() && kind.equals("repair")) {
            throw Refusal.badInput("say what kind of part it is with --grade: "
                    + String.join(", ", rules.grades().keySet()));
        }
        try {
            Stored before = CaseFileStore.open(file);
            Stamp stamp =
                    new Stamp(when(before.caseFile()), by.orElse(SELLERS.contains(kind) ? "seller" : BENCH), remark);
            CaseFile after = known.add(before.caseFile(), stamp);
            Course course = Course.of(rules, after);
            CaseFileStore.save(before, after, file);
            console.print(told(rules, after, course, before.caseFile().entries().size()));
            return ExitCode.OK.number();
        } catch (CaseFileException e) {
            throw Refusal.badInput(String.valueOf(e.getMessage()));
        } catch (TimelineException e) {
            throw new Refusal(ExitCode.BAD_INPUT, e.problems());
        }
    }

    /** A date far ahead would keep out whatever is recorded after it. */
    private Instant when(CaseFile before) {
        Instant now = console.clock().instant().truncatedTo(ChronoUnit.SECONDS);
        Instant said = time.map(this::parsed).orElse(now);
        Instant latest = before.entries().stream().map(Entry::at).reduce(now, (a, b) -> a.isAfter(b) ? a : b);
        if (said.isAfter(latest.plus(1, ChronoUnit.DAYS))) {
            throw Refusal.badInput("--time " + Quoted.of(time.orElse("")) + " lies more than a day ahead of this"
                    + " computer's clock (" + now + "); correct one of them");
        }
        return said;
    }

    private Instant parsed(String said) {
        try {
            return Instant.parse(said);
        } catch (DateTimeException e) {
            throw Refusal.badInput(
                    "--time " + Quoted.of(said) + " is no point in time; write it like 2026-11-20T10:00:00Z");
        }
    }

    private CaseFile tried(CaseFile before, Stamp stamp) {
        String id = before.nextId();
        CaseFile tried = before.with(new Try(id, stamp.at(), stamp.by(), one("CONFIRMATION"), stamp.remark()));
        return results.isEmpty()
                ? tried
                : reports(tried, new Stamp(stamp.at(), stamp.by(), ""), EvidenceKind.LOOK, results, Optional.of(id));
    }

    private CaseFile reports(
            CaseFile before, Stamp stamp, EvidenceKind evidence, List<String> said, Optional<String> resultOf) {
        if (said.isEmpty()) {
            throw Refusal.badInput("say what was reported, as ID=ANSWER");
        }
        CaseFile after = before;
        for (String pair : said) {
            String[] parts = pair.split("=", 2);
            if (parts.length < 2 || parts[0].isBlank() || parts[1].isBlank()) {
                throw Refusal.badInput(Quoted.of(pair) + " is no ID=ANSWER, such as crease-blobs=yes");
            }
            after = after.with(new Report(
                    after.nextId(),
                    stamp.at(),
                    stamp.by(),
                    evidence,
                    parts[0].strip(),
                    parts[1].strip(),
                    resultOf,
                    stamp.remark()));
        }
        return after;
    }

    private Money amount() {
        if (what.size() != 2) {
            throw Refusal.badInput(
                    Quoted.of(kind) + " takes an amount and its currency, as in: " + kind + " 120.00 EUR");
        }
        try {
            return Price.amount(what.get(0), what.get(1));
        } catch (IllegalArgumentException e) {
            throw Refusal.badInput(String.valueOf(e.getMessage()));
        }
    }

    private List<String> some(String name) {
        if (what.isEmpty()) {
            throw Refusal.badInput(Quoted.of(kind) + " needs " + name + "; see: hingewise record --help");
        }
        return what;
    }

    private String one(String name) {
        if (some(name).size() > 1) {
            throw Refusal.badInput(
                    Quoted.of(kind) + " takes one " + name + ", but here are " + Quoted.of(String.join(" ", what)));
        }
        return what.get(0);
    }

    private Page told(RuleBook rules, CaseFile after, Course course, int from) {
        Page page = new Page(console.look());
        Readings readings = Readings.of(rules, after);
        for (int i = from; i < after.entries().size(); i++) {
            Entry entry = after.entries().get(i);
            page.hanging(0, String.format("%-6s", entry.id()), EntryText.of(rules, entry));
            HistoryCommand.oddities(page, rules, readings, entry);
            HistoryCommand.shifts(page, rules, course, i, console.look());
        }
        return page;
    }
}
