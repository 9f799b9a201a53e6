package hingewise.terminal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Collection;

/** Writes JSON for other programs: doubles in full precision, money as decimals, control characters escaped. */
final class Json {
    /** Something that writes values. */
    interface Body<T> {
        void write(JsonGenerator json, T value) throws IOException;
    }

    private static final JsonFactory FACTORY = new JsonFactory();

    private Json() {}

    /** One object and a line end. */
    static <T> String object(T value, Body<T> members) {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter layout =
                new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.setPrettyPrinter(layout);
            json.writeStartObject();
            members.write(json, value);
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return text + "\n";
    }

    /** A member that is a list of objects. */
    static <T> void objects(JsonGenerator json, String name, Collection<T> values, Body<T> members) throws IOException {
        json.writeArrayFieldStart(name);
        for (T value : values) {
            json.writeStartObject();
            members.write(json, value);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** A member that is a list of texts. */
    static void texts(JsonGenerator json, String name, Collection<String> values) throws IOException {
        json.writeArrayFieldStart(name);
        for (String value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }
}
