package hingewise.terminal;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Report;
import hingewise.intake.ReplyReader;
import hingewise.intake.SellerQuestions;
import hingewise.plain.Guessed;
import hingewise.plain.Quoted;
import hingewise.rulebook.Language;
import hingewise.rulebook.NearestId;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Question;
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
        name = "ask",
        description = {
            "Write a short message to the seller with the questions worth most, or read the reply to it.",
            "",
            "The reply is read as answers to the questions that the case asks now, so read it before you record",
            "anything else. Nothing is recorded: accept what you agree with, by \"record CASE claim ID=ANSWER\".",
            ""
        })
final class AskCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "CASE", description = "A case file.")
    private Path file = Path.of("");

    @Option(
            names = "--language",
            paramLabel = "ID",
            description =
                    "Only in this language; in all if left out, English first unless the claims' remarks are in another.")
    private Optional<String> language = Optional.empty();

    @Option(names = "--reply", paramLabel = "FILE", description = "The seller's reply; - reads the standard input.")
    private Optional<String> reply = Optional.empty();

    @Option(names = "--json", description = "Print the questions, or the answers of a reply, as JSON.")
    private boolean json;

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Mixin
    private FiguresOption figures = new FiguresOption();

    AskCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        RuleBook rules = rulesOption.read();
        CaseFile caseFile = Inputs.caseFile(file);
        List<Language> languages = SellerQuestions.languages(rules, caseFile)
                .filter(l -> language.map(l.id()::equals).orElse(true))
                .toList();
        if (languages.isEmpty()) {
            List<String> known =
                    SellerQuestions.languages(rules).map(Language::id).toList();
            throw Refusal.badInput("no message can be written in " + Quoted.of(language.orElse("")) + ". "
                    + NearestId.advice(language.orElse(""), known));
        }
        List<Observation> asked =
                SellerQuestions.of(rules, figures.assessor(rules, console).assess(caseFile));
        if (asked.isEmpty()) {
            throw Refusal.badInput("there is nothing left to ask the seller: the phone was looked at already, or every"
                    + " question is answered");
        }
        if (reply.isPresent()) {
            answers(new ReplyReader(rules, rulesOption.reader(rules, console)).read(asked, text(reply.get())), asked);
        } else {
            questions(asked, languages);
        }
        return ExitCode.OK.number();
    }

    private String text(String name) {
        Guessed text = Inputs.text(name);
        if (text.guessed()) {
            console.complain(name + " is not UTF-8 text, and was read as " + Guessed.GUESS);
        }
        return text.text();
    }

    private void questions(List<Observation> asked, List<Language> languages) {
        if (json) {
            console.print(Json.object(asked, (out, all) -> {
                Json.objects(out, "questions", all, (o, q) -> o.writeStringField("observation", q.id()));
                Json.objects(out, "messages", languages, (o, l) -> {
                    o.writeStringField("language", l.id());
                    o.writeStringField("text", String.join("\n", SellerQuestions.message(l, asked)));
                });
            }));
            return;
        }
        Page page = new Page(console.look());
        for (Language l : languages) {
            if (languages.size() > 1) {
                page.heading(l.label());
            }
            SellerQuestions.message(l, asked).forEach(line -> {
                if (line.isEmpty()) {
                    page.blank();
                } else {
                    page.unwrapped(line);
                }
            });
        }
        console.print(page);
    }

    private void answers(List<ReplyReader.Answer> answers, List<Observation> asked) {
        if (json) {
            console.print(Json.object(
                    answers,
                    (out, all) -> Json.objects(out, "answers", all, (o, a) -> {
                        o.writeStringField("observation", a.observation().id());
                        o.writeStringField("answer", answer(a));
                        o.writeStringField("quote", a.quote());
                    })));
            return;
        }
        Page page = new Page(console.look());
        for (ReplyReader.Answer a : answers) {
            page.unwrapped(a.observation().id() + "=" + answer(a));
            page.faint(3, "“" + a.quote() + "”");
        }
        List<Observation> open = asked.stream()
                .filter(o -> answers.stream().noneMatch(a -> a.observation().equals(o)))
                .toList();
        open.forEach(o -> page.hanging(0, "", "No clear answer to: " + o.question()));
        console.print(page);
    }

    private static String answer(ReplyReader.Answer a) {
        return a.answer().map(yes -> yes ? Question.YES : Question.NO).orElse(Report.CANT_TELL);
    }
}
