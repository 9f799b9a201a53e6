package hingewise.casefile.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Phone;
import hingewise.casefile.TimelineException;
import hingewise.plain.Quoted;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The case file format: version 1, JSON in UTF-8. */
final class CaseFormat {
    private static final String NAME = "hingewise-case";
    private static final int VERSION = 1;
    private static final List<String> CASE_KEYS = List.of("format", "version", "title", "invented", "phone", "entries");
    private static final List<String> PHONE_KEYS = List.of("family", "label");
    private static final JsonFactory JSON = new JsonFactory();

    private CaseFormat() {}

    static CaseFile decode(Source source, byte[] bytes) {
        Fields fields = Fields.of(source, "the case", JsonReader.read(source, Utf8.text(source, bytes)));
        checkFormat(fields);
        fields.allow(CASE_KEYS);
        String title = fields.text("title");
        boolean invented = fields.flag("invented");
        Phone phone = phone(Fields.of(source, "the phone", fields.value("phone")));
        List<Entry> entries = entries(source, fields.list("entries"));
        try {
            return new CaseFile(title, invented, phone, entries);
        } catch (TimelineException e) {
            throw source.problem(fields.value("entries").at(), String.join(" ", e.problems()));
        }
    }

    private static void checkFormat(Fields fields) {
        Source source = fields.source();
        String format = fields.anyText("format");
        if (!format.equals(NAME)) {
            throw source.problem(
                    fields.value("format").at(),
                    "the format is " + Quoted.of(format) + ", not \"" + NAME + "\"; choose a case file of Hingewise");
        }
        Optional<Integer> version = fields.count("version");
        if (version.isEmpty() || version.get() > VERSION) {
            throw source.problem(
                    fields.value("version").at(),
                    "a newer Hingewise wrote this file (" + ((Json.Number) fields.value("version")).called()
                            + " as its version, this program reads up to " + VERSION
                            + "); it is left untouched, update Hingewise to open it");
        }
    }

    private static Phone phone(Fields fields) {
        fields.allow(PHONE_KEYS);
        return new Phone(fields.text("family"), fields.remark("label"));
    }

    private static List<Entry> entries(Source source, List<Json> items) {
        List<Entry> entries = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Json item : items) {
            Fields fields = Fields.of(source, "entry " + (entries.size() + 1), item);
            Entry entry = EntryFormat.read(fields);
            if (!ids.add(entry.id())) {
                throw source.problem(
                        fields.value("id").at(),
                        "two entries have the id " + Quoted.of(entry.id()) + "; give this one another");
            }
            entries.add(entry);
        }
        return entries;
    }

    static byte[] encode(CaseFile caseFile) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter layout =
                new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
        try (JsonGenerator json = JSON.createGenerator(bytes)) {
            json.setPrettyPrinter(layout);
            json.writeStartObject();
            json.writeStringField("format", NAME);
            json.writeNumberField("version", VERSION);
            json.writeStringField("title", caseFile.title());
            json.writeBooleanField("invented", caseFile.invented());
            json.writeObjectFieldStart("phone");
            json.writeStringField("family", caseFile.phone().family());
            json.writeStringField("label", caseFile.phone().label());
            json.writeEndObject();
            json.writeArrayFieldStart("entries");
            for (Entry entry : caseFile.entries()) {
                EntryFormat.write(entry, json);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        bytes.write('\n');
        return bytes.toByteArray();
    }
}
