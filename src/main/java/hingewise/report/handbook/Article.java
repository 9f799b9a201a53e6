package hingewise.report.handbook;

import hingewise.rulebook.Grounds;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All that the rule book says of one entry.
 *
 * @param under the heading of the chapter it stands under
 * @param lead one or more sentences that say what it is or what to do; may be empty
 * @param facts short statements, such as minutes and money
 * @param grounds why it stands so; empty for a component, which needs no reason
 */
public record Article(
        Ref self, String under, String lead, List<String> facts, List<Group> groups, Optional<Grounds> grounds) {
    public Article {
        facts = List.copyOf(facts);
        groups = List.copyOf(groups);
    }

    /** Puts an article together; what has nothing to say is left out. */
    static final class Draft {
        private final Ref self;
        private final String under;
        private final String lead;
        private final List<String> facts = new ArrayList<>();
        private final List<Group> groups = new ArrayList<>();

        Draft(Ref self, String under, String lead) {
            this.self = self;
            this.under = under;
            this.lead = lead;
        }

        Draft fact(String fact) {
            if (!fact.isEmpty()) {
                facts.add(fact);
            }
            return this;
        }

        Draft group(String heading, List<Item> items) {
            if (!items.isEmpty()) {
                groups.add(new Group(heading, items));
            }
            return this;
        }

        Article with(Grounds grounds) {
            return new Article(self, under, lead, facts, groups, Optional.of(grounds));
        }

        Article withoutGrounds() {
            return new Article(self, under, lead, facts, groups, Optional.empty());
        }
    }
}
