package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import hingewise.rulebook.Choice;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Reliability;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What is asked about a phone: observations and choices. */
final class QuestionReader {
    private QuestionReader() {}

    /**
     * An observation, completed by what the rule book says of all.
     *
     * @param book how each kind of evidence is believed, and how often a repeated look repeats the reading
     */
    static Observation observation(String id, Fields fields, BookReader.Book book) {
        Map<EvidenceKind, Reliability> reliability = new EnumMap<>(EvidenceKind.class);
        reliability.putAll(book.reliability());
        reliability.putAll(ReliabilityReader.some(fields));
        Optional<Double> fitful = fields.optionalChance("fitful");
        return new Observation(
                id,
                fields.text("label"),
                fields.text("question"),
                fields.text("look"),
                fields.text("when-yes"),
                fields.text("when-no"),
                moments(fields),
                fields.answers("needs"),
                fields.answers("asked-if"),
                fields.reference("access", Section.ACCESS),
                fields.required("leak")
                        .flatMap(fields.values()::rate)
                        .orElse(Range.RATE.lowest().doubleValue()),
                fitful.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                repeat(fields, fitful.isPresent(), book.repeat()),
                reliability,
                fields.families(),
                fields.optional("pictures").flatMap(fields.values()::flag).orElse(false),
                PhraseReader.phrases(fields),
                fields.grounds());
    }

    /** What shows at some looks only is read afresh at each, so that nothing is repeated. */
    private static double repeat(Fields fields, boolean fitful, double common) {
        Optional<Double> own = fields.optionalChance("repeat");
        if (fitful && own.isPresent()) {
            fields.problem(
                    "repeat",
                    "\"repeat\" stands beside \"fitful\", and a fitful sign is read afresh at every look",
                    "Take one of them out.");
        }
        return fitful ? 0 : own.orElse(common);
    }

    static Choice choice(String id, Fields fields) {
        return new Choice(
                id,
                fields.text("label"),
                fields.text("question"),
                fields.text("look"),
                moments(fields),
                fields.filled("answers")
                        .map(
                                "answers",
                                (member, result) ->
                                        answer(fields, member).ifPresent(a -> result.putIfAbsent(member.key(), a))),
                fields.families(),
                fields.grounds());
    }

    private static Optional<Choice.Answer> answer(Fields fields, Node.Member member) {
        if (member.key().equals(CaseReader.CANT_TELL) || !Entries.isId(member.key())) {
            fields.context()
                    .problems()
                    .add(
                            member.place(),
                            Quoted.of(member.key()) + " cannot be an answer's id",
                            "Write lower-case words joined by hyphens; \"" + CaseReader.CANT_TELL
                                    + "\" is there for every question already.");
        }
        return Fields.read(
                fields.context(),
                member.value(),
                "answer " + Quoted.of(member.key()),
                f -> new Choice.Answer(f.text("label"), f.present("settles").answers("settles")));
    }

    static Set<Moment> moments(Fields fields) {
        return fields.filled("moments")
                .set("moments", n -> fields.values().word(n, "a moment", Moment.class, Moment::id));
    }
}
