package hingewise.intake;

import hingewise.intake.Clauses.Sentence;
import hingewise.intake.Learned.Claim;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Weighs by examples what phrases have found in a sentence, and hears what none of them finds. */
final class Hearer {
    /** What the examples give less of a chance is not thought of. */
    private static final double LEAST = .03;

    private final Features features;
    private final Classifier classifier;
    private final Map<String, Set<String>> kin;
    private final Set<String> past;

    /**
     * @param kin for each hint, the observations that follow from it
     * @param past ids of the observations that are about the past
     */
    Hearer(Features features, Classifier classifier, Map<String, Set<String>> kin, Set<String> past) {
        this.features = features;
        this.classifier = classifier;
        this.kin = kin;
        this.past = past;
    }

    /** How likely the words are to speak of an observation, whichever way. */
    double chance(List<Word> words, String observation) {
        Stretch stretch = new Stretch(words);
        Set<String> own = Set.of(observation);
        return Math.max(stretch.chance(own, true), stretch.chance(own, false));
    }

    /** What phrases have found in a sentence, weighed, and then what the examples alone make of what it tells. */
    List<Found> weighed(Sentence sentence, SentenceReader.Read read) {
        Map<List<Word>, Stretch> stretches = new HashMap<>();
        List<Stretch> around = new ArrayList<>();
        Stretch whole = stretches.computeIfAbsent(sentence.words(), Stretch::new);
        around.add(whole);
        for (Clause c : sentence.clauses()) {
            around.add(stretches.computeIfAbsent(c.words(), Stretch::new));
        }
        List<Found> found = new ArrayList<>();
        read.found().forEach(f -> found.add(weighed(f, around, whole)));
        for (SentenceReader.Told told : read.told()) {
            found.addAll(heard(told, stretches.computeIfAbsent(told.words(), Stretch::new), whole));
        }
        return found;
    }

    private Found weighed(Found found, List<Stretch> around, Stretch whole) {
        Set<String> own = kin.getOrDefault(found.about(), Set.of(found.about()));
        return around.stream()
                .filter(s -> s.holds(found))
                .map(s -> kin.containsKey(found.about()) || found.evidence().turned()
                        ? s.spoken(own, whole)
                        : s.hearing(own, found.yes(), whole))
                .max(Comparator.comparingDouble(Found.Hearing::chance))
                .map(found::weighed)
                .orElse(found);
    }

    private List<Found> heard(SentenceReader.Told told, Stretch stretch, Stretch whole) {
        List<Found> heard = new ArrayList<>();
        for (String name : stretch.likeliest) {
            if (stretch.chances.getOrDefault(name, 0.0) < LEAST) {
                break;
            }
            Claim claim = Claim.named(name);
            if (!told.past() || past.contains(claim.about())) {
                heard.add(Found.heard(
                        claim.about(), claim.yes(), told, stretch.hearing(Set.of(claim.about()), claim.yes(), whole)));
            }
        }
        return heard;
    }

    /** Words in a row, and the chances of the claims that they may make. */
    private final class Stretch {
        private final List<Word> words;
        private final Map<String, Double> chances;
        /** The names of the claims that have a chance, the likeliest first. */
        private final List<String> likeliest;

        Stretch(List<Word> words) {
            this.words = words;
            this.chances = classifier.chances(features.of(words));
            this.likeliest = chances.keySet().stream()
                    .filter(name -> chances.getOrDefault(name, 0.0) >= Marks.SUREST)
                    .sorted(Comparator.comparing(chances::get, Comparator.reverseOrder()))
                    .toList();
        }

        int start() {
            return words.get(0).start();
        }

        int end() {
            return words.get(words.size() - 1).end();
        }

        boolean holds(Found found) {
            return start() <= found.start() && found.end() <= end();
        }

        double chance(Set<String> own, boolean yes) {
            return own.stream()
                    .mapToDouble(o -> chances.getOrDefault(new Claim(o, yes).name(), 0.0))
                    .max()
                    .orElse(0);
        }

        Found.Hearing hearing(Set<String> own, boolean yes, Stretch whole) {
            return new Found.Hearing(chance(own, yes), whole.chance(own, yes), rival(own));
        }

        /** Where the answer is settled elsewhere, the words can but speak of the question. */
        Found.Hearing spoken(Set<String> own, Stretch whole) {
            return new Found.Hearing(spoken(own), whole.spoken(own), rival(own));
        }

        private double spoken(Set<String> own) {
            return Math.max(chance(own, true), chance(own, false));
        }

        /** The highest chance of a claim about something else. */
        private double rival(Set<String> own) {
            return likeliest.stream()
                    .filter(name -> !own.contains(Claim.named(name).about()))
                    .findFirst()
                    .map(chances::get)
                    .orElse(0.0);
        }
    }
}
