package hingewise.bench;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Report;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Damages;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Sign;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/**
 * A rule book made larger by copies of itself in the same phone: each copy has causes, observations and confirmations of
 * its own; components, parts, openings and histories are shared. One sign in five of a copy is the first book's own
 * observation instead of the copied one, so that the copies hang together. Of a case's answers one in four is given to
 * each copy's observation too.
 */
final class GrownBook {
    private static final double OVERLAP = .2;
    private static final double REPEATED = .25;

    private final RuleBook first;
    private final int copies;
    private final long seed;

    /** @param copies how many times larger, 1 for the book as it is */
    GrownBook(RuleBook first, int copies, long seed) {
        this.first = first;
        this.copies = copies;
        this.seed = seed;
    }

    RuleBook rules() {
        SplittableRandom random = new SplittableRandom(seed);
        Map<String, Cause> causes = new LinkedHashMap<>(first.causes());
        Map<String, Observation> observations = new LinkedHashMap<>(first.observations());
        Map<String, Confirmation> confirmations = new LinkedHashMap<>(first.confirmations());
        for (int n = 2; n <= copies; n++) {
            int copy = n;
            first.causes().values().forEach(c -> put(causes, named(c.id(), copy), cause(c, copy, random)));
            first.observations().values().forEach(o -> put(observations, named(o.id(), copy), observation(o, copy)));
            first.confirmations().values().forEach(c -> put(confirmations, named(c.id(), copy), confirmation(c, copy)));
        }
        return new RuleBook(
                first.title(),
                first.bench(),
                first.words(),
                first.reliability(),
                first.components(),
                first.tools(),
                first.families(),
                first.histories(),
                causes,
                observations,
                first.choices(),
                confirmations,
                first.access(),
                first.parts(),
                first.cautions(),
                first.lapses(),
                first.grades(),
                first.marginals(),
                first.languages(),
                first.hints(),
                List.of());
    }

    CaseFile told(CaseFile file) {
        SplittableRandom random = new SplittableRandom(seed + 1);
        List<Entry> entries = new ArrayList<>();
        for (Entry entry : file.entries()) {
            entries.add(entry);
            for (int n = 2; n <= copies; n++) {
                if (entry instanceof Report r
                        && first.observations().containsKey(r.about())
                        && random.nextDouble() < REPEATED) {
                    entries.add(new Report(
                            named(r.id(), n),
                            r.at(),
                            r.by(),
                            r.kind(),
                            named(r.about(), n),
                            r.answer(),
                            Optional.empty(),
                            ""));
                }
            }
        }
        return new CaseFile(file.title(), file.invented(), file.phone(), entries);
    }

    private static <T> void put(Map<String, T> all, String id, T one) {
        all.put(id, one);
    }

    private static String named(String id, int copy) {
        return id + "-" + copy;
    }

    private static Cause cause(Cause c, int copy, SplittableRandom random) {
        List<Sign> signs = c.signs().stream()
                .map(s -> random.nextDouble() < OVERLAP
                        ? s
                        : new Sign(named(s.observation(), copy), s.strength(), s.because()))
                .toList();
        return new Cause(named(c.id(), copy), c.label(), c.component(), c.baseRate(), c.raisedBy(), signs, c.grounds());
    }

    private static Observation observation(Observation o, int copy) {
        return new Observation(
                named(o.id(), copy),
                o.label(),
                o.question(),
                o.look(),
                o.whenYes(),
                o.whenNo(),
                o.moments(),
                keyed(o.needs(), copy),
                keyed(o.askedIf(), copy),
                o.access(),
                o.leak(),
                o.fitful(),
                o.repeat(),
                o.reliability(),
                o.families(),
                o.pictures(),
                o.phrases(),
                o.grounds());
    }

    private static Confirmation confirmation(Confirmation c, int copy) {
        return new Confirmation(
                named(c.id(), copy),
                c.kind(),
                c.label(),
                c.how(),
                c.minutes(),
                c.cost(),
                c.access(),
                keyed(c.needs(), copy),
                all(c.settles(), copy),
                keyed(c.cures(), copy),
                damages(c.damages(), copy),
                c.tools(),
                c.cautions(),
                c.moments(),
                c.families(),
                c.grounds());
    }

    private static Damages damages(Damages d, int copy) {
        Map<String, Map<String, Double>> where = new LinkedHashMap<>();
        d.where().forEach((present, brought) -> where.put(named(present, copy), keyed(brought, copy)));
        return new Damages(keyed(d.always(), copy), where);
    }

    private static <T> Map<String, T> keyed(Map<String, T> map, int copy) {
        Map<String, T> named = new LinkedHashMap<>();
        map.forEach((id, value) -> named.put(named(id, copy), value));
        return named;
    }

    private static Set<String> all(Set<String> ids, int copy) {
        return ids.stream().map(id -> named(id, copy)).collect(Collectors.toSet());
    }
}
