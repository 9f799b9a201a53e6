package hingewise.terminal;

import hingewise.intake.ListingReader;
import hingewise.intake.Omissions;
import hingewise.intake.Suggestion;
import hingewise.plain.Guessed;
import hingewise.plain.Quoted;
import hingewise.rulebook.Choice;
import hingewise.rulebook.NearestId;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Question;
import hingewise.rulebook.RuleBook;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "read",
        description = {
            "Read the text of a listing and suggest what it claims, each with the words it rests on.",
            "",
            "Nothing is recorded: accept what you agree with, by \"record CASE claim ID=ANSWER\".",
            ""
        })
final class ReadCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "FILE", description = "The text; - reads it from the standard input.")
    private String file = "";

    @Option(names = "--family", paramLabel = "FAMILY", description = "The way of folding, if it is known.")
    private Optional<String> family = Optional.empty();

    @Option(names = "--json", description = "Print the suggestions as JSON, alone and complete.")
    private boolean json;

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Mixin
    private ColourOption colour = new ColourOption();

    ReadCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        RuleBook rules = rulesOption.read();
        family.filter(f -> !rules.families().containsKey(f)).ifPresent(f -> {
            throw Refusal.badInput("the rule book has no family " + Quoted.of(f) + ". "
                    + NearestId.advice(f, rules.families().keySet()));
        });
        Guessed text = Inputs.text(file);
        if (text.guessed()) {
            console.complain(file + " is not UTF-8 text, and was read as " + Guessed.GUESS);
        }
        ListingReader.Read read = rulesOption.reader(rules, console).read(text.text());
        List<Suggestion> suggestions = read.suggestions().stream()
                .filter(s -> family.map(f -> observation(rules, s).families().contains(f))
                        .orElse(true))
                .toList();
        if (json) {
            console.print(json(read.language(), suggestions));
        } else {
            console.print(page(rules, suggestions));
        }
        return ExitCode.OK.number();
    }

    private static Observation observation(RuleBook rules, Suggestion s) {
        return Objects.requireNonNull(rules.observations().get(s.observation()));
    }

    private static String json(String language, List<Suggestion> suggestions) {
        return Json.object(suggestions, (out, all) -> {
            out.writeStringField("language", language);
            Json.objects(out, "suggestions", all, (o, s) -> {
                o.writeStringField("observation", s.observation());
                o.writeStringField("answer", answer(s));
                o.writeNumberField("certainty", s.certainty());
                o.writeStringField("quote", s.quote());
                o.writeNumberField("start", s.start());
                o.writeNumberField("end", s.end());
            });
        });
    }

    private static String answer(Suggestion s) {
        return s.yes() ? Question.YES : Question.NO;
    }

    private Page page(RuleBook rules, List<Suggestion> suggestions) {
        Page page = new Page(colour.on(console.look()));
        page.heading("What the text seems to say");
        if (suggestions.isEmpty()) {
            page.line("Nothing that answers a question of the rule book.");
        }
        for (Suggestion s : suggestions) {
            Observation o = observation(rules, s);
            page.hanging(0, "-  ", s.yes() ? o.whenYes() : o.whenNo());
            page.hanging(3, "", "“" + s.quote() + "”");
            page.faint(3, o.id() + "=" + answer(s) + ", " + firmness(s));
        }
        Set<String> answered = suggestions.stream().map(Suggestion::observation).collect(Collectors.toSet());
        Omissions omissions = Omissions.of(rules, answered, family);
        page.heading("What to look for in the pictures");
        omissions.pictures().forEach(o -> page.hanging(0, "-  ", o.question() + " (" + o.id() + ")"));
        page.heading("What the text gives no word on");
        omissions.silent().stream().map(Choice::label).forEach(l -> page.hanging(0, "-  ", l));
        return page;
    }

    private static String firmness(Suggestion s) {
        String figure = String.format(Locale.ROOT, "certainty %.2f", s.certainty());
        return s.certainty() < Suggestion.PLAIN ? figure + ", not said plainly" : figure;
    }
}
