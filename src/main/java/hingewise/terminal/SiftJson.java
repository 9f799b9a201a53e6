package hingewise.terminal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import hingewise.intake.sheet.Appraisal;
import hingewise.intake.sheet.Columns;
import hingewise.intake.sheet.RankedRow;
import hingewise.intake.sheet.RankedRows;
import hingewise.intake.sheet.Shrinkage;
import hingewise.intake.sheet.Tally;
import hingewise.plain.Quoted;
import java.io.IOException;
import java.io.Writer;
import java.util.List;

/**
 * The sheet back as JSON lines. The first object is about the whole sheet; each following one about a listing, best
 * first. Text of the sheet is cleaned of what steers a terminal.
 */
final class SiftJson {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .disable(com.fasterxml.jackson.core.StreamWriteFeature.AUTO_CLOSE_TARGET)
            .build();

    private SiftJson() {}

    static RankedRows begin(Writer to, Columns columns, Tally tally, boolean inventedPrices) throws IOException {
        JsonGenerator json = FACTORY.createGenerator(to);
        json.setPrettyPrinter(new MinimalPrettyPrinter("\n"));
        whole(json, tally, inventedPrices);
        json.flush();
        List<String> names = columns.names().stream().map(Quoted::lines).toList();
        return (rank, row) -> {
            listing(json, names, rank, row);
            json.flush();
        };
    }

    private static void whole(JsonGenerator json, Tally tally, boolean inventedPrices) throws IOException {
        Shrinkage shrinkage = tally.shrinkage();
        json.writeStartObject();
        json.writeStringField("format", "hingewise-sift");
        json.writeNumberField("version", 1);
        json.writeStringField("currency", shrinkage.currency().getCode());
        json.writeBooleanField("inventedPrices", inventedPrices);
        json.writeNumberField("listings", tally.appraised());
        json.writeNumberField("skipped", tally.skipped());
        json.writeStringField("claims", SiftProgress.UNSEEN);
        json.writeObjectFieldStart("correction");
        json.writeBooleanField("applied", shrinkage.corrects());
        json.writeStringField("method", SiftProgress.METHOD);
        json.writeNumberField("mean", shrinkage.mean());
        json.writeNumberField("varianceBetween", shrinkage.between());
        json.writeNumberField("errorShareOfSpread", Shrinkage.DOUBT);
        json.writeEndObject();
        json.writeEndObject();
    }

    private static void listing(JsonGenerator json, List<String> names, long rank, RankedRow row) throws IOException {
        Appraisal a = row.row().appraisal();
        json.writeStartObject();
        json.writeNumberField("rank", rank);
        json.writeNumberField("line", row.row().line());
        json.writeNumberField("expectedProfit", row.corrected().getAmount());
        json.writeNumberField("chanceOfLoss", a.chanceOfLoss());
        json.writeNumberField("ceiling", row.ceiling().getAmount());
        json.writeStringField("verdict", row.verdict().id());
        Json.objects(json, "causes", a.causes(), (j, c) -> {
            j.writeStringField("id", c.id());
            j.writeStringField("label", c.label());
            j.writeNumberField("probability", c.chance());
        });
        Json.texts(json, "ask", a.ask());
        Json.texts(json, "stops", a.stops());
        Json.texts(json, "claimsTaken", a.claims());
        json.writeNumberField("profitUncorrected", a.profit().getAmount());
        json.writeNumberField("profitSpread", a.spread().getAmount());
        json.writeNumberField("kept", row.kept());
        json.writeNumberField("ceilingUncorrected", a.ceiling().getAmount());
        json.writeObjectFieldStart("sheet");
        for (int i = 0; i < names.size(); i++) {
            json.writeStringField(names.get(i), Quoted.lines(row.row().cells().get(i)));
        }
        json.writeEndObject();
        json.writeEndObject();
    }
}
