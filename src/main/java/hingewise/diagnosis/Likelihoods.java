package hingewise.diagnosis;

import hingewise.inference.Weighted;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Reliability;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** How likely the reports on an observation are, if it is so and if it is not. */
final class Likelihoods {
    /** A power of two, so that raising rounds nothing. */
    private static final double SMALL = 0x1p-300;

    private Likelihoods() {}

    /**
     * One likelihood per variable: different people and kinds are independent given what is so.
     *
     * @param variable which variable of the network a reading is about; one for as long as nothing touches its causes
     */
    static Map<String, Weighted> of(List<Reading> readings, Function<Reading, String> variable) {
        Map<Looker, List<Reading>> byLooker = readings.stream()
                .collect(Collectors.groupingBy(
                        r -> new Looker(r.entry().by(), r.entry().kind(), variable.apply(r)),
                        LinkedHashMap::new,
                        Collectors.toList()));
        Map<String, Weighted> likelihoods = new LinkedHashMap<>();
        byLooker.forEach((looker, own) -> {
            Observation observation = own.get(0).observation();
            List<Boolean> reports = own.stream().map(Reading::yes).toList();
            likelihoods.merge(looker.variable(), repeated(observation, looker.kind(), reports), Likelihoods::both);
        });
        return likelihoods;
    }

    /**
     * Looks of one person with nothing touched between share one underlying reading v: each report repeats it with
     * chance ρ, else reads afresh, so that λ(F) = Σ_v P(v|F) Π_k [ρ·1(r_k = v) + (1 − ρ)·P(r_k|F)]. A fitful
     * observation shows by chance at each look, so its looks share nothing.
     */
    static Weighted repeated(Observation observation, EvidenceKind kind, List<Boolean> reports) {
        Reliability reliability = observation.reliability().get(kind);
        if (reliability == null) {
            throw new IllegalArgumentException("no reliability of a " + kind.id() + " on " + observation.id());
        }
        double falseYes = 1 - reliability.specificity();
        double sensitivity = observation.fitful().isPresent()
                ? observation.fitful().getAsDouble() * reliability.sensitivity()
                        + (1 - observation.fitful().getAsDouble()) * falseYes
                : reliability.sensitivity();
        double repeat = observation.fitful().isPresent() ? 0 : observation.repeat();
        double seenYesIfYes = sensitivity;
        double seenNoIfYes = 1 - sensitivity;
        double seenYesIfNo = falseYes;
        double seenNoIfNo = 1 - falseYes;
        for (boolean yes : reports) {
            double afreshIfYes = (1 - repeat) * (yes ? sensitivity : 1 - sensitivity);
            double afreshIfNo = (1 - repeat) * (yes ? falseYes : 1 - falseYes);
            double scale = scale(seenYesIfYes + seenNoIfYes, seenYesIfNo + seenNoIfNo);
            seenYesIfYes *= scale * ((yes ? repeat : 0) + afreshIfYes);
            seenNoIfYes *= scale * ((yes ? 0 : repeat) + afreshIfYes);
            seenYesIfNo *= scale * ((yes ? repeat : 0) + afreshIfNo);
            seenNoIfNo *= scale * ((yes ? 0 : repeat) + afreshIfNo);
        }
        return new Weighted(seenYesIfYes + seenNoIfYes, seenYesIfNo + seenNoIfNo);
    }

    private static Weighted both(Weighted a, Weighted b) {
        double scale = scale(a.ifYes(), a.ifNo());
        return new Weighted(scale * a.ifYes() * b.ifYes(), scale * a.ifNo() * b.ifNo());
    }

    /** Only the ratio of the two counts: before hundreds of reports that contradict each other vanish, both are raised. */
    private static double scale(double ifYes, double ifNo) {
        return Math.max(ifYes, ifNo) < SMALL ? 1 / SMALL : 1;
    }

    private record Looker(String by, EvidenceKind kind, String variable) {}
}
