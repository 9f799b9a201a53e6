package hingewise.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import hingewise.plain.Quoted;
import hingewise.rulebook.Moment;
import hingewise.rulebook.NearestId;
import hingewise.rulebook.Question;
import hingewise.rulebook.RuleBook;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "observations",
        description = {"List every question with its answers and the moments at which it makes sense.", ""})
final class ObservationsCommand implements Callable<Integer> {
    private final Console console;

    @Option(names = "--family", paramLabel = "FAMILY", description = "Only what is asked of this family.")
    private Optional<String> family = Optional.empty();

    @Option(
            names = "--moment",
            paramLabel = "MOMENT",
            description = "Only what makes sense at listing, arrival, opened or after-repair.")
    private Optional<String> moment = Optional.empty();

    @Option(names = "--json", description = "Print the list as JSON.")
    private boolean json;

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Mixin
    private ColourOption colour = new ColourOption();

    ObservationsCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        RuleBook rules = rulesOption.read();
        family.ifPresent(f -> check("family", f, List.copyOf(rules.families().keySet())));
        List<String> moments = Arrays.stream(Moment.values()).map(Moment::id).toList();
        moment.ifPresent(m -> check("moment", m, moments));
        List<Question> questions = rules.questions().stream()
                .filter(q -> family.isEmpty() || q.families().contains(family.get()))
                .filter(q -> moment.isEmpty() || q.moments().stream().anyMatch(m -> m.id().equals(moment.get())))
                .toList();
        if (json) {
            console.print(Json.object(questions, (j, all) -> Json.objects(j, "questions", all, this::question)));
        } else {
            console.print(text(questions, colour.on(console.look())));
        }
        return ExitCode.OK.number();
    }

    private static void check(String what, String given, List<String> known) {
        if (!known.contains(given)) {
            throw Refusal.badInput(
                    "there is no " + what + " " + Quoted.of(given) + ". " + NearestId.advice(given, known));
        }
    }

    private static Page text(List<Question> questions, Look look) {
        Page page = new Page(look);
        for (Question q : questions) {
            page.hanging(0, "", q.id(), Optional.of(Tint.HEADING));
            page.hanging(4, "", q.question());
            page.hanging(4, "answers  ", answers(q));
            page.hanging(4, "moments  ", String.join(", ", moments(q)), Optional.of(Tint.FAINT));
        }
        return page.blank()
                .line(Figures.count(questions.size(), "question") + "; cant-tell answers every one of them.");
    }

    private static String answers(Question q) {
        return q.answers().entrySet().stream()
                .map(a -> a.getKey().equalsIgnoreCase(a.getValue().label())
                        ? a.getKey()
                        : a.getKey() + " (" + a.getValue().label() + ")")
                .collect(Collectors.joining(", "));
    }

    private static List<String> moments(Question q) {
        return q.moments().stream().sorted().map(Moment::id).toList();
    }

    private void question(JsonGenerator json, Question q) throws IOException {
        json.writeStringField("id", q.id());
        json.writeStringField("label", q.label());
        json.writeStringField("question", q.question());
        json.writeStringField("look", q.look());
        Json.objects(json, "answers", q.answers().entrySet(), (j, a) -> {
            j.writeStringField("id", a.getKey());
            j.writeStringField("label", a.getValue().label());
            j.writeObjectFieldStart("settles");
            for (Map.Entry<String, Boolean> s : a.getValue().settles().entrySet()) {
                j.writeBooleanField(s.getKey(), s.getValue());
            }
            j.writeEndObject();
        });
        Json.texts(json, "moments", moments(q));
        Json.texts(json, "families", new TreeSet<>(q.families()));
    }
}
