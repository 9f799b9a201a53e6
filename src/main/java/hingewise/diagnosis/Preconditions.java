package hingewise.diagnosis;

import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Question;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Leaves out what could not have been observed. A precondition is decided by the heaviest kind of answer recorded
 * while the phone was in the same state, whether before or after the look: the order in which a bench writes down what
 * it saw changes nothing. One without such an answer, or with two that contradict each other, forbids nothing.
 */
final class Preconditions {
    private final Versions versions;
    private final List<Happening> happenings;

    private Preconditions(Parents parents, List<Happening> happenings) {
        this.versions = new Versions(parents, happenings);
        this.happenings = happenings;
    }

    static Readings sift(Parents parents, List<Happening> happenings, List<Skipped> alreadySkipped, Set<String> open) {
        Preconditions preconditions = new Preconditions(parents, happenings);
        List<Happening> kept = new ArrayList<>();
        List<Skipped> skipped = new ArrayList<>(alreadySkipped);
        for (int i = 0; i < happenings.size(); i++) {
            Optional<Skipped> obstacle = happenings.get(i) instanceof Reading reading
                    ? preconditions.obstacle(reading, i)
                    : Optional.empty();
            if (obstacle.isPresent()) {
                skipped.add(obstacle.get());
            } else {
                kept.add(happenings.get(i));
            }
        }
        return new Readings(parents, kept, skipped, open);
    }

    private Optional<Skipped> obstacle(Reading reading, int position) {
        for (Map.Entry<String, Boolean> need : reading.observation().needs().entrySet()) {
            Optional<Reading> answer = answer(need.getKey(), position);
            if (answer.isPresent() && answer.get().yes() != need.getValue()) {
                return Optional.of(new Skipped(
                        reading.entry().id(),
                        reading.observation().id(),
                        "could not be observed: \"" + answer.get().observation().label() + "\" is recorded as "
                                + (answer.get().yes() ? Question.YES : Question.NO) + " (entry "
                                + answer.get().entry().id() + ")"));
            }
        }
        return Optional.empty();
    }

    /** The heaviest answer given in that state; none if equally heavy ones contradict each other. */
    private Optional<Reading> answer(String observation, int position) {
        List<Integer> state = versions.seenBy(observation, position);
        List<Reading> heaviest = new ArrayList<>();
        for (int i = 0; i < happenings.size(); i++) {
            if (happenings.get(i) instanceof Reading reading
                    && reading.observation().id().equals(observation)
                    && versions.seenBy(observation, i).equals(state)) {
                int heavier = heaviest.isEmpty() ? 1 : kind(reading).compareTo(kind(heaviest.get(0)));
                if (heavier > 0) {
                    heaviest.clear();
                }
                if (heavier >= 0) {
                    heaviest.add(reading);
                }
            }
        }
        return heaviest.stream().map(Reading::yes).distinct().count() == 1
                ? Optional.of(heaviest.get(heaviest.size() - 1))
                : Optional.empty();
    }

    private static EvidenceKind kind(Reading reading) {
        return reading.entry().kind();
    }
}
