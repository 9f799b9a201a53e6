package hingewise.report.handbook;

import hingewise.rulebook.Cause;
import hingewise.rulebook.Caution;
import hingewise.rulebook.Choice;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.History;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Phrase;
import hingewise.rulebook.Phrases;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Sign;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Articles on what is asked, checked and tried: observations, choices, confirmations. */
final class QuestionArticles {
    private static final String CHOICES = "Questions with several answers";
    private static final String CLOSED = "On the closed phone";

    private final RuleBook rules;
    private final Refs refs;

    QuestionArticles(RuleBook rules) {
        this.rules = rules;
        this.refs = Refs.in(rules);
    }

    Article observation(Observation o) {
        return new Article.Draft(
                        refs.observation(o.id()),
                        o.access().map(a -> refs.access(a).label()).orElse(CLOSED),
                        o.question() + " " + o.look())
                .fact(Words.when(o.moments()))
                .fact(Words.needs(rules, o.needs()))
                .fact(Words.needs(rules, o.askedIf()))
                .fact(refs.path(
                        o.families(),
                        r -> Optional.ofNullable(r.observations().get(o.id())).flatMap(Observation::access)))
                .fact(Words.onlyFor(rules, o.families()))
                .fact(
                        o.fitful().isPresent()
                                ? "Comes and goes: shows at one look with a chance of "
                                        + Words.percent(o.fitful().getAsDouble()) + "."
                                : "")
                .group("What shows it", shownBy(o))
                .group("How far an answer is believed", believed(o))
                .group(
                        "What settles it",
                        rules.confirmations().values().stream()
                                .filter(c -> c.settles().contains(o.id()))
                                .map(c -> Item.of(Words.minutes(c.minutes()), refs.confirmation(c.id())))
                                .toList())
                .group(
                        "Asked together with others as",
                        rules.choices().values().stream()
                                .filter(c -> c.answers().values().stream()
                                        .anyMatch(a -> a.settles().containsKey(o.id())))
                                .map(c -> Item.of(refs.choice(c.id())))
                                .toList())
                .group("Sellers say yes", said(o.phrases(), Phrases.Said::yes))
                .group("Sellers say no", said(o.phrases(), Phrases.Said::no))
                .group(
                        "A yes brings up",
                        rules.cautions().values().stream()
                                .filter((Caution c) -> c.observations().contains(o.id()))
                                .map(c -> Item.of(refs.caution(c.id())))
                                .toList())
                .with(o.grounds());
    }

    /** The phrases of every language, as they stand in the rule book. */
    private static List<Item> said(Phrases phrases, Function<Phrases.Said, List<Phrase>> answer) {
        return phrases.byLanguage().entrySet().stream()
                .flatMap(l -> answer.apply(l.getValue()).stream().map(p -> Item.of(l.getKey(), p.written())))
                .toList();
    }

    private List<Item> shownBy(Observation o) {
        record Shown(Ref by, Sign sign) {}
        Stream<Shown> causes = rules.causes().values().stream()
                .flatMap((Cause c) -> c.signs().stream().map(s -> new Shown(refs.cause(c.id()), s)));
        Stream<Shown> histories = rules.histories().values().stream()
                .flatMap((History h) -> h.signs().stream().map(s -> new Shown(refs.history(h.id()), s)));
        Stream<Item> items = Stream.concat(causes, histories)
                .filter(s -> s.sign().observation().equals(o.id()))
                .sorted(Comparator.comparingDouble((Shown s) -> s.sign().strength())
                        .reversed())
                .map(s -> Item.of(
                        Words.percent(s.sign().strength()),
                        s.by(),
                        s.sign().because().orElse("")));
        return Stream.concat(items, Stream.of(Item.of(Words.percent(o.leak()), "no known cause")))
                .toList();
    }

    private static List<Item> believed(Observation o) {
        return Arrays.stream(EvidenceKind.values())
                .flatMap(kind -> Optional.ofNullable(o.reliability().get(kind))
                        .map(r -> Item.of(
                                kind.id(),
                                "says yes in " + Words.percent(r.sensitivity()) + " if it is so, no in "
                                        + Words.percent(r.specificity()) + " if not"))
                        .stream())
                .toList();
    }

    Article choice(Choice c) {
        return new Article.Draft(refs.choice(c.id()), CHOICES, c.question() + " " + c.look())
                .fact(Words.when(c.moments()))
                .fact(Words.onlyFor(rules, c.families()))
                .group(
                        "Answers",
                        c.answers().values().stream()
                                .map(a -> Item.of("", a.label() + ": " + settled(a.settles())))
                                .toList())
                .with(c.grounds());
    }

    private String settled(Map<String, Boolean> settles) {
        return settles.isEmpty()
                ? "says nothing."
                : String.join(
                        " ",
                        settles.entrySet().stream()
                                .map(s -> said(s.getKey(), s.getValue()))
                                .toList());
    }

    private String said(String observation, boolean yes) {
        Observation o = rules.observations().get(observation);
        return o == null ? observation : yes ? o.whenYes() : o.whenNo();
    }

    Article confirmation(Confirmation c) {
        Function<String, Ref> cause = refs::cause;
        return new Article.Draft(refs.confirmation(c.id()), kind(c), c.how())
                .fact(Words.minutes(c.minutes()) + " hands on"
                        + (c.cost().signum() > 0 ? ", " + Words.money(rules, c.cost()) : "") + ".")
                .fact(Words.when(c.moments()))
                .fact(Words.needs(rules, c.needs()))
                .fact(refs.path(
                        c.families(),
                        r -> Optional.ofNullable(r.confirmations().get(c.id())).flatMap(Confirmation::access)))
                .fact(Words.tools(rules, c.tools()))
                .fact(Words.onlyFor(rules, c.families()))
                .group("Cautions", refs.items(c.cautions(), refs::caution))
                .group("What it cures", refs.chances(c.cures(), cause))
                .group(
                        c.kind() == Confirmation.Kind.TRY ? "Look again afterwards" : "What it settles",
                        refs.items(c.settles(), refs::observation))
                .group("What it may damage", refs.damages(c.damages()))
                .with(c.grounds());
    }

    private String kind(Confirmation c) {
        return switch (c.kind()) {
            case QUESTION -> "To ask the seller";
            case CHECK -> c.access().isEmpty() ? "To check on the closed phone" : "To check inside";
            case TRY -> c.access().isEmpty() ? "To try on the closed phone" : "To try inside";
        };
    }
}
