package hingewise.report.handbook;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Phone;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.Diagnostician;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A rule book as articles.
 *
 * @param title of the rule book
 * @param articles in the order of the rule book, by chapter
 */
public record Handbook(String title, Map<Chapter, List<Article>> articles) {
    public Handbook {
        articles = Map.copyOf(articles);
    }

    public static Handbook of(RuleBook rules) {
        CauseArticles causes = new CauseArticles(rules, priors(rules));
        QuestionArticles questions = new QuestionArticles(rules);
        ThingArticles things = new ThingArticles(rules);
        Map<Chapter, List<Article>> articles = new LinkedHashMap<>();
        for (Chapter chapter : Chapter.values()) {
            Stream<Article> all = switch (chapter) {
                case CAUSES -> rules.causes().values().stream().map(causes::cause);
                case OBSERVATIONS ->
                    Stream.concat(
                            rules.choices().values().stream().map(questions::choice),
                            rules.observations().values().stream().map(questions::observation));
                case CONFIRMATIONS -> rules.confirmations().values().stream().map(questions::confirmation);
                case COMPONENTS -> rules.components().values().stream().map(things::component);
                case ACCESS -> rules.access().values().stream().map(things::access);
                case PARTS -> rules.parts().values().stream().map(things::part);
                case HISTORIES -> rules.histories().values().stream().map(causes::history);
                case CAUTIONS -> rules.cautions().values().stream().map(things::caution);
            };
            articles.put(chapter, all.toList());
        }
        return new Handbook(rules.title(), articles);
    }

    private static Map<String, Map<String, Double>> priors(RuleBook rules) {
        Map<String, Map<String, Double>> priors = new LinkedHashMap<>();
        for (String family : rules.families().keySet()) {
            Diagnosis unknown = new Diagnostician(rules)
                    .diagnose(new CaseFile("nothing known", false, new Phone(family, ""), List.of()));
            priors.put(
                    family,
                    unknown.causes().stream()
                            .collect(Collectors.toMap(c -> c.cause().id(), c -> c.prior())));
        }
        return priors;
    }

    /** The articles of a chapter in the order of the rule book. */
    public List<Article> of(Chapter chapter) {
        return articles.getOrDefault(chapter, List.of());
    }

    /** The articles of a chapter under their headings; one heading may be empty. */
    public Map<String, List<Article>> byHeading(Chapter chapter) {
        return of(chapter).stream()
                .collect(Collectors.groupingBy(Article::under, LinkedHashMap::new, Collectors.toList()));
    }

    /** Every article on an entry of this id; ids are told apart only within a chapter. */
    public List<Article> about(String id) {
        List<Article> found = new ArrayList<>();
        for (Chapter chapter : Chapter.values()) {
            of(chapter).stream().filter(a -> a.self().id().equals(id)).forEach(found::add);
        }
        return found;
    }

    /** The ids of all articles. */
    public List<String> ids() {
        return articles.values().stream()
                .flatMap(List::stream)
                .map(a -> a.self().id())
                .distinct()
                .sorted()
                .toList();
    }
}
