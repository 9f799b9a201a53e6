package hingewise.casefile.store;

import com.fasterxml.jackson.core.JsonGenerator;
import hingewise.casefile.Entry;
import hingewise.casefile.Report;
import hingewise.plain.Quoted;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.NearestId;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How one entry of the timeline is written: its {@code kind} decides which other keys it has. */
final class EntryFormat {
    /** Reads the fields of one kind of entry. */
    private interface Kind {
        Entry read(Fields fields);
    }

    private static final List<String> REPORT_KEYS = List.of("id", "at", "by", "kind", "about", "answer", "remark");
    private static final Map<String, Kind> KINDS = kinds();

    private EntryFormat() {}

    private static Map<String, Kind> kinds() {
        Map<String, Kind> kinds = new LinkedHashMap<>();
        for (EvidenceKind evidence : EvidenceKind.values()) {
            kinds.put(evidence.id(), fields -> report(fields, evidence));
        }
        return kinds;
    }

    static Entry read(Fields fields) {
        String kind = fields.text("kind");
        Kind known = KINDS.get(kind);
        if (known == null) {
            throw fields.source()
                    .problem(
                            fields.value("kind").at(),
                            "no entry is of the kind " + Quoted.of(kind) + ". "
                                    + NearestId.advice(kind, KINDS.keySet()));
        }
        return known.read(fields);
    }

    private static Entry report(Fields fields, EvidenceKind kind) {
        fields.allow(REPORT_KEYS);
        return new Report(
                fields.text("id"),
                fields.instant("at"),
                fields.text("by"),
                kind,
                fields.text("about"),
                fields.text("answer"),
                fields.remark("remark"));
    }

    static void write(Entry entry, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", entry.id());
        json.writeStringField("at", entry.at().toString());
        json.writeStringField("by", entry.by());
        if (entry instanceof Report report) {
            json.writeStringField("kind", report.kind().id());
            json.writeStringField("about", report.about());
            json.writeStringField("answer", report.answer());
        }
        if (!entry.remark().isEmpty()) {
            json.writeStringField("remark", entry.remark());
        }
        json.writeEndObject();
    }
}
