package hingewise.report.handbook;

import hingewise.rulebook.Access;
import hingewise.rulebook.Caution;
import hingewise.rulebook.Component;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Articles on what a phone is made of, how it is opened, what is bought for it, and what to beware of. */
final class ThingArticles {
    private final RuleBook rules;
    private final Refs refs;

    ThingArticles(RuleBook rules) {
        this.rules = rules;
        this.refs = Refs.in(rules);
    }

    Article component(Component component) {
        Set<String> having = rules.families().values().stream()
                .filter(f -> f.components().contains(component.id()))
                .map(f -> f.id())
                .collect(Collectors.toSet());
        return new Article.Draft(refs.component(component.id()), "", "")
                .fact(Words.onlyFor(rules, having))
                .group(
                        "What fails in it",
                        rules.causes().values().stream()
                                .filter(c -> c.component().equals(component.id()))
                                .map(c -> Item.of(refs.cause(c.id())))
                                .toList())
                .group(
                        "What renews it",
                        rules.parts().values().stream()
                                .filter(p -> p.renews().contains(component.id()))
                                .map(p -> Item.of(p.form().id(), refs.part(p.id())))
                                .toList())
                .withoutGrounds();
    }

    Article access(Access access) {
        return new Article.Draft(refs.access(access.id()), "", "")
                .fact(refs.path(access.families(), r -> Optional.of(access.id())))
                .fact(Words.minutes(access.minutes()) + " for this step, in and out again"
                        + (access.cost().signum() > 0 ? ", " + Words.money(rules, access.cost()) : "") + ".")
                .fact(Words.needs(rules, access.needs()))
                .fact(Words.tools(rules, access.tools()))
                .fact(Words.onlyFor(rules, access.families()))
                .group(
                        "Cautions",
                        refs.items(
                                Stream.concat(
                                                access.cautions().stream(),
                                                rules.cautions().values().stream()
                                                        .filter(c -> c.access().contains(access.id()))
                                                        .map(Caution::id))
                                        .distinct()
                                        .toList(),
                                refs::caution))
                .group("What it may damage", refs.damages(access.damages()))
                .group(
                        "What is done there",
                        rules.confirmations().values().stream()
                                .filter(c -> c.access().equals(Optional.of(access.id())))
                                .map(c -> Item.of(Words.minutes(c.minutes()), refs.confirmation(c.id())))
                                .toList())
                .group(
                        "What is seen there",
                        rules.observations().values().stream()
                                .filter(o -> o.access().equals(Optional.of(access.id())))
                                .map(o -> Item.of(refs.observation(o.id())))
                                .toList())
                .group(
                        "What is fitted there",
                        rules.parts().values().stream()
                                .filter(p -> p.access().equals(Optional.of(access.id())))
                                .map(p -> Item.of(refs.part(p.id())))
                                .toList())
                .with(access.grounds());
    }

    Article part(Part part) {
        return new Article.Draft(refs.part(part.id()), form(part.form()), "")
                .fact(Words.minutes(part.minutes()) + " to fit.")
                .fact(refs.path(
                        part.families(),
                        r -> Optional.ofNullable(r.parts().get(part.id())).flatMap(Part::access)))
                .fact(Words.onlyFor(rules, part.families()))
                .group("What it renews", refs.items(part.renews(), refs::component))
                .group("To be bought with it", refs.items(part.alongside(), refs::part))
                .with(part.grounds());
    }

    private static String form(Part.Form form) {
        return switch (form) {
            case ASSEMBLY -> "Assemblies";
            case SINGLE -> "Single parts";
            case CONSUMABLE -> "Consumables";
        };
    }

    Article caution(Caution caution) {
        return new Article.Draft(
                        refs.caution(caution.id()), caution.stops() ? "Work stops" : "Take care", caution.text())
                .group("Comes up when this is seen", refs.items(caution.observations(), refs::observation))
                .group("Comes up when this is at least so likely", refs.chances(caution.causes(), refs::cause))
                .group(
                        "Comes up before",
                        Stream.concat(
                                        rules.access().values().stream()
                                                .filter(a -> caution.access().contains(a.id())
                                                        || a.cautions().contains(caution.id()))
                                                .map(a -> Item.of(refs.access(a.id()))),
                                        rules.confirmations().values().stream()
                                                .filter(c -> c.cautions().contains(caution.id()))
                                                .map(c -> Item.of(refs.confirmation(c.id()))))
                                .toList())
                .with(caution.grounds());
    }
}
