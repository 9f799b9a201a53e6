package hingewise.rulebook.yaml;

import hingewise.rulebook.Access;
import hingewise.rulebook.Caution;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Confirmation.Kind;
import hingewise.rulebook.Grade;
import hingewise.rulebook.Lapse;
import hingewise.rulebook.Part;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is done to a phone: confirmations, access, parts, and the cautions that go with them. */
final class ActReader {
    private ActReader() {}

    static Confirmation confirmation(String id, Fields fields) {
        Optional<Kind> kind = fields.required("kind")
                .flatMap(n -> fields.values().word(n, "a kind of confirmation", Kind.class, Kind::id));
        Map<String, Double> cures = fields.chances("cures", Section.CAUSES);
        if (kind.isPresent() && kind.get() != Kind.TRY && !cures.isEmpty()) {
            fields.problem(
                    "cures",
                    "a " + kind.get().id() + " cures nothing",
                    "Make it \"kind: try\", or take \"cures\" out.");
        }
        if (kind.isPresent() && kind.get() != Kind.TRY) {
            fields.filled("settles");
        }
        return new Confirmation(
                id,
                kind.orElse(Kind.CHECK),
                fields.text("label"),
                fields.text("how"),
                fields.minutes(),
                fields.cost(),
                fields.reference("access", Section.ACCESS),
                fields.answers("needs"),
                fields.references("settles", Section.OBSERVATIONS),
                cures,
                DamageReader.damages(fields),
                fields.references("tools", Section.TOOLS),
                fields.references("cautions", Section.CAUTIONS),
                QuestionReader.moments(fields),
                fields.families(),
                fields.grounds());
    }

    static Access access(String id, Fields fields) {
        return new Access(
                id,
                fields.text("label"),
                fields.reference("parent", Section.ACCESS),
                fields.minutes(),
                fields.cost(),
                fields.answers("needs"),
                DamageReader.damages(fields),
                fields.references("tools", Section.TOOLS),
                fields.references("cautions", Section.CAUTIONS),
                fields.families(),
                fields.grounds());
    }

    static Part part(String id, Fields fields) {
        Optional<Part.Form> form = fields.required("form")
                .flatMap(n -> fields.values().word(n, "a form of part", Part.Form.class, Part.Form::id));
        if (form.isPresent() && form.get() != Part.Form.CONSUMABLE) {
            fields.filled("renews");
        }
        return new Part(
                id,
                fields.text("label"),
                form.orElse(Part.Form.SINGLE),
                fields.references("renews", Section.COMPONENTS),
                fields.references("alongside", Section.PARTS),
                fields.reference("access", Section.ACCESS),
                fields.minutes(),
                fields.families(),
                fields.grounds());
    }

    static Caution caution(String id, Fields fields) {
        When when = fields.optional("when")
                .flatMap(n -> Fields.read(fields.context(), n, "\"when\"", When::read))
                .orElse(new When(Set.of(), Map.of(), Set.of()));
        return new Caution(
                id,
                fields.text("text"),
                fields.flag("stops"),
                when.observations(),
                when.causes(),
                when.access(),
                fields.grounds());
    }

    static Lapse lapse(String id, Fields fields) {
        return new Lapse(
                id,
                fields.text("label"),
                fields.chances("brings", Section.CAUSES),
                fields.chances("clears", Section.CAUSES),
                fields.grounds());
    }

    static Grade grade(String id, Fields fields) {
        double bad = fields.required("bad")
                .flatMap(fields.values()::strength)
                .orElse(Range.CHANCE.lowest().doubleValue());
        return new Grade(id, fields.text("label"), bad, fields.grounds());
    }

    /** What brings a caution up; nothing when only confirmations and access states name it. */
    private record When(Set<String> observations, Map<String, Double> causes, Set<String> access) {
        static When read(Fields fields) {
            return new When(
                    fields.references("observations", Section.OBSERVATIONS),
                    fields.chances("causes", Section.CAUSES),
                    fields.references("access", Section.ACCESS));
        }
    }
}
