package hingewise.casefile.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Phone;
import hingewise.casefile.Price;
import hingewise.casefile.TimelineException;
import hingewise.plain.Quoted;
import hingewise.plain.Utf8;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The case file format, JSON in UTF-8. Version 2 has prices; a case without any is written as version 1, which every
 * program reads.
 */
final class CaseFormat {
    private static final String NAME = "hingewise-case";
    private static final int VERSION = 2;
    private static final List<String> CASE_KEYS = List.of("format", "version", "title", "invented", "phone", "entries");
    private static final List<String> PHONE_KEYS = List.of("family", "label");
    private static final JsonFactory JSON = new JsonFactory();

    private CaseFormat() {}

    static CaseFile decode(Source source, byte[] bytes) {
        Fields fields = Fields.of(source, "the case", JsonReader.read(source, text(source, bytes)));
        checkFormat(fields);
        fields.allow(CASE_KEYS);
        String title = fields.text("title");
        boolean invented = fields.flag("invented");
        Phone phone = phone(Fields.of(source, "the phone", fields.value("phone")));
        return assemble(source, new CaseFile(title, invented, phone, List.of()), fields.list("entries"));
    }

    private static String text(Source source, byte[] bytes) {
        Utf8.Decoded decoded = Utf8.decode(bytes);
        if (decoded.whole()) {
            return decoded.text();
        }
        throw source.problem(
                new Json.Spot(decoded.lastLine(), decoded.lastColumn()),
                "a byte here is not UTF-8; save the file as UTF-8 or take an earlier copy");
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

    private static CaseFile assemble(Source source, CaseFile empty, List<Json> items) {
        List<Entry> entries = new ArrayList<>();
        for (Json item : items) {
            entries.add(EntryFormat.read(Fields.of(source, "entry " + (entries.size() + 1), item)));
        }
        try {
            return with(empty, entries);
        } catch (TimelineException e) {
            throw source.problem(
                    items.get(firstMisfit(empty, entries)).at(), e.problems().get(0));
        }
    }

    private static CaseFile with(CaseFile empty, List<Entry> entries) {
        return new CaseFile(empty.title(), empty.invented(), empty.phone(), entries);
    }

    /** Where the timeline goes wrong first; once it has, it stays wrong, so halving finds the place. */
    private static int firstMisfit(CaseFile empty, List<Entry> entries) {
        int good = 0;
        int bad = entries.size();
        while (bad - good > 1) {
            int middle = (good + bad) >>> 1;
            try {
                with(empty, entries.subList(0, middle));
                good = middle;
            } catch (TimelineException e) {
                bad = middle;
            }
        }
        return bad - 1;
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
            json.writeNumberField(
                    "version", caseFile.entries().stream().anyMatch(Price.class::isInstance) ? VERSION : 1);
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
