package hingewise.report.handbook;

import hingewise.rulebook.ByFamily;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Caution;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Damage;
import hingewise.rulebook.Damages;
import hingewise.rulebook.Family;
import hingewise.rulebook.History;
import hingewise.rulebook.Raise;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Sign;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Articles on what goes wrong and why: causes and histories. */
final class CauseArticles {
    private final RuleBook rules;
    private final Refs refs;
    private final Neighbours neighbours;
    private final Map<String, Map<String, Double>> priors;

    /** @param priors chance of each cause before anything is known, by family and cause */
    CauseArticles(RuleBook rules, Map<String, Map<String, Double>> priors) {
        this.rules = rules;
        this.refs = Refs.in(rules);
        this.neighbours = new Neighbours(rules, refs);
        this.priors = priors;
    }

    Article cause(Cause cause) {
        return new Article.Draft(
                        refs.cause(cause.id()),
                        refs.component(cause.component()).label(),
                        "")
                .fact("Before anything is known: " + before(cause) + ".")
                .fact("With none of its histories: " + rates(cause.baseRate()) + ".")
                .group(
                        "How it shows",
                        cause.signs().stream()
                                .sorted(Comparator.comparingDouble(Sign::strength)
                                        .reversed())
                                .map(s -> Item.of(
                                        Words.percent(s.strength()),
                                        refs.observation(s.observation()),
                                        s.because().orElse("")))
                                .toList())
                .group(
                        "What brings it about",
                        cause.raisedBy().stream()
                                .sorted(Comparator.comparingDouble(Raise::strength)
                                        .reversed())
                                .map(r -> Item.of(
                                        Words.percent(r.strength()),
                                        refs.history(r.history()),
                                        r.because().orElse("")))
                                .toList())
                .group("What confirms it", confirmations(cause))
                .group("What cures it", cures(cause))
                .group("Easily taken for", neighbours.of(cause))
                .group("May be brought about by", damaging(cause))
                .group("Makes riskier", makesWorse(cause))
                .group("Cautions", cautions(cause))
                .with(cause.grounds());
    }

    /** One figure where all families agree; a model is named where it differs from its family. */
    private String before(Cause cause) {
        Map<String, String> byFamily = new LinkedHashMap<>();
        rules.families().values().stream()
                .filter(f -> f.model()
                        .filter(m -> priors.getOrDefault(m.family(), Map.of())
                                .getOrDefault(cause.id(), 0.0)
                                .equals(priors.getOrDefault(f.id(), Map.of()).getOrDefault(cause.id(), 0.0)))
                        .isEmpty())
                .filter(f -> f.components().contains(cause.component()))
                .forEach(f -> byFamily.put(
                        f.label(),
                        Words.percent(priors.getOrDefault(f.id(), Map.of()).getOrDefault(cause.id(), 0.0))));
        Set<String> figures = new LinkedHashSet<>(byFamily.values());
        return figures.size() == 1
                ? figures.iterator().next()
                : byFamily.entrySet().stream()
                        .map(e -> e.getKey() + " " + e.getValue())
                        .collect(Collectors.joining(", "));
    }

    private String rates(ByFamily rate) {
        String exceptions = rules.families().values().stream()
                .filter(f -> rate.exceptions().containsKey(f.id()))
                .filter(f -> f.model()
                        .filter(m -> rate.in(m.family()) == rate.in(f.id()))
                        .isEmpty())
                .map((Family f) -> ", " + f.label() + " " + Words.percent(rate.in(f.id())))
                .collect(Collectors.joining());
        return Words.percent(rate.common()) + exceptions;
    }

    private List<Item> confirmations(Cause cause) {
        List<String> signs = cause.signs().stream().map(Sign::observation).toList();
        return rules.confirmations().values().stream()
                .filter(c -> c.kind() != Confirmation.Kind.TRY)
                .filter(c -> c.settles().stream().anyMatch(signs::contains))
                .sorted(Comparator.comparing((Confirmation c) -> c.access().isPresent())
                        .thenComparingDouble(Confirmation::minutes))
                .map(c -> Item.of(Words.minutes(c.minutes()), refs.confirmation(c.id()), inside(c.access())))
                .toList();
    }

    private String inside(Optional<String> access) {
        return access.map(a -> "Needs: " + refs.access(a).label() + ".").orElse("");
    }

    private List<Item> cures(Cause cause) {
        List<Item> cures = new ArrayList<>();
        rules.confirmations().values().stream()
                .filter(c -> c.cures().containsKey(cause.id()))
                .sorted(Comparator.comparingDouble((Confirmation c) -> c.cures().getOrDefault(cause.id(), 0.0))
                        .reversed())
                .map(c -> Item.of(
                        Words.percent(c.cures().getOrDefault(cause.id(), 0.0)),
                        refs.confirmation(c.id()),
                        inside(c.access())))
                .forEach(cures::add);
        rules.parts().values().stream()
                .filter(p -> p.renews().contains(cause.component()))
                .map(p -> Item.of("part", refs.part(p.id())))
                .forEach(cures::add);
        return cures;
    }

    private List<Item> damaging(Cause cause) {
        Stream<Item> confirmations = rules.confirmations().values().stream()
                .flatMap(c -> damaging(c.damages().to(cause.id()), refs.confirmation(c.id())));
        Stream<Item> openings = rules.access().values().stream()
                .flatMap(a -> damaging(a.damages().to(cause.id()), refs.access(a.id())));
        Stream<Item> lapses = rules.lapses().values().stream()
                .filter(l -> l.brings().containsKey(cause.id()))
                .map(l -> Item.of(Words.percent(l.brings().getOrDefault(cause.id(), 0.0)), l.label()));
        return Stream.of(confirmations, openings, lapses).flatMap(s -> s).toList();
    }

    private Stream<Item> damaging(Damage damage, Ref by) {
        return Stream.concat(
                Stream.of(damage.always()).filter(c -> c > 0).map(c -> Item.of(Words.percent(c), by)),
                damage.where().entrySet().stream()
                        .map(e -> Item.of(Words.percent(e.getValue()), by, refs.whereAlready(e.getKey()))));
    }

    private List<Item> makesWorse(Cause cause) {
        Stream<Item> confirmations = rules.confirmations().values().stream()
                .flatMap(c -> makesWorse(cause, c.damages(), refs.confirmation(c.id())));
        Stream<Item> openings =
                rules.access().values().stream().flatMap(a -> makesWorse(cause, a.damages(), refs.access(a.id())));
        return Stream.concat(confirmations, openings).toList();
    }

    private Stream<Item> makesWorse(Cause cause, Damages damages, Ref act) {
        return damages.where().getOrDefault(cause.id(), Map.of()).entrySet().stream()
                .map(e -> Item.of(
                        Words.percent(e.getValue()),
                        act,
                        "It may bring about: " + refs.cause(e.getKey()).label() + "."));
    }

    private List<Item> cautions(Cause cause) {
        return rules.cautions().values().stream()
                .filter(c -> c.causes().containsKey(cause.id()))
                .map((Caution c) -> Item.of(
                        "from " + Words.percent(c.causes().getOrDefault(cause.id(), 0.0)), refs.caution(c.id())))
                .toList();
    }

    Article history(History history) {
        return new Article.Draft(refs.history(history.id()), "", "")
                .fact("Among phones of which nothing is known: " + rates(history.rate()) + ".")
                .group(
                        "How it shows",
                        history.signs().stream()
                                .sorted(Comparator.comparingDouble(Sign::strength)
                                        .reversed())
                                .map(s -> Item.of(
                                        Words.percent(s.strength()),
                                        refs.observation(s.observation()),
                                        s.because().orElse("")))
                                .toList())
                .group("What it brings about", raised(history))
                .with(history.grounds());
    }

    private List<Item> raised(History history) {
        record Raised(Cause cause, Raise raise) {}
        return rules.causes().values().stream()
                .flatMap(c -> c.raisedBy().stream()
                        .filter(r -> r.history().equals(history.id()))
                        .map(r -> new Raised(c, r)))
                .sorted(Comparator.comparingDouble((Raised r) -> r.raise().strength())
                        .reversed())
                .map(r -> Item.of(
                        Words.percent(r.raise().strength()),
                        refs.cause(r.cause().id()),
                        r.raise().because().orElse("")))
                .toList();
    }
}
