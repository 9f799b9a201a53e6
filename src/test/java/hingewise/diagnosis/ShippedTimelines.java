package hingewise.diagnosis;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Story;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Sign;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Timelines told with the rule book that comes with the program, by seed: findings, an opening, tries, a part, re-looks. */
final class ShippedTimelines {
    private final RuleBook rules;
    private final String family;
    private final Random random;
    private final Cause cause;

    ShippedTimelines(RuleBook rules, long seed) {
        this.rules = rules;
        this.random = new Random(seed);
        this.family = one(List.copyOf(new TreeSet<>(rules.families().keySet())));
        this.cause = one(rules.causesOf(family).stream()
                .filter(c -> c.signs().size() > 3
                        && rules.confirmations().values().stream()
                                .anyMatch(t -> t.families().contains(family)
                                        && t.cures().containsKey(c.id())))
                .toList());
    }

    private <T> T one(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    String family() {
        return family;
    }

    /** What speaks of a cause that a try may cure, some of it wrong, and two things that speak of something else. */
    Story findings(int many) {
        Story story = new Story(family);
        looks(story, many);
        List<Observation> others = rules.observationsOf(family).stream()
                .filter(o -> o.access().isEmpty() && o.needs().isEmpty())
                .filter(o ->
                        cause.signs().stream().noneMatch(s -> s.observation().equals(o.id())))
                .toList();
        for (int i = 0; i < 2; i++) {
            story.report(EvidenceKind.PHOTO, "desk", one(others).id(), random.nextInt(4) == 0 ? "yes" : "no");
        }
        return story;
    }

    /** Reports on the signs of the cause that can be seen from outside. */
    void looks(Story story, int many) {
        Set<String> signs = cause.signs().stream().map(Sign::observation).collect(Collectors.toSet());
        List<Observation> shown = new ArrayList<>(rules.observationsOf(family).stream()
                .filter(o -> signs.contains(o.id()) && o.access().isEmpty())
                .toList());
        Collections.shuffle(shown, random);
        for (Observation o : shown.subList(0, Math.min(many, shown.size()))) {
            EvidenceKind kind = one(List.of(EvidenceKind.values()));
            story.report(
                    kind,
                    kind == EvidenceKind.CLAIM ? "seller" : "bench",
                    o.id(),
                    random.nextInt(3) > 0 ? "yes" : "no");
        }
    }

    /** Findings, then everything that may cure the cause with a look after each, then a part and a last look. */
    CaseFile whole() {
        Story story = findings(5);
        story.meanwhile(one(List.copyOf(new TreeSet<>(rules.lapses().keySet()))));
        rules.access().values().stream()
                .filter(a -> a.families().contains(family))
                .forEach(a -> story.opened(a.id()));
        rules.confirmations().values().stream()
                .filter(t -> t.families().contains(family) && t.cures().containsKey(cause.id()))
                .map(Confirmation::id)
                .limit(3)
                .forEach(t -> {
                    story.tried(t);
                    looks(story, 2);
                });
        rules.parts().values().stream()
                .filter(p -> p.families().contains(family) && p.renews().contains(cause.component()))
                .map(Part::id)
                .findFirst()
                .ifPresent(p -> story.repaired(p, "service"));
        looks(story, 2);
        return story.told();
    }

    /** Something this case can be asked. */
    Observation askable() {
        return one(rules.observationsOf(family).stream()
                .filter(o -> o.access().isEmpty())
                .toList());
    }
}
