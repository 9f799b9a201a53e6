package hingewise.terminal;

import hingewise.plain.Quoted;
import hingewise.report.handbook.Article;
import hingewise.report.handbook.Group;
import hingewise.report.handbook.Handbook;
import hingewise.report.handbook.Item;
import hingewise.rulebook.NearestId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "explain",
        description = {"Say all that the rule book knows of a cause, an observation, a confirmation, a part …", ""})
final class ExplainCommand implements Callable<Integer> {
    private static final int INDENT = 2;
    private static final int FIGURE = 9;

    private final Console console;

    @Parameters(paramLabel = "ID", description = "Its id, as assess, observations and check-rules print it.")
    private String id = "";

    @Mixin
    private RulesOption rules = new RulesOption();

    @Mixin
    private ColourOption colour = new ColourOption();

    ExplainCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Handbook handbook = Handbook.of(rules.read());
        List<Article> articles = handbook.about(id);
        if (articles.isEmpty()) {
            throw Refusal.badInput(
                    "the rule book has nothing called " + Quoted.of(id) + ". " + NearestId.advice(id, handbook.ids()));
        }
        Page page = new Page(colour.on(console.look()));
        articles.forEach(a -> write(page, a));
        console.print(page);
        return ExitCode.OK.number();
    }

    private static void write(Page page, Article article) {
        page.heading(article.self().label());
        page.faint(
                0,
                article.self().chapter().singular() + " " + article.self().id()
                        + (article.under().isEmpty() ? "" : "; " + article.under()));
        if (!article.lead().isEmpty()) {
            page.line(article.lead());
        }
        article.grounds().ifPresent(g -> page.line(g.because()).faint(0, "Source: " + g.source()));
        article.facts().forEach(page::line);
        for (Group group : article.groups()) {
            page.blank().hanging(0, "", group.heading(), Optional.of(Tint.HEADING));
            boolean figures = group.items().stream().anyMatch(i -> !i.figure().isEmpty());
            group.items().forEach(i -> page.hanging(INDENT, figures ? figure(i) : "", words(i)));
        }
    }

    private static String figure(Item item) {
        String figure = item.figure();
        return " ".repeat(Math.max(0, FIGURE - figure.length())) + figure + "  ";
    }

    private static String words(Item item) {
        return Stream.of(item.about().map(r -> r.label() + " (" + r.id() + ")").orElse(""), item.text())
                .filter(s -> !s.isEmpty())
                .collect(Collectors.joining(". "));
    }
}
