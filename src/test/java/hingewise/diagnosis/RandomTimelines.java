package hingewise.diagnosis;

import hingewise.casefile.Story;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Rules;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.BiConsumer;

/** Small random rule books and timelines with every kind of entry, by seed. */
final class RandomTimelines {
    static final String[] CAUSES = {"x", "y", "z"};
    private static final String[] OBSERVATIONS = {"dark", "loose", "hot"};
    private static final String[] TRIES = {"reseat", "wipe", "pry"};

    private RandomTimelines() {}

    static RuleBook rules(Random random) {
        Rules rules = new Rules().history("fell", .3);
        for (String observation : OBSERVATIONS) {
            rules.observation(observation, .01 + .1 * random.nextDouble(), OptionalDouble.empty(), 0);
        }
        for (String cause : CAUSES) {
            rules.cause(cause, .05 + .4 * random.nextDouble());
            for (String observation : OBSERVATIONS) {
                if (random.nextBoolean()) {
                    rules.sign(cause, observation, .1 + .85 * random.nextDouble());
                }
            }
            if (random.nextBoolean()) {
                rules.raises("fell", cause, .5);
            }
            rules.partFor("new " + cause, cause);
        }
        for (String attempt : TRIES) {
            rules.tryOut(attempt, some(random, .9), some(random, .2));
            worse(random, (present, brought) -> rules.damagesWhere(attempt, present, brought, .7));
        }
        rules.access("back-off", some(random, .1)).access("shield-off", Optional.of("back-off"), some(random, .1));
        worse(random, (present, brought) -> rules.openingDamagesWhere("back-off", present, brought, .6));
        worse(random, (present, brought) -> rules.openingDamagesWhere("shield-off", present, brought, .4));
        return rules.grade("pulled", .2)
                .lapse("in-transit", some(random, .2), some(random, .2))
                .book();
    }

    /** Some pairs of different causes. */
    private static void worse(Random random, BiConsumer<String, String> pair) {
        for (String present : CAUSES) {
            for (String brought : CAUSES) {
                if (!present.equals(brought) && random.nextInt(4) == 0) {
                    pair.accept(present, brought);
                }
            }
        }
    }

    private static Map<String, Double> some(Random random, double highest) {
        Map<String, Double> chosen = new HashMap<>();
        for (String cause : CAUSES) {
            if (random.nextInt(3) == 0) {
                chosen.put(cause, .01 + highest * random.nextDouble());
            }
        }
        return chosen;
    }

    static Story story(Random random) {
        Story story = new Story(Rules.FAMILY);
        for (int i = 0; i < 6; i++) {
            switch (random.nextInt(9)) {
                case 0 -> story.repaired("new " + CAUSES[random.nextInt(3)], "pulled");
                case 1 -> story.meanwhile("in-transit");
                case 2 -> story.opened(random.nextBoolean() ? "back-off" : "shield-off");
                case 3, 4 -> story.tried(TRIES[random.nextInt(3)]);
                default -> {
                    EvidenceKind kind = List.of(EvidenceKind.values()).get(random.nextInt(4));
                    story.report(kind, kind.id(), OBSERVATIONS[random.nextInt(3)], random.nextBoolean() ? "yes" : "no");
                }
            }
        }
        return story;
    }
}
