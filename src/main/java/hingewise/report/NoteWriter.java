package hingewise.report;

import hingewise.assessment.FunctionRound;
import hingewise.casefile.CaseFile;
import hingewise.casefile.Closed;
import hingewise.casefile.Entry;
import hingewise.casefile.Meanwhile;
import hingewise.casefile.Opened;
import hingewise.casefile.Repair;
import hingewise.casefile.Report;
import hingewise.casefile.Try;
import hingewise.diagnosis.Reading;
import hingewise.diagnosis.Readings;
import hingewise.report.ConditionNote.Section;
import hingewise.report.ConditionNote.Sentence;
import hingewise.report.ConditionNote.Topic;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes condition notes. Each sentence is made from entries and carries their ids; there is no other way to make one. */
public final class NoteWriter {
    private final RuleBook rules;
    private final CaseFile file;
    private final List<Entry> standing;
    private final Map<Topic, List<Sentence>> sentences = new EnumMap<>(Topic.class);
    private final Map<String, Set<Entry>> openings = new LinkedHashMap<>();

    private NoteWriter(RuleBook rules, CaseFile file) {
        this.rules = rules.of(file.phone().family());
        this.file = file;
        this.standing = file.standing();
    }

    /** @throws hingewise.diagnosis.CaseException if the case names something the rule book lacks */
    public static ConditionNote write(RuleBook rules, CaseFile file) {
        return new NoteWriter(rules, file).note();
    }

    private ConditionNote note() {
        Readings readings = Readings.of(rules, file);
        List<Observation> asked = rules.observationsOf(file.phone().family());
        for (Observation observation : asked) {
            List<Reading> own = readings.used().stream()
                    .filter(r -> r.observation().id().equals(observation.id()))
                    .toList();
            if (!own.isEmpty()) {
                observed(observation, own);
            }
        }
        standing.forEach(this::done);
        openings();
        return new ConditionNote(
                file.title(),
                file.phone().label(),
                file.invented(),
                sentences.entrySet().stream()
                        .map(e -> new Section(e.getKey(), e.getValue()))
                        .toList(),
                readings.sinceRepair().isPresent(),
                notTested(asked, readings),
                sentences.containsKey(Topic.OPENING));
    }

    /** One observation: the weightiest kind that was reported decides where it stands, the latest of it what is said. */
    private void observed(Observation observation, List<Reading> readings) {
        Reading latest = readings.stream()
                .max(Comparator.comparing(NoteWriter::rank).thenComparing(readings::indexOf))
                .orElseThrow();
        // What comes and goes is there once it was seen: a later quiet look does not make it good.
        Reading last = readings.stream()
                .filter(r -> observation.fitful().isPresent() && r.yes() && rank(r) == rank(latest))
                .filter(r -> !touchedBetween(observation, r.entry(), latest.entry()))
                .reduce(latest, (a, b) -> b);
        List<Reading> same = readings.stream()
                .filter(r -> rank(r) == rank(last) && r.yes() == last.yes())
                .toList();
        say(topic(observation, last), last.statement() + " " + sources(same), ids(same));
        Map<Boolean, List<Reading>> otherwise = readings.stream()
                .filter(r -> r.yes() != last.yes())
                .collect(Collectors.partitioningBy(r -> touchedBetween(observation, r.entry(), last.entry())));
        List<Reading> before = otherwise.getOrDefault(true, List.of());
        if (!before.isEmpty()) {
            say(Topic.CHANGED, before.get(0).statement() + " " + sources(before), ids(before));
        }
        List<Reading> against = otherwise.getOrDefault(false, List.of());
        if (!against.isEmpty()) {
            List<String> entries = new ArrayList<>(ids(against));
            entries.addAll(ids(same));
            say(
                    Topic.DISPUTED,
                    against.get(0).statement() + " " + sources(against) + " Against it: " + last.statement() + " "
                            + sources(same),
                    entries);
        }
        openedFor(observation, readings);
    }

    private static int rank(Reading reading) {
        return switch (reading.entry().kind()) {
            case CLAIM -> 0;
            case PHOTO -> 1;
            case LOOK, METER -> 2;
        };
    }

    private Topic topic(Observation observation, Reading last) {
        if (last.entry().kind() == EvidenceKind.CLAIM) {
            return Topic.CLAIMED;
        }
        if (last.entry().kind() == EvidenceKind.PHOTO) {
            return Topic.PICTURED;
        }
        List<Entry> since = standing.subList(standing.indexOf(last.entry()), standing.size());
        boolean workedSince = touched(observation, since) || since.stream().anyMatch(Repair.class::isInstance);
        return workedSince ? Topic.BEFORE : last.yes() ? Topic.FAULTY : Topic.WORKS;
    }

    private boolean touchedBetween(Observation observation, Entry one, Entry other) {
        int a = standing.indexOf(one);
        int b = standing.indexOf(other);
        return touched(observation, standing.subList(Math.min(a, b), Math.max(a, b)));
    }

    private boolean touched(Observation observation, List<Entry> entries) {
        return entries.stream().anyMatch(e -> Touches.of(rules, e).contains(observation.id()));
    }

    /** What can only be seen inside was seen inside. */
    private void openedFor(Observation observation, List<Reading> readings) {
        observation
                .access()
                .ifPresent(state -> readings.stream().filter(r -> rank(r) == 2).forEach(r -> opened(state, r.entry())));
    }

    private void opened(String state, Entry entry) {
        Objects.requireNonNull(openings.computeIfAbsent(state, s -> new LinkedHashSet<>()))
                .add(entry);
    }

    private void openings() {
        Set<String> all = new LinkedHashSet<>();
        openings.forEach((state, entries) -> {
            List<String> ids = entries.stream().map(Entry::id).toList();
            say(
                    Topic.OPENING,
                    "Opened: " + label(rules.access().get(state), a -> a.label(), state) + ". "
                            + sources(entries.stream()),
                    ids);
            all.addAll(ids);
        });
        for (Entry entry : standing) {
            if (entry instanceof Closed) {
                say(Topic.OPENING, "Closed again. " + source(entry), List.of(entry.id()));
            }
        }
        if (!all.isEmpty()) {
            say(Topic.OPENING, "Water resistance is not verified after opening.", List.copyOf(all));
        }
    }

    private void done(Entry entry) {
        List<String> id = List.of(entry.id());
        if (entry instanceof Try t) {
            String label = label(rules.confirmations().get(t.confirmation()), c -> c.label(), t.confirmation());
            say(Topic.DONE, "Tried: " + label + ". " + source(entry), id);
        } else if (entry instanceof Repair r) {
            String parts = r.parts().stream()
                    .map(p -> label(rules.parts().get(p), part -> part.label(), p))
                    .collect(Collectors.joining(", "));
            say(
                    Topic.DONE,
                    "Fitted: " + parts + "; kind of part: "
                            + label(rules.grades().get(r.grade()), g -> g.label(), r.grade()) + ". " + source(entry),
                    id);
        } else if (entry instanceof Opened o) {
            opened(o.access(), entry);
        } else if (entry instanceof Meanwhile m) {
            say(
                    Topic.DONE,
                    "Time passed: " + label(rules.lapses().get(m.what()), l -> l.label(), m.what()) + ". "
                            + source(entry),
                    id);
        } else if (entry instanceof Report r && r.answer().equals(Report.CANT_TELL)) {
            String label = rules.question(r.about()).map(q -> q.label()).orElse(r.about());
            say(Topic.UNSURE, label + ". " + source(entry), id);
        }
    }

    /** After a repair the whole round and every symptom recorded; else the round as far as nobody has gone it. */
    private List<String> notTested(List<Observation> asked, Readings readings) {
        if (readings.sinceRepair().isPresent()) {
            return FunctionRound.left(rules, file.phone().family(), readings).stream()
                    .map(Observation::label)
                    .toList();
        }
        Set<String> tested = readings.used().stream()
                .filter(r -> rank(r) == 2)
                .filter(r -> topic(r.observation(), r) != Topic.BEFORE)
                .map(r -> r.observation().id())
                .collect(Collectors.toSet());
        return asked.stream()
                .filter(o -> o.moments().contains(Moment.AFTER_REPAIR) && !tested.contains(o.id()))
                .map(Observation::label)
                .toList();
    }

    private void say(Topic topic, String text, List<String> entries) {
        List<Sentence> own = Objects.requireNonNull(sentences.computeIfAbsent(topic, t -> new ArrayList<>()));
        own.add(new Sentence(text, entries.stream().distinct().toList()));
    }

    private static List<String> ids(List<Reading> readings) {
        return readings.stream().map(r -> r.entry().id()).toList();
    }

    private static String sources(List<Reading> readings) {
        return sources(readings.stream().map(r -> (Entry) r.entry()));
    }

    /** How, by whom and when, each of the first two once. */
    private static String sources(Stream<Entry> entries) {
        Map<String, Set<String>> days = new LinkedHashMap<>();
        entries.forEach(e -> Objects.requireNonNull(days.computeIfAbsent(how(e) + e.by(), h -> new LinkedHashSet<>()))
                .add(LocalDate.ofInstant(e.at(), ZoneOffset.UTC).toString()));
        return days.entrySet().stream()
                .map(d -> "(" + d.getKey() + ", " + String.join(", ", d.getValue()) + ")")
                .collect(Collectors.joining(" "));
    }

    private static String source(Entry entry) {
        return sources(Stream.of(entry));
    }

    private static String how(Entry entry) {
        return entry instanceof Report report
                ? switch (report.kind()) {
                    case CLAIM -> "said by ";
                    case PHOTO -> "in a picture, ";
                    case LOOK -> "looked at by ";
                    case METER -> "measured by ";
                }
                : "by ";
    }

    private static <T> String label(
            @org.jspecify.annotations.Nullable T found, Function<T, String> label, String otherwise) {
        return Optional.ofNullable(found).map(label).orElse(otherwise);
    }
}
