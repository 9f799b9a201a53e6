package hingewise.terminal;

import hingewise.casefile.Report;
import hingewise.plain.Quoted;
import hingewise.rulebook.Choice;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.NearestId;
import hingewise.rulebook.Question;
import hingewise.rulebook.RuleBook;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** One {@code --seen} of a command line, {@code ID=ANSWER} or {@code ID=ANSWER@KIND}, checked against a rule book. */
record SeenArgument(String written, Question question, String answer, EvidenceKind kind) {
    private static final Map<EvidenceKind, String> BY = Map.of(
            EvidenceKind.CLAIM, "seller",
            EvidenceKind.PHOTO, "picture",
            EvidenceKind.LOOK, "own look",
            EvidenceKind.METER, "own meter");

    /** All arguments as reports in the order given; refuses with every mistake in them. */
    static List<Report> reports(RuleBook rules, String family, List<String> arguments, Instant at) {
        List<String> problems = new ArrayList<>();
        List<SeenArgument> seen = new ArrayList<>();
        for (String argument : arguments) {
            try {
                seen.add(parse(rules, family, argument));
            } catch (Refusal e) {
                problems.addAll(e.lines());
            }
        }
        problems.addAll(contradictions(seen));
        if (!problems.isEmpty()) {
            throw new Refusal(ExitCode.BAD_INPUT, problems);
        }
        List<Report> reports = new ArrayList<>();
        for (SeenArgument s : seen) {
            String by = BY.getOrDefault(s.kind, s.kind.id());
            String id = "seen-" + (reports.size() + 1);
            reports.add(new Report(id, at, by, s.kind, s.question.id(), s.answer, Optional.empty(), ""));
        }
        return reports;
    }

    private static SeenArgument parse(RuleBook rules, String family, String argument) {
        int equals = argument.indexOf('=');
        if (equals < 1 || equals == argument.length() - 1) {
            throw refusal(argument, "write it as ID=ANSWER or ID=ANSWER@KIND, such as crease-blobs=yes@photo");
        }
        String id = argument.substring(0, equals).strip();
        String rest = argument.substring(equals + 1);
        int at = rest.indexOf('@');
        String answer = (at < 0 ? rest : rest.substring(0, at)).strip();
        Question question = question(rules, family, argument, id);
        if (!answer.equals(Report.CANT_TELL) && !question.answers().containsKey(answer)) {
            throw refusal(
                    argument,
                    Quoted.of(answer) + " is not an answer to \"" + id + "\"; use "
                            + String.join(", ", question.answers().keySet()) + " or " + Report.CANT_TELL);
        }
        return new SeenArgument(
                argument, question, answer, at < 0 ? EvidenceKind.LOOK : kind(argument, rest.substring(at + 1)));
    }

    private static Question question(RuleBook rules, String family, String argument, String id) {
        Question question = rules.question(id).orElseThrow(() -> {
            TreeSet<String> known = new TreeSet<>(rules.observations().keySet());
            known.addAll(rules.choices().keySet());
            return refusal(
                    argument, "the rule book has no observation " + Quoted.of(id) + ". " + NearestId.advice(id, known));
        });
        if (!question.families().contains(family)) {
            throw refusal(argument, "\"" + id + "\" is not asked of the family \"" + family + "\"; leave it out");
        }
        return question;
    }

    private static EvidenceKind kind(String argument, String word) {
        return Arrays.stream(EvidenceKind.values())
                .filter(k -> k.id().equals(word.strip().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> {
                    List<String> known = Arrays.stream(EvidenceKind.values())
                            .map(EvidenceKind::id)
                            .toList();
                    return refusal(
                            argument, Quoted.of(word) + " is not a kind of evidence; use " + String.join(", ", known));
                });
    }

    /** One source cannot say two things of one observation in one breath; two sources can. */
    private static List<String> contradictions(List<SeenArgument> seen) {
        record Said(SeenArgument by, boolean yes) {}
        Map<String, Said> first = new HashMap<>();
        List<String> problems = new ArrayList<>();
        for (SeenArgument s : seen) {
            Optional<Said> against = s.settles().entrySet().stream()
                    .map(e -> Optional.ofNullable(
                                    first.putIfAbsent(s.kind.id() + " " + e.getKey(), new Said(s, e.getValue())))
                            .filter(said -> said.yes != e.getValue()))
                    .flatMap(Optional::stream)
                    .findFirst();
            against.ifPresent(said -> problems.add("--seen " + Quoted.of(said.by.written) + " and --seen "
                    + Quoted.of(s.written) + " contradict each other, and both are a " + s.kind.id()
                    + "; keep one, or name the source of each, such as @claim and @look"));
        }
        return problems;
    }

    private Map<String, Boolean> settles() {
        return Optional.ofNullable(question.answers().get(answer))
                .map(Choice.Answer::settles)
                .orElse(Map.of());
    }

    private static Refusal refusal(String argument, String why) {
        return Refusal.badInput("--seen " + Quoted.of(argument) + ": " + why);
    }

    /** What the arguments say, for the title of the case they make. */
    static String title(List<String> arguments) {
        return arguments.isEmpty()
                ? "Nothing seen yet"
                : arguments.stream().map(Quoted::line).collect(Collectors.joining(" "));
    }
}
