package hingewise.rulebook.yaml;

import hingewise.rulebook.Cause;
import hingewise.rulebook.Component;
import hingewise.rulebook.Family;
import hingewise.rulebook.History;
import hingewise.rulebook.Marginal;
import java.util.Optional;
import java.util.Set;

/** What phones are made of and what becomes of them: components, families, histories, causes. */
final class ModelReader {
    private ModelReader() {}

    static Component component(String id, Fields fields) {
        return new Component(id, fields.text("label"));
    }

    static Family family(String id, Fields fields) {
        return new Family(
                id,
                fields.text("label"),
                fields.filled("components").references("components", Section.COMPONENTS),
                fields.grounds());
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
