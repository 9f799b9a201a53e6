package hingewise.intake;

import hingewise.rulebook.Phrase;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Which phrases are met by what is said. */
final class Matching {
    private static final double MISSPELT = .95;

    private final Roles roles;
    private final Map<Integer, List<Rule>> byHead;
    private final Denial denial;
    private final Binding binding;

    /** @param byHead phrases by the numbers of the sets that their heads may be met by */
    Matching(Roles roles, Map<Integer, List<Rule>> byHead, Denial denial, Binding binding) {
        this.roles = roles;
        this.byHead = byHead;
        this.denial = denial;
        this.binding = binding;
    }

    /** What is claimed if it is said of each of the parts; of no part if there are none. */
    List<Found> of(Saying saying, List<List<Mention>> parts) {
        Stream<Saying> sayings =
                parts.isEmpty() ? Stream.of(saying) : parts.stream().map(saying::of);
        return sayings.flatMap(this::claims).toList();
    }

    private Stream<Found> claims(Saying saying) {
        BitSet named = new BitSet();
        saying.clause().mentions().forEach(m -> named.or(m.sets()));
        saying.of().forEach(m -> named.or(m.sets()));
        return saying.what().sets().stream()
                .mapToObj(n -> byHead.getOrDefault(n, List.of()))
                .flatMap(List::stream)
                .filter(rule -> rule.mayBeMet(named))
                .distinct()
                .flatMap(rule -> match(rule, saying).stream());
    }

    private Optional<Found> match(Rule rule, Saying saying) {
        Clause clause = saying.clause();
        if (!rule.past() && clause.speaksOfThePast(roles)) {
            return Optional.empty();
        }
        List<Mention> used = new ArrayList<>();
        used.add(saying.what());
        for (Rule.Term term : rule.rest()) {
            List<Mention> of =
                    saying.of().stream().filter(t -> t.isInAny(term.any())).toList();
            List<Mention> beside = term.topic()
                    ? of
                    : clause.mentions().stream()
                            .filter(o -> !o.overlaps(saying.what()) && o.isInAny(term.any()))
                            .toList();
            boolean met = switch (term.mode()) {
                case PRESENT -> !beside.isEmpty();
                case ABSENT -> beside.isEmpty();
                case UNLESS_SAID ->
                    !of.isEmpty()
                            || saying.of().stream().allMatch(t -> t.isIn(roles.phone()))
                                    && (term.any().get(roles.phone()) || saying.fits(term));
            };
            if (!met) {
                return Optional.empty();
            }
            if (term.mode() == Phrase.Mode.PRESENT) {
                used.add(beside.get(0));
            }
        }
        int denials = used.stream()
                .filter(u -> u == saying.what() || binding.saysSomething(u))
                .mapToInt(u -> denial.count(clause, u, used))
                .max()
                .orElse(0);
        if (denials > 1) {
            return Optional.empty();
        }
        boolean denied = (denials == 1) != saying.turned();
        if (denied && !rule.turns()) {
            return Optional.empty();
        }
        boolean exact = used.stream().allMatch(Mention::exact);
        int terms = (int) (1
                + rule.rest().stream()
                        .filter(t -> t.mode() == Phrase.Mode.PRESENT)
                        .count());
        return Optional.of(span(rule, saying, used, denied, saying.certainty() * (exact ? 1 : MISSPELT), terms));
    }

    private Found.Evidence evidence(Rule rule, Saying saying, List<Mention> used, int from, int to) {
        int words = (int) IntStream.range(from, to)
                .filter(i -> used.stream().anyMatch(u -> u.from() <= i && i < u.to()))
                .count();
        return new Found.Evidence(
                rule.written(),
                used.stream().anyMatch(u -> u.isInAny(roles.topics())),
                words,
                false,
                false,
                saying.turned(),
                Found.Hearing.NONE);
    }

    /** From the first word used in the clause to the last, the denial included. */
    private Found span(Rule rule, Saying saying, List<Mention> used, boolean denied, double certainty, int terms) {
        List<Word> words = saying.clause().sentence();
        int from = saying.what().from();
        int to = saying.what().to();
        for (Mention m : saying.clause().mentions()) {
            boolean denies = m.isIn(roles.not()) || m.isIn(roles.notAny()) || m.isIn(roles.notAfter());
            if (used.contains(m) || denied && denies) {
                from = Math.min(from, m.from());
                to = Math.max(to, m.to());
            }
        }
        return new Found(
                rule.about(),
                rule.yes() != denied,
                certainty,
                terms,
                words.get(from).start(),
                words.get(to - 1).end(),
                evidence(rule, saying, used, from, to));
    }
}
