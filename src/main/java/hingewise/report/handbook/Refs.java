package hingewise.report.handbook;

import hingewise.rulebook.Access;
import hingewise.rulebook.RuleBook;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** References to entries by id. */
record Refs(RuleBook rules) {
    /** Of a caution's name, in characters. */
    private static final int SHORTEST = 12;

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

    List<Item> items(Collection<String> ids, Function<String, Ref> ref) {
        return ids.stream().map(id -> Item.of(ref.apply(id))).toList();
    }

    /** The steps of opening that lead to a state, in words; nothing for a closed phone. */
    String path(Optional<String> access) {
        return access.isEmpty()
                ? ""
                : rules.pathTo(access).stream()
                        .map(Access::label)
                        .collect(Collectors.joining(", then ", "To open: ", "."));
    }
}
