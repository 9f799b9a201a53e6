package hingewise.intake;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a clause that names a part and says nothing takes up from an earlier one. */
final class TakingUp {
    private final Roles roles;
    private final Denial denial;
    private final Binding binding;

    TakingUp(Roles roles, Denial denial, Binding binding) {
        this.roles = roles;
        this.denial = denial;
        this.binding = binding;
    }

    /** "Everything works except …": what works there does not work here. */
    List<Saying> exception(List<Clause> before, double certainty) {
        for (int i = before.size() - 1; i >= 0; i--) {
            Clause clause = before.get(i);
            Optional<Mention> works = clause.first(roles.works());
            if (works.isPresent()) {
                boolean denied = denial.count(clause, works.get(), List.of()) % 2 == 1;
                return denied ? List.of() : List.of(new Saying(clause, works.get(), true, certainty));
            }
        }
        return List.of();
    }

    /**
     * What an earlier clause says, for other parts: "… on the pad, but not by cable", "… does not, the cable does", "…,
     * the back too".
     */
    Stream<Saying> from(Clause before, Clause clause, double certainty) {
        boolean denies = clause.has(roles.not()) || clause.has(roles.notAfter());
        boolean too = clause.has(roles.too());
        if (!denies && !too && !clause.has(roles.does())) {
            return Stream.of();
        }
        return before.mentions().stream().filter(binding::mayTurnOn).flatMap(m -> {
            boolean denied = m.denies() || denial.count(before, m, List.of()) % 2 == 1;
            boolean same = too && denied == denies;
            return same || denied != denies ? Stream.of(new Saying(before, m, !same, certainty)) : Stream.of();
        });
    }
}
