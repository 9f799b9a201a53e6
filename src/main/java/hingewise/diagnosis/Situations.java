package hingewise.diagnosis;

import hingewise.casefile.Entry;
import hingewise.inference.Evidence;
import hingewise.inference.Solution;
import hingewise.inference.Solver;
import hingewise.rulebook.RuleBook;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A case as it would be with only some of its entries. What was done decides the network's structure, so each
 * combination of doings is compiled once; what was observed only decides its numbers.
 */
final class Situations {
    private final RuleBook rules;
    private final String family;
    private final Parents parents;
    private final List<Happening> happenings;
    private final Map<Set<Entry>, Situation> byTouches = new HashMap<>();

    /** One structure, ready to be solved. */
    record Situation(Unrolled unrolled, Solver solver) {}

    Situations(RuleBook rules, String family, List<Happening> happenings) {
        this.rules = rules;
        this.family = family;
        this.parents = Parents.in(rules, family);
        this.happenings = happenings;
    }

    /** The structure with all that was done, ready for whatever may be asked of it. */
    Situation whole() {
        Unrolled unrolled = new Unrolled(rules, family, parents, happenings);
        Set<String> observed = new LinkedHashSet<>(unrolled.observed());
        // Causes may be set as well: planning asks what follows if one is there or none of several is.
        observed.addAll(unrolled.wanted());
        Situation situation = new Situation(unrolled, Solver.of(unrolled.network(), observed, unrolled.wanted()));
        byTouches.put(touching(happenings), situation);
        return situation;
    }

    Evidence evidence(Situation situation, Collection<Entry> entries) {
        Set<Entry> some = new HashSet<>(entries);
        return situation
                .unrolled()
                .evidence(happenings.stream()
                        .flatMap(h -> h instanceof Reading r ? Stream.of(r) : Stream.empty())
                        .filter(r -> some.contains(r.entry()))
                        .toList());
    }

    Solution solve(Collection<Entry> entries) {
        Set<Entry> kept = new HashSet<>(entries);
        List<Happening> some = happenings.stream()
                .filter(h -> !(h instanceof Touch) || kept.contains(h.entry()))
                .toList();
        Situation situation = byTouches.computeIfAbsent(touching(some), t -> compile(some));
        return situation.solver().solve(evidence(situation, entries));
    }

    private static Set<Entry> touching(List<Happening> some) {
        return some.stream()
                .filter(Touch.class::isInstance)
                .map(Happening::entry)
                .collect(Collectors.toSet());
    }

    private Situation compile(List<Happening> some) {
        Unrolled unrolled = new Unrolled(rules, family, parents, some);
        Set<String> causes = rules.causesOf(family).stream()
                .map(c -> Names.cause(c.id()))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return new Situation(unrolled, Solver.forFewSolutions(unrolled.network(), unrolled.observed(), causes));
    }
}
