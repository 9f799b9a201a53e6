package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import hingewise.rulebook.Access;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Choice;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Damages;
import hingewise.rulebook.Family;
import hingewise.rulebook.Language;
import hingewise.rulebook.Marginal;
import hingewise.rulebook.Model;
import hingewise.rulebook.NearestId;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Part;
import hingewise.rulebook.Phrase;
import hingewise.rulebook.Phrases;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.RuleCase;
import hingewise.rulebook.Sign;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What can only be judged once every entry is read: circles, and entries that no family brings together. */
final class Consistency {
    private final RuleBook rules;
    private final Entries entries;
    private final Problems problems;

    Consistency(RuleBook rules, Entries entries, Problems problems) {
        this.rules = rules;
        this.entries = entries;
        this.problems = problems;
    }

    void check() {
        circles(
                Section.OBSERVATIONS,
                "needs",
                rules.observations(),
                o -> o.needs().keySet());
        circles(
                Section.OBSERVATIONS,
                "asked-if",
                rules.observations(),
                o -> o.askedIf().keySet());
        circles(
                Section.ACCESS,
                "parent",
                rules.access(),
                a -> a.parent().stream().toList());
        seenFirst(
                rules,
                "",
                (step, what) -> tell(
                        new Spot(Section.ACCESS, step.access(), "needs", step.observation()),
                        what,
                        "What is asked before opening must be seen without it: ask for something else, or leave it out."));
        circles(Section.PARTS, "alongside", rules.parts(), Part::alongside);
        rules.families().values().stream().flatMap(f -> f.model().stream()).forEach(this::model);
        rules.causes().values().forEach(this::cause);
        rules.observations().values().forEach(this::observation);
        rules.hints().values().forEach(h -> wordSets(Section.HINTS, h.id(), h.phrases()));
        rules.choices().values().forEach(this::choice);
        rules.confirmations().values().forEach(this::confirmation);
        rules.access().values().forEach(this::access);
        rules.parts().values().forEach(this::part);
        rules.marginals().values().forEach(this::marginal);
        rules.cases().forEach(this::ruleCase);
    }

    private <T> void circles(
            Section section, String key, Map<String, T> all, Function<T, ? extends Collection<String>> arrows) {
        Map<String, Collection<String>> graph = new LinkedHashMap<>();
        all.forEach((id, entry) -> graph.put(id, arrows.apply(entry)));
        for (List<String> circle : Circles.in(graph)) {
            String first = circle.get(0);
            String second = circle.get(circle.size() > 1 ? 1 : 0);
            String way = Stream.concat(circle.stream(), Stream.of(first)).collect(Collectors.joining(" -> "));
            tell(
                    new Spot(section, first, key, second),
                    Quoted.of(key) + " goes in a circle: " + way,
                    "Take one step of the circle out.");
        }
    }

    /** Tells of each answer that is needed before something is opened and cannot be had before it is. */
    private static void seenFirst(RuleBook rules, String where, BiConsumer<Foregoing.Step, String> tell) {
        Foregoing.circles(rules)
                .forEach(step -> tell.accept(
                        step,
                        Quoted.of(step.observation()) + " must be answered before " + Quoted.of(step.access()) + where
                                + ", and is not seen before that is open"));
    }

    /** What a model says beside its family must be about something, and must lead to an open phone. */
    private void model(Model model) {
        RuleBook own = rules.of(model.id());
        Map<String, Collection<String>> parents = new LinkedHashMap<>();
        own.access().forEach((id, a) -> parents.put(id, a.parent().stream().toList()));
        if (model.opens().states().size() > 0) {
            for (List<String> circle : Circles.in(parents)) {
                tell(
                        new Spot(Section.MODELS, model.id(), "opens", circle.get(0)),
                        "opening goes in a circle on this model: " + String.join(" -> ", circle) + " -> "
                                + circle.get(0),
                        "Take one step of the circle out.");
            }
        }
        seenFirst(own, " on this model", (step, what) -> {
            if (!Foregoing.circles(rules).contains(step)) {
                tell(
                        new Spot(Section.MODELS, model.id(), "opens", step.access()),
                        what,
                        "Let it be opened otherwise, or take it out.");
            }
        });
        model.signs()
                .forEach((cause, signs) -> Optional.ofNullable(rules.causes().get(cause))
                        .ifPresent(c -> signs.keySet().stream()
                                .filter(o -> rules.observations().containsKey(o))
                                .filter(o -> c.signs().stream()
                                        .noneMatch(s -> s.observation().equals(o)))
                                .forEach(o -> tell(
                                        new Spot(Section.MODELS, model.id(), "signs", cause),
                                        Quoted.of(cause) + " does not show " + Quoted.of(o) + " on any model",
                                        "Take it out, or add the sign to the cause."))));
    }

    private void cause(Cause cause) {
        Set<String> having = familiesWith(cause.component());
        if (having.isEmpty() && rules.components().containsKey(cause.component())) {
            tell(
                    new Spot(Section.CAUSES, cause.id(), "component", cause.component()),
                    "no family has component " + Quoted.of(cause.component()),
                    "Add it to the components of a family, or take the cause out.");
        }
        Owner owner = new Owner(Section.CAUSES, cause.id(), having);
        List<String> signs = cause.signs().stream().map(Sign::observation).toList();
        meets(owner, "signs", signs, this::familiesAsked);
    }

    private void observation(Observation o) {
        Owner owner = new Owner(Section.OBSERVATIONS, o.id(), o.families());
        covered(owner, "needs", o.needs().keySet(), this::familiesAsked);
        covered(owner, "asked-if", o.askedIf().keySet(), this::familiesAsked);
        covered(owner, "access", o.access().stream().toList(), this::familiesOpened);
        wordSets(Section.OBSERVATIONS, o.id(), o.phrases());
    }

    private void wordSets(Section section, String id, Phrases phrases) {
        phrases.byLanguage()
                .forEach((language, said) -> Stream.of(said.yes(), said.no())
                        .flatMap(List::stream)
                        .forEach(phrase -> wordSets(section, id, language, phrase)));
    }

    private void wordSets(Section section, String id, String language, Phrase phrase) {
        Language l = rules.languages().get(language);
        phrase.sets()
                .filter(s -> l != null && !l.sets().containsKey(s))
                .forEach(s -> tell(
                        new Spot(section, id, "phrases", phrase.written()),
                        Quoted.of(s) + " is not a word set of language " + Quoted.of(language),
                        NearestId.advice(s, Objects.requireNonNull(l).sets().keySet())));
    }

    private void choice(Choice choice) {
        Owner owner = new Owner(Section.CHOICES, choice.id(), choice.families());
        Set<String> settled = choice.answers().values().stream()
                .flatMap(a -> a.settles().keySet().stream())
                .collect(Collectors.toSet());
        meets(owner, "answers", settled, this::familiesAsked);
    }

    private void confirmation(Confirmation c) {
        Owner owner = new Owner(Section.CONFIRMATIONS, c.id(), c.families());
        covered(owner, "needs", c.needs().keySet(), this::familiesAsked);
        covered(owner, "access", c.access().stream().toList(), this::familiesOpened);
        meets(owner, "settles", c.settles(), this::familiesAsked);
        meets(owner, "cures", c.cures().keySet(), this::familiesSuffering);
        damages(owner, c.damages());
    }

    private void access(Access a) {
        Owner owner = new Owner(Section.ACCESS, a.id(), a.families());
        covered(owner, "parent", a.parent().stream().toList(), this::familiesOpened);
        covered(owner, "needs", a.needs().keySet(), this::familiesAsked);
        damages(owner, a.damages());
    }

    private void damages(Owner owner, Damages damages) {
        meets(owner, "damages", damages.always().keySet(), this::familiesSuffering);
        damages.where().forEach((present, brought) -> {
            meets(owner, "damages-where", List.of(present), this::familiesSuffering);
            meets(owner, "damages-where", brought.keySet(), this::familiesSuffering);
        });
    }

    private void part(Part p) {
        Owner owner = new Owner(Section.PARTS, p.id(), p.families());
        covered(owner, "access", p.access().stream().toList(), this::familiesOpened);
        covered(owner, "alongside", p.alongside(), this::familiesFitted);
        meets(owner, "renews", p.renews(), this::familiesWith);
    }

    private void marginal(Marginal m) {
        Owner owner = new Owner(Section.MARGINALS, m.id(), m.families());
        meets(owner, "causes", m.causes(), this::familiesSuffering);
    }

    private void ruleCase(RuleCase c) {
        if (!rules.families().containsKey(c.family())) {
            return;
        }
        Owner owner = new Owner(Section.CASES, c.id(), Set.of(c.family()));
        RuleCase.Expect expect = c.expect();
        Stream<String> causes = Stream.of(expect.leads().stream(), expect.among().stream(), expect.notAmong().stream())
                .flatMap(s -> s);
        meets(owner, "expect", causes.toList(), this::familiesSuffering);
        Stream<String> first = Stream.concat(expect.firstTry().stream(), expect.firstInside().stream());
        meets(owner, "expect", first.toList(), this::familiesConfirmed);
        Stream<String> parts = Stream.concat(expect.parts().stream(), expect.noParts().stream());
        meets(owner, "expect", parts.toList(), this::familiesFitted);
    }

    /** An entry with the families it is for. */
    private record Owner(Section section, String id, Set<String> families) {}

    /** A key of an entry, and a name within its value. */
    private record Spot(Section section, String id, String key, String name) {}

    /** Each of the names must be there in every family of the owner. */
    private void covered(Owner owner, String key, Collection<String> names, Function<String, Set<String>> familiesOf) {
        for (String name : names) {
            Set<String> theirs = familiesOf.apply(name);
            List<String> lacking =
                    known(owner).filter(f -> !theirs.contains(f)).sorted().toList();
            if (!theirs.isEmpty() && !lacking.isEmpty()) {
                tell(
                        new Spot(owner.section(), owner.id(), key, name),
                        Quoted.of(name) + " is not there in family " + String.join(", ", lacking) + ", and "
                                + owner.section().singular() + " " + Quoted.of(owner.id()) + " is",
                        "Make their \"families\" agree.");
            }
        }
    }

    /** Each of the names must be there in at least one family of the owner. */
    private void meets(Owner owner, String key, Collection<String> names, Function<String, Set<String>> familiesOf) {
        for (String name : names) {
            Set<String> theirs = familiesOf.apply(name);
            if (!theirs.isEmpty()
                    && known(owner).findAny().isPresent()
                    && known(owner).noneMatch(theirs::contains)) {
                tell(
                        new Spot(owner.section(), owner.id(), key, name),
                        Quoted.of(name) + " is there in no family of "
                                + owner.section().singular() + " " + Quoted.of(owner.id()),
                        "Take it out, or make their families agree.");
            }
        }
    }

    private Stream<String> known(Owner owner) {
        return owner.families().stream().filter(rules.families()::containsKey);
    }

    private Set<String> familiesWith(String component) {
        return rules.families().values().stream()
                .filter(f -> f.components().contains(component))
                .map(Family::id)
                .collect(Collectors.toSet());
    }

    /** The families of an entry; none when it could not be read. */
    private static <T> Set<String> of(Map<String, T> all, String id, Function<T, Set<String>> families) {
        return Optional.ofNullable(all.get(id)).map(families).orElse(Set.of());
    }

    private Set<String> familiesAsked(String id) {
        return of(rules.observations(), id, Observation::families);
    }

    private Set<String> familiesOpened(String id) {
        return of(rules.access(), id, Access::families);
    }

    private Set<String> familiesSuffering(String id) {
        return of(rules.causes(), id, c -> familiesWith(c.component()));
    }

    private Set<String> familiesConfirmed(String id) {
        return of(rules.confirmations(), id, Confirmation::families);
    }

    private Set<String> familiesFitted(String id) {
        return of(rules.parts(), id, Part::families);
    }

    private void tell(Spot spot, String what, String advice) {
        entries.find(spot.section(), spot.id())
                .ifPresent(e -> problems.add(e.placeOf(spot.key(), spot.name()), what, advice));
    }
}
