package hingewise.casefile.store;

import com.fasterxml.jackson.core.JsonGenerator;
import hingewise.casefile.Closed;
import hingewise.casefile.Entry;
import hingewise.casefile.Meanwhile;
import hingewise.casefile.Opened;
import hingewise.casefile.Price;
import hingewise.casefile.Repair;
import hingewise.casefile.Report;
import hingewise.casefile.Try;
import hingewise.casefile.Withdrawal;
import hingewise.plain.Quoted;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.NearestId;
import java.io.IOException;
import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;

/** How one entry of the timeline is written: its {@code kind} decides which other keys it has. */
final class EntryFormat {
    /** Reads the fields of one kind of entry. */
    private interface Kind {
        Entry read(Fields fields);
    }

    private static final List<String> COMMON_KEYS = List.of("id", "at", "by", "kind", "remark");
    private static final Map<String, Kind> KINDS = kinds();

    private EntryFormat() {}

    private static Map<String, Kind> kinds() {
        Map<String, Kind> kinds = new LinkedHashMap<>();
        for (EvidenceKind evidence : EvidenceKind.values()) {
            kinds.put(evidence.id(), fields -> report(fields, evidence));
        }
        kinds.put(
                "try",
                fields -> allowing(fields, "confirmation")
                        .then((id, at, by, remark) -> new Try(id, at, by, fields.text("confirmation"), remark)));
        kinds.put(
                "repair",
                fields -> allowing(fields, "parts", "grade")
                        .then((id, at, by, remark) ->
                                new Repair(id, at, by, fields.texts("parts"), fields.text("grade"), remark)));
        kinds.put(
                "opened",
                fields -> allowing(fields, "access")
                        .then((id, at, by, remark) -> new Opened(id, at, by, fields.text("access"), remark)));
        kinds.put("closed", fields -> allowing(fields).then(Closed::new));
        kinds.put(
                "meanwhile",
                fields -> allowing(fields, "what")
                        .then((id, at, by, remark) -> new Meanwhile(id, at, by, fields.text("what"), remark)));
        for (Price.What what : Price.What.values()) {
            kinds.put(
                    what.id(),
                    fields -> allowing(fields, "amount", "currency")
                            .then((id, at, by, remark) -> new Price(id, at, by, what, amount(fields), remark)));
        }
        kinds.put(
                "withdrawal",
                fields -> allowing(fields, "withdraws")
                        .then((id, at, by, remark) -> new Withdrawal(id, at, by, fields.text("withdraws"), remark)));
        return kinds;
    }

    /** What every entry has. */
    private record Common(String id, Instant at, String by, String remark) {
        Entry then(Maker maker) {
            return maker.make(id, at, by, remark);
        }
    }

    /** Makes an entry of what every entry has. */
    private interface Maker {
        Entry make(String id, Instant at, String by, String remark);
    }

    private static Common allowing(Fields fields, String... ownKeys) {
        fields.allow(Stream.concat(COMMON_KEYS.stream(), Arrays.stream(ownKeys)).toList());
        return new Common(fields.text("id"), fields.instant("at"), fields.text("by"), fields.remark("remark"));
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

    private static Money amount(Fields fields) {
        String number = fields.text("amount");
        String currency = fields.text("currency");
        try {
            return Price.amount(number, currency);
        } catch (IllegalArgumentException e) {
            throw fields.source().problem(fields.value("amount").at(), String.valueOf(e.getMessage()));
        }
    }

    private static Entry report(Fields fields, EvidenceKind kind) {
        return allowing(fields, "about", "answer", "resultOf")
                .then((id, at, by, remark) -> new Report(
                        id,
                        at,
                        by,
                        kind,
                        fields.text("about"),
                        fields.text("answer"),
                        fields.has("resultOf") ? Optional.of(fields.text("resultOf")) : Optional.empty(),
                        remark));
    }

    static void write(Entry entry, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", entry.id());
        json.writeStringField("at", entry.at().toString());
        json.writeStringField("by", entry.by());
        writeKind(entry, json);
        if (!entry.remark().isEmpty()) {
            json.writeStringField("remark", entry.remark());
        }
        json.writeEndObject();
    }

    private static void writeKind(Entry entry, JsonGenerator json) throws IOException {
        if (entry instanceof Report report) {
            json.writeStringField("kind", report.kind().id());
            json.writeStringField("about", report.about());
            json.writeStringField("answer", report.answer());
            if (report.resultOf().isPresent()) {
                json.writeStringField("resultOf", report.resultOf().get());
            }
        } else if (entry instanceof Try tried) {
            json.writeStringField("kind", "try");
            json.writeStringField("confirmation", tried.confirmation());
        } else if (entry instanceof Repair repair) {
            json.writeStringField("kind", "repair");
            json.writeArrayFieldStart("parts");
            for (String part : repair.parts()) {
                json.writeString(part);
            }
            json.writeEndArray();
            json.writeStringField("grade", repair.grade());
        } else if (entry instanceof Opened opened) {
            json.writeStringField("kind", "opened");
            json.writeStringField("access", opened.access());
        } else if (entry instanceof Closed) {
            json.writeStringField("kind", "closed");
        } else if (entry instanceof Meanwhile meanwhile) {
            json.writeStringField("kind", "meanwhile");
            json.writeStringField("what", meanwhile.what());
        } else if (entry instanceof Price price) {
            json.writeStringField("kind", price.what().id());
            json.writeStringField("amount", price.amount().getAmount().toPlainString());
            json.writeStringField("currency", price.amount().getCurrencyUnit().getCode());
        } else if (entry instanceof Withdrawal withdrawal) {
            json.writeStringField("kind", "withdrawal");
            json.writeStringField("withdraws", withdrawal.withdraws());
        }
    }
}
