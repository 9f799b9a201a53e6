package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import hingewise.rulebook.Choice;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleCase;
import hingewise.rulebook.RuleCase.Expect;
import hingewise.rulebook.RuleCase.Seen;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The cases that the rule book must answer rightly.
 *
 * @param observations as read before
 * @param choices as read before
 */
record CaseReader(Map<String, Observation> observations, Map<String, Choice> choices) {
    /** What can be answered to every question, and says nothing either way. */
    static final String CANT_TELL = "cant-tell";

    private static final Pattern SEEN = Pattern.compile("([^=@\\s]+)=([^=@\\s]+)(?:@([^=@\\s]+))?");
    private static final Expect NOTHING = new Expect(
            Optional.empty(),
            Set.of(),
            Set.of(),
            Optional.empty(),
            Optional.empty(),
            Set.of(),
            Set.of(),
            Set.of(),
            Set.of(),
            false);

    RuleCase read(String id, Fields fields) {
        String title = fields.text("title");
        String family =
                fields.present("family").reference("family", Section.FAMILIES).orElse("");
        List<Seen> seen = fields.present("seen").list("seen").stream()
                .flatMap(n -> seen(fields, n, family).stream())
                .toList();
        Expect expect = fields.filled("expect")
                .optional("expect")
                .flatMap(n -> Fields.read(fields.context(), n, "\"expect\"", CaseReader::expect))
                .orElse(NOTHING);
        String phone = fields.reference("model", Section.MODELS).orElse(family);
        return new RuleCase(id, title, phone, seen, expect, fields.grounds());
    }

    private Optional<Seen> seen(Fields fields, Node node, String family) {
        Optional<String> text = fields.values().scalar(node, "what was seen");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Matcher parts = SEEN.matcher(text.get());
        if (!parts.matches()) {
            fields.values()
                    .problem(
                            node,
                            Quoted.of(text.get()) + " does not say what was seen",
                            "Write observation=yes, observation=no@claim, or choice=answer.");
            return Optional.empty();
        }
        String about = parts.group(1);
        String answer = parts.group(2);
        if (fields.context().whole()) {
            check(fields, node, about, answer, family);
        }
        EvidenceKind kind = Optional.ofNullable(parts.group(3))
                .flatMap(k -> fields.values()
                        .word(
                                new Node.Scalar(node.place(), node.under(), k),
                                "a kind of evidence",
                                EvidenceKind.class,
                                EvidenceKind::id))
                .orElse(EvidenceKind.LOOK);
        return Optional.of(new Seen(about, answer, kind));
    }

    private void check(Fields fields, Node node, String about, String answer, String family) {
        List<String> answers = new ArrayList<>();
        Set<String> families;
        Observation observation = observations.get(about);
        Choice choice = choices.get(about);
        if (observation != null) {
            answers.addAll(List.of("yes", "no"));
            families = observation.families();
        } else if (choice != null) {
            answers.addAll(choice.answers().keySet());
            families = choice.families();
        } else {
            unknownQuestion(fields, node, about);
            return;
        }
        answers.add(CANT_TELL);
        if (!answers.contains(answer)) {
            fields.context().problems().unknown(node.place(), answer, "an answer to " + Quoted.of(about), answers);
        }
        if (fields.context().entries().ids(Section.FAMILIES).contains(family) && !families.contains(family)) {
            fields.values()
                    .problem(
                            node,
                            Quoted.of(about) + " is not asked of family " + Quoted.of(family),
                            "Take it out of the case, or choose a family that has it.");
        }
    }

    /** A question may be defined and yet not be here, when it is no block of keys; that is told elsewhere. */
    private static void unknownQuestion(Fields fields, Node node, String about) {
        Entries entries = fields.context().entries();
        Set<String> known = new LinkedHashSet<>(entries.ids(Section.OBSERVATIONS));
        known.addAll(entries.ids(Section.CHOICES));
        if (!known.contains(about)) {
            fields.context().problems().unknown(node.place(), about, "an observation or a choice", known);
        }
    }

    private static Expect expect(Fields fields) {
        Expect expect = new Expect(
                fields.reference("leads", Section.CAUSES),
                fields.references("among", Section.CAUSES),
                fields.references("not-among", Section.CAUSES),
                fields.reference("first-try", Section.CONFIRMATIONS),
                fields.reference("first-inside", Section.CONFIRMATIONS),
                fields.references("parts", Section.PARTS),
                fields.references("no-parts", Section.PARTS),
                fields.references("cautions", Section.CAUTIONS),
                fields.references("no-cautions", Section.CAUTIONS),
                fields.optional("no-part-at-all").flatMap(fields.values()::flag).orElse(false));
        tellBoth(fields, "not-among", expect.among(), expect.notAmong());
        tellBoth(fields, "no-parts", expect.parts(), expect.noParts());
        tellBoth(fields, "no-cautions", expect.cautions(), expect.noCautions());
        if (expect.noPartAtAll() && !expect.parts().isEmpty()) {
            fields.problem("no-part-at-all", "parts are expected and none at all", "Take one of both out.");
        }
        return expect;
    }

    private static void tellBoth(Fields fields, String key, Set<String> wanted, Set<String> unwanted) {
        wanted.stream()
                .filter(unwanted::contains)
                .forEach(id ->
                        fields.problem(key, Quoted.of(id) + " is both expected and not", "Take one of both out."));
    }
}
