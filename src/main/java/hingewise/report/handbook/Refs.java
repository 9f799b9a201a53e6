package hingewise.report.handbook;

import hingewise.rulebook.Access;
import hingewise.rulebook.Damages;
import hingewise.rulebook.Family;
import hingewise.rulebook.RuleBook;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * References to entries by id.
 *
 * @param models the rule book as it is for each model
 */
record Refs(RuleBook rules, Map<Family, RuleBook> models) {
    /** Of a caution's name, in characters. */
    private static final int SHORTEST = 12;

    static Refs in(RuleBook rules) {
        Map<Family, RuleBook> models = new LinkedHashMap<>();
        rules.families().values().stream()
                .filter(f -> f.model().isPresent())
                .forEach(f -> models.put(f, rules.of(f.id())));
        return new Refs(rules, models);
    }

    Ref cause(String id) {
        return of(Chapter.CAUSES, id, rules.causes(), c -> c.label());
    }

    Ref observation(String id) {
        return of(Chapter.OBSERVATIONS, id, rules.observations(), o -> o.label());
    }

    Ref choice(String id) {
        return of(Chapter.OBSERVATIONS, id, rules.choices(), c -> c.label());
    }

    Ref confirmation(String id) {
        return of(Chapter.CONFIRMATIONS, id, rules.confirmations(), c -> c.label());
    }

    Ref component(String id) {
        return of(Chapter.COMPONENTS, id, rules.components(), c -> c.label());
    }

    Ref access(String id) {
        return of(Chapter.ACCESS, id, rules.access(), a -> a.label());
    }

    Ref part(String id) {
        return of(Chapter.PARTS, id, rules.parts(), p -> p.label());
    }

    Ref history(String id) {
        return of(Chapter.HISTORIES, id, rules.histories(), h -> h.label());
    }

    /** A caution is called by how it begins. */
    Ref caution(String id) {
        return of(Chapter.CAUTIONS, id, rules.cautions(), c -> beginning(c.text()));
    }

    /** The first sentence, or more of them where it is a mere "Stop." */
    private static String beginning(String text) {
        int end = text.indexOf(". ", SHORTEST);
        return end < 0 ? text : text.substring(0, end + 1);
    }

    private static <T> Ref of(Chapter chapter, String id, Map<String, T> all, Function<T, String> label) {
        return new Ref(chapter, id, Optional.ofNullable(all.get(id)).map(label).orElse(id));
    }

    List<Item> chances(Map<String, Double> chances, Function<String, Ref> ref) {
        return chances.entrySet().stream()
                .map(e -> Item.of(Words.percent(e.getValue()), ref.apply(e.getKey())))
                .toList();
    }

    /** Said of a chance that only holds where a cause is present before. */
    String whereAlready(String cause) {
        return "Where there is already: " + cause(cause).label() + ".";
    }

    /** What always may be damaged, then what may be where something is the matter already. */
    List<Item> damages(Damages damages) {
        Stream<Item> worse = damages.where().entrySet().stream()
                .flatMap(state -> state.getValue().entrySet().stream()
                        .map(brought -> Item.of(
                                Words.percent(brought.getValue()),
                                cause(brought.getKey()),
                                whereAlready(state.getKey()))));
        return Stream.concat(chances(damages.always(), this::cause).stream(), worse)
                .toList();
    }

    List<Item> items(Collection<String> ids, Function<String, Ref> ref) {
        return ids.stream().map(id -> Item.of(ref.apply(id))).toList();
    }

    /**
     * The steps of opening that lead to what an entry needs, in words, and where a model is opened in another way;
     * nothing for a closed phone.
     *
     * @param families families the entry is for
     * @param access the state the entry needs in a rule book
     */
    String path(Set<String> families, Function<RuleBook, Optional<String>> access) {
        String common = steps("To open: ", rules, access);
        return Stream.concat(
                        Stream.of(common),
                        models.entrySet().stream()
                                .filter(m -> families.contains(m.getKey().id()))
                                .filter(m -> !steps("To open: ", m.getValue(), access)
                                        .equals(common))
                                .map(m -> steps("On " + m.getKey().label() + ": ", m.getValue(), access)))
                .filter(s -> !s.isEmpty())
                .collect(Collectors.joining(" "));
    }

    private static String steps(String before, RuleBook rules, Function<RuleBook, Optional<String>> access) {
        List<Access> path = rules.pathTo(access.apply(rules));
        return path.isEmpty()
                ? ""
                : path.stream().map(Access::label).collect(Collectors.joining(", then ", before, "."));
    }
}
