package hingewise.rulebook;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Models laid over a rule book. A model is a family of its own beside the one it refines: entries for the family are for
 * the model as well, unless it lacks them. What must be open and how strongly causes show is the same for all families
 * in a rule book, so a model's own is put in its place when a phone of that model is looked at.
 */
final class ModelLayer {
    private final RuleBook rules;
    private final Model model;

    private ModelLayer(RuleBook rules, Model model) {
        this.rules = rules;
        this.model = model;
    }

    /** The rule book in which each of the models is a family too. A model of an unknown family is left out. */
    static RuleBook over(RuleBook rules, List<Model> models) {
        RuleBook all = rules;
        for (Model model : models) {
            if (rules.families().containsKey(model.family())) {
                all = new ModelLayer(all, model).joined();
            }
        }
        return all;
    }

    /** The rule book as it is for phones of this model alone. */
    static RuleBook within(RuleBook rules, Model model) {
        return new ModelLayer(rules, model).alone();
    }

    private RuleBook joined() {
        Family family = rules.family(model.family());
        Set<String> components = new LinkedHashSet<>(family.components());
        components.removeAll(model.lacks().components());
        Map<String, Family> families = new LinkedHashMap<>(rules.families());
        families.put(
                model.id(), new Family(model.id(), model.label(), components, Optional.of(model), model.grounds()));
        Model.Lacks lacks = model.lacks();
        return rules.with(
                families,
                each(rules.histories(), h -> new History(h.id(), h.label(), as(h.rate()), h.signs(), h.grounds())),
                each(rules.causes(), c -> cause(c, rate(c), c.signs())),
                each(
                        rules.observations(),
                        o -> observation(o, o.access(), and(o.families(), o.id(), lacks.observations()))),
                each(rules.choices(), this::choice),
                each(
                        rules.confirmations(),
                        c -> confirmation(c, c.access(), and(c.families(), c.id(), lacks.confirmations()))),
                each(rules.access(), a -> access(a, a.parent(), and(a.families(), a.id(), Set.of()))),
                each(rules.parts(), p -> part(p, p.access(), and(p.families(), p.id(), lacks.parts()))),
                each(rules.marginals(), this::marginal));
    }

    private RuleBook alone() {
        Model.Opens opens = model.opens();
        Map<String, Family> families = new LinkedHashMap<>(rules.families());
        Family own = rules.family(model.id());
        families.put(own.id(), new Family(own.id(), own.label(), own.components(), Optional.empty(), own.grounds()));
        return rules.with(
                families,
                rules.histories(),
                each(rules.causes(), c -> cause(c, c.baseRate(), signs(c))),
                each(
                        rules.observations(),
                        o -> observation(o, own(opens.observations(), o.id(), o.access()), o.families())),
                rules.choices(),
                each(
                        rules.confirmations(),
                        c -> confirmation(c, own(opens.confirmations(), c.id(), c.access()), c.families())),
                each(rules.access(), a -> access(a, own(opens.states(), a.id(), a.parent()), a.families())),
                each(rules.parts(), p -> part(p, own(opens.parts(), p.id(), p.access()), p.families())),
                rules.marginals());
    }

    private static Optional<String> own(Map<String, String> opens, String id, Optional<String> common) {
        return Optional.ofNullable(opens.get(id)).or(() -> common);
    }

    private static <T> Map<String, T> each(Map<String, T> entries, UnaryOperator<T> change) {
        Map<String, T> changed = new LinkedHashMap<>();
        entries.forEach((id, entry) -> changed.put(id, change.apply(entry)));
        return changed;
    }

    private Set<String> and(Set<String> families, String id, Set<String> lacking) {
        Set<String> all = new HashSet<>(families);
        if (families.contains(model.family()) && !lacking.contains(id)) {
            all.add(model.id());
        }
        return all;
    }

    private ByFamily as(ByFamily rate) {
        Map<String, Double> exceptions = new HashMap<>(rate.exceptions());
        Optional.ofNullable(exceptions.get(model.family())).ifPresent(r -> exceptions.put(model.id(), r));
        return new ByFamily(rate.common(), exceptions);
    }

    private ByFamily rate(Cause cause) {
        Map<String, Double> exceptions = new HashMap<>(as(cause.baseRate()).exceptions());
        Optional.ofNullable(model.baseRates().get(cause.id())).ifPresent(r -> exceptions.put(model.id(), r));
        return new ByFamily(cause.baseRate().common(), exceptions);
    }

    private List<Sign> signs(Cause cause) {
        Map<String, Double> own = model.signs().getOrDefault(cause.id(), Map.of());
        return cause.signs().stream()
                .map(s -> new Sign(s.observation(), own.getOrDefault(s.observation(), s.strength()), s.because()))
                .toList();
    }

    private static Cause cause(Cause c, ByFamily rate, List<Sign> signs) {
        return new Cause(c.id(), c.label(), c.component(), rate, c.raisedBy(), signs, c.grounds());
    }

    private static Observation observation(Observation o, Optional<String> access, Set<String> families) {
        return new Observation(
                o.id(),
                o.label(),
                o.question(),
                o.look(),
                o.whenYes(),
                o.whenNo(),
                o.moments(),
                o.needs(),
                o.askedIf(),
                access,
                o.leak(),
                o.fitful(),
                o.repeat(),
                o.reliability(),
                families,
                o.pictures(),
                o.phrases(),
                o.grounds());
    }

    private Choice choice(Choice c) {
        Set<String> families = and(c.families(), c.id(), model.lacks().choices());
        return new Choice(c.id(), c.label(), c.question(), c.look(), c.moments(), c.answers(), families, c.grounds());
    }

    private static Confirmation confirmation(Confirmation c, Optional<String> access, Set<String> families) {
        return new Confirmation(
                c.id(),
                c.kind(),
                c.label(),
                c.how(),
                c.minutes(),
                c.cost(),
                access,
                c.needs(),
                c.settles(),
                c.cures(),
                c.damages(),
                c.tools(),
                c.cautions(),
                c.moments(),
                families,
                c.grounds());
    }

    private static Access access(Access a, Optional<String> parent, Set<String> families) {
        return new Access(
                a.id(),
                a.label(),
                parent,
                a.minutes(),
                a.cost(),
                a.needs(),
                a.damages(),
                a.tools(),
                a.cautions(),
                families,
                a.grounds());
    }

    private static Part part(Part p, Optional<String> access, Set<String> families) {
        return new Part(
                p.id(), p.label(), p.form(), p.renews(), p.alongside(), access, p.minutes(), families, p.grounds());
    }

    private Marginal marginal(Marginal m) {
        Set<String> families = and(m.families(), m.id(), Set.of());
        return new Marginal(m.id(), m.label(), m.causes(), m.histories(), m.from(), m.to(), families, m.grounds());
    }
}
