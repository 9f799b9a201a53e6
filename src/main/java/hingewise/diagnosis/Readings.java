package hingewise.diagnosis;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Meanwhile;
import hingewise.casefile.Repair;
import hingewise.casefile.Try;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The standing entries of a case, read with the rule book in hand. */
public final class Readings {
    private final Parents parents;
    private final Versions versions;
    private final List<Happening> happenings;
    private final List<Skipped> skipped;
    private final Set<String> open;

    Readings(Parents parents, List<Happening> happenings, List<Skipped> skipped, Set<String> open) {
        this.parents = parents;
        this.versions = new Versions(parents, happenings);
        this.happenings = List.copyOf(happenings);
        this.skipped = List.copyOf(skipped);
        this.open = Set.copyOf(open);
    }

    /** @throws CaseException if the case names something the rule book lacks or says something impossible */
    public static Readings of(RuleBook rules, CaseFile file) {
        return CaseReader.read(rules.of(file.phone().family()), file);
    }

    /** What shows each observation. */
    Parents parents() {
        return parents;
    }

    /** What was observed and what was done, in timeline order. */
    public List<Happening> happenings() {
        return happenings;
    }

    /** What counts as evidence, in timeline order. */
    public List<Reading> used() {
        return happenings.stream()
                .filter(Reading.class::isInstance)
                .map(Reading.class::cast)
                .toList();
    }

    /** What could not have been observed in the recorded state, and why. */
    public List<Skipped> skipped() {
        return skipped;
    }

    /** Access states that are open now. */
    public Set<String> open() {
        return open;
    }

    /** Confirmations carried out since the last repair. */
    public Set<String> tried() {
        Set<String> tried = new LinkedHashSet<>();
        for (Happening happening : happenings) {
            if (happening.entry() instanceof Try entry) {
                tried.add(entry.confirmation());
            } else if (happening.entry() instanceof Repair) {
                tried.clear();
            }
        }
        return tried;
    }

    /** The last answer to each observation that nothing has touched since. */
    public Map<String, Boolean> latest() {
        Map<String, Boolean> latest = new LinkedHashMap<>();
        for (int i = 0; i < happenings.size(); i++) {
            if (happenings.get(i) instanceof Reading reading) {
                String id = reading.observation().id();
                if (versions.seenBy(id, i).equals(versions.seenBy(id, happenings.size()))) {
                    latest.put(id, reading.yes());
                }
            }
        }
        return latest;
    }

    /** The heaviest kind of evidence on an observation that nothing has touched since. */
    public Optional<EvidenceKind> heaviest(String observation) {
        List<Integer> now = versions.seenBy(observation, happenings.size());
        Optional<EvidenceKind> heaviest = Optional.empty();
        for (int i = 0; i < happenings.size(); i++) {
            if (happenings.get(i) instanceof Reading reading
                    && reading.observation().id().equals(observation)
                    && versions.seenBy(observation, i).equals(now)) {
                EvidenceKind kind = reading.entry().kind();
                heaviest = heaviest.filter(h -> h.compareTo(kind) >= 0).or(() -> Optional.of(kind));
            }
        }
        return heaviest;
    }

    /** What was observed since the last repair; empty when nothing was repaired. */
    public Optional<List<Reading>> sinceRepair() {
        int last = -1;
        for (int i = 0; i < happenings.size(); i++) {
            last = happenings.get(i).entry() instanceof Repair ? i : last;
        }
        return last < 0
                ? Optional.empty()
                : Optional.of(happenings.subList(last, happenings.size()).stream()
                        .filter(Reading.class::isInstance)
                        .map(Reading.class::cast)
                        .toList());
    }

    /**
     * Observations that were reported as so and not cleared since. A denial alone clears nothing, for both then stand;
     * what clears is a repair of something that shows it, and after that somebody's own look or measurement that
     * denies it.
     */
    public Set<String> standing() {
        Set<String> standing = new LinkedHashSet<>();
        Set<String> repaired = new LinkedHashSet<>();
        for (int i = 0; i < happenings.size(); i++) {
            Happening happening = happenings.get(i);
            if (happening instanceof Reading reading) {
                String id = reading.observation().id();
                if (reading.yes()) {
                    standing.add(id);
                    repaired.remove(id);
                } else if (repaired.contains(id) && own(reading)) {
                    standing.remove(id);
                }
            } else if (happening.entry() instanceof Repair) {
                for (String id : standing) {
                    if (!versions.seenBy(id, i).equals(versions.seenBy(id, i + 1))) {
                        repaired.add(id);
                    }
                }
            }
        }
        return standing;
    }

    private static boolean own(Reading reading) {
        EvidenceKind kind = reading.entry().kind();
        return kind == EvidenceKind.LOOK || kind == EvidenceKind.METER;
    }

    /** Observations answered both ways though nobody touched them between; passing time may have. */
    public List<Contradiction> contradictions() {
        record State(Observation observation, List<Integer> versions) {}
        Versions handled =
                new Versions(parents, happenings.stream().map(Readings::idle).toList());
        Map<State, List<Integer>> byState = new LinkedHashMap<>();
        for (int i = 0; i < happenings.size(); i++) {
            if (happenings.get(i) instanceof Reading reading
                    && reading.observation().fitful().isEmpty()) {
                Observation observation = reading.observation();
                byState.computeIfAbsent(
                                new State(observation, handled.seenBy(observation.id(), i)), s -> new ArrayList<>())
                        .add(i);
            }
        }
        List<Contradiction> found = new ArrayList<>();
        byState.forEach((state, positions) -> {
            List<Reading> readings =
                    positions.stream().map(i -> (Reading) happenings.get(i)).toList();
            if (readings.stream().map(Reading::yes).distinct().count() > 1) {
                found.add(new Contradiction(state.observation(), readings, between(state.observation(), positions)));
            }
        });
        return found;
    }

    /** Passing time as if it changed nothing; all else as it is. */
    private static Happening idle(Happening happening) {
        return happening instanceof Touch touch && touch.entry() instanceof Meanwhile
                ? new Touch(touch.entry(), touch.label(), Map.of())
                : happening;
    }

    private List<Touch> between(Observation observation, List<Integer> positions) {
        List<Touch> between = new ArrayList<>();
        for (int i = positions.get(0); i < positions.get(positions.size() - 1); i++) {
            if (happenings.get(i) instanceof Touch touch
                    && !versions.seenBy(observation.id(), i).equals(versions.seenBy(observation.id(), i + 1))) {
                between.add(touch);
            }
        }
        return between;
    }
}
