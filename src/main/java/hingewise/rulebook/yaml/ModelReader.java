package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Component;
import hingewise.rulebook.Family;
import hingewise.rulebook.History;
import hingewise.rulebook.Marginal;
import hingewise.rulebook.Model;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** What phones are made of and what becomes of them: components, families, histories, causes. */
final class ModelReader {
    private ModelReader() {}

    static Component component(String id, Fields fields) {
        return new Component(
                id,
                fields.text("label"),
                fields.optional("incurable").flatMap(fields.values()::flag).orElse(false));
    }

    static Family family(String id, Fields fields) {
        return new Family(
                id,
                fields.text("label"),
                fields.filled("components").references("components", Section.COMPONENTS),
                Optional.empty(),
                fields.grounds());
    }

    static Model model(String id, Fields fields) {
        if (fields.context().entries().find(Section.FAMILIES, id).isPresent()) {
            fields.problem("label", Quoted.of(id) + " is a family and a model", "Give the model another id.");
        }
        return new Model(
                id,
                fields.text("label"),
                fields.present("family").reference("family", Section.FAMILIES).orElse(""),
                part(fields, "lacks", ModelReader::lacks).orElse(Model.Lacks.NOTHING),
                fields.links("base-rates", Section.CAUSES, fields.values()::rate),
                fields.links(
                        "signs",
                        Section.CAUSES,
                        n -> LinkReader.strengths(fields, n, Section.OBSERVATIONS, "strength")),
                part(fields, "opens", ModelReader::opens).orElse(Model.Opens.NOTHING),
                fields.grounds());
    }

    private static <T> Optional<T> part(Fields fields, String key, Function<Fields, T> body) {
        return fields.optional(key).flatMap(n -> Fields.read(fields.context(), n, Quoted.of(key), body));
    }

    private static Model.Lacks lacks(Fields fields) {
        return new Model.Lacks(
                fields.references("components", Section.COMPONENTS),
                fields.references("observations", Section.OBSERVATIONS),
                fields.references("choices", Section.CHOICES),
                fields.references("confirmations", Section.CONFIRMATIONS),
                fields.references("parts", Section.PARTS));
    }

    private static Model.Opens opens(Fields fields) {
        return new Model.Opens(
                states(fields, "observations", Section.OBSERVATIONS),
                states(fields, "confirmations", Section.CONFIRMATIONS),
                states(fields, "parts", Section.PARTS),
                states(fields, "access", Section.ACCESS));
    }

    private static Map<String, String> states(Fields fields, String key, Section section) {
        return fields.links(key, section, n -> fields.values().reference(n, Section.ACCESS));
    }

    static History history(String id, Fields fields) {
        return new History(
                id,
                fields.text("label"),
                LinkReader.byFamily(fields, "rate"),
                LinkReader.signs(fields),
                fields.grounds());
    }

    static Cause cause(String id, Fields fields) {
        return new Cause(
                id,
                fields.text("label"),
                fields.present("component")
                        .reference("component", Section.COMPONENTS)
                        .orElse(""),
                LinkReader.byFamily(fields, "base-rate"),
                LinkReader.raises(fields),
                LinkReader.signs(fields),
                fields.grounds());
    }

    static Marginal marginal(String id, Fields fields) {
        if (fields.optional("causes").isPresent()
                || fields.optional("histories").isEmpty()) {
            fields.filled("causes");
        } else {
            fields.filled("histories");
        }
        Set<String> causes = fields.references("causes", Section.CAUSES);
        Set<String> histories = fields.references("histories", Section.HISTORIES);
        Optional<Double> from = fields.chance("from");
        Optional<Double> to = fields.chance("to");
        if (from.isPresent() && to.isPresent() && from.get() > to.get()) {
            fields.problem("from", "\"from\" is greater than \"to\"", "Exchange them.");
        }
        double lowest = Range.CHANCE.lowest().doubleValue();
        return new Marginal(
                id,
                fields.text("label"),
                causes,
                histories,
                from.orElse(lowest),
                to.orElse(lowest),
                fields.families(),
                fields.grounds());
    }
}
