package hingewise.rulebook.yaml;

import hingewise.rulebook.Cause;
import hingewise.rulebook.Component;
import hingewise.rulebook.Family;
import hingewise.rulebook.History;

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
}
