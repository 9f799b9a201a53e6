package hingewise.report;

import hingewise.casefile.Entry;
import hingewise.casefile.Repair;
import hingewise.casefile.Try;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Sign;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What an entry may have changed, so that what was found before no longer speaks of the phone as it is. */
final class Touches {
    private Touches() {}

    /** Ids of the observations that the causes touched may show. */
    static Set<String> of(RuleBook rules, Entry entry) {
        Set<String> causes = causes(rules, entry);
        return rules.causes().values().stream()
                .filter(c -> causes.contains(c.id()))
                .flatMap(c -> c.signs().stream())
                .map(Sign::observation)
                .collect(Collectors.toSet());
    }

    private static Set<String> causes(RuleBook rules, Entry entry) {
        Set<String> causes = new HashSet<>();
        if (entry instanceof Try t) {
            Optional<Confirmation> tried =
                    Optional.ofNullable(rules.confirmations().get(t.confirmation()));
            tried.ifPresent(c -> {
                causes.addAll(c.cures().keySet());
                causes.addAll(c.damages().causes());
            });
        } else if (entry instanceof Repair r) {
            Set<String> renewed = r.parts().stream()
                    .flatMap(p -> Optional.ofNullable(rules.parts().get(p)).stream())
                    .map(Part::renews)
                    .flatMap(Set::stream)
                    .collect(Collectors.toSet());
            rules.causes().values().stream()
                    .filter(c -> renewed.contains(c.component()))
                    .map(Cause::id)
                    .forEach(causes::add);
        }
        return causes;
    }
}
