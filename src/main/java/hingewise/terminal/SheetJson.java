package hingewise.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import hingewise.assessment.Assessment;
import hingewise.assessment.BenchSheet;
import hingewise.assessment.CareOrder;
import hingewise.planning.Sheet;
import hingewise.rulebook.Access;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** A sheet for another program to read: the same as the text, complete and unrounded. */
final class SheetJson {
    private SheetJson() {}

    /** @param invented whether prices or the shop's figures are those that come with the program */
    static String of(BenchSheet bench, RuleBook rules, boolean invented) {
        Assessment assessment = bench.assessment();
        return Json.object(bench, (json, b) -> {
            json.writeStringField("title", assessment.file().title());
            json.writeStringField("family", assessment.file().phone().family());
            json.writeBooleanField("invented", assessment.file().invented());
            json.writeStringField("currency", rules.bench().currency());
            json.writeBooleanField("inventedPrices", invented);
            json.writeBooleanField("stopped", b.sheet().isEmpty());
            Json.objects(
                    json,
                    "cautions",
                    assessment.cautions().stream().filter(c -> c.brought()).toList(),
                    (j, c) -> AssessmentJson.caution(j, c.caution(), c.stops()));
            if (b.sheet().isPresent()) {
                sheet(
                        json,
                        b,
                        b.sheet().get(),
                        rules.of(assessment.file().phone().family())::stops);
            } else {
                Json.texts(
                        json,
                        "questions",
                        assessment.tryFirst().stream()
                                .map(s -> s.confirmation().id())
                                .toList());
            }
        });
    }

    /** @param stops whether "yes" to an observation stops all work, by id */
    private static void sheet(JsonGenerator json, BenchSheet bench, Sheet sheet, Predicate<String> stops)
            throws IOException {
        json.writeObjectFieldStart("plan");
        AssessmentJson.plan(json, bench.assessment().plan());
        json.writeEndObject();
        json.writeNumberField("minutes", sheet.minutes());
        json.writeNumberField("longest", sheet.longest());
        json.writeNumberField("material", sheet.material().getAmount());
        json.writeNumberField("expected", sheet.expected().getAmount());
        json.writeNumberField("phones", sheet.phones());
        Json.objects(json, "tools", bench.tools(), (j, t) -> {
            j.writeStringField("id", t.id());
            j.writeStringField("label", t.label());
        });
        Json.objects(json, "parts", sheet.parts(), SheetJson::part);
        Json.objects(
                json,
                "stations",
                sheet.stations(),
                (j, s) -> station(j, s, bench.atStations().get(s.number() - 1), stops));
        Json.objects(
                json, "ends", sheet.ends(), (j, e) -> end(j, e, bench.atEnds().get(e.number() - 1)));
    }

    private static void part(JsonGenerator json, Sheet.Needed needed) throws IOException {
        json.writeStringField("id", needed.part().id());
        json.writeStringField("label", needed.part().label());
        json.writeNumberField("chance", needed.chance());
        if (needed.price().isPresent()) {
            json.writeNumberField("price", needed.price().get().getAmount());
        } else {
            json.writeNullField("price");
        }
    }

    private static void station(JsonGenerator json, Sheet.Station station, CareOrder.Care care, Predicate<String> stops)
            throws IOException {
        json.writeNumberField("number", station.number());
        json.writeStringField("id", station.confirmation().id());
        json.writeStringField("kind", station.confirmation().kind().id());
        json.writeStringField("label", station.confirmation().label());
        json.writeStringField("how", station.confirmation().how());
        json.writeNumberField("chance", station.chance());
        json.writeNumberField("minutes", station.minutes());
        json.writeNumberField("cost", station.cost().getAmount());
        Json.texts(json, "opens", station.opens().stream().map(Access::id).toList());
        Json.objects(json, "askFirst", station.first(), (j, n) -> {
            j.writeStringField("id", n.observation().id());
            j.writeBooleanField("goOnIf", n.answer());
            j.writeBooleanField("otherAnswerStopsWork", n.stopsWork(stops));
        });
        Json.texts(json, "looks", station.looks().stream().map(Observation::id).toList());
        care(json, care);
        Json.objects(json, "branches", station.branches(), (j, b) -> {
            j.writeBooleanField("stopsWork", b.stopsWork(station.first(), stops));
            branch(j, b);
        });
    }

    private static void care(JsonGenerator json, CareOrder.Care care) throws IOException {
        Json.objects(json, "cautions", care.here(), (j, c) -> {
            j.writeNumberField("number", c.number());
            j.writeStringField("id", c.caution().id());
            j.writeStringField("text", c.caution().text());
        });
        json.writeArrayFieldStart("cautionsAgain");
        for (int number : care.again()) {
            json.writeNumber(number);
        }
        json.writeEndArray();
    }

    private static void branch(JsonGenerator json, Sheet.Branch branch) throws IOException {
        json.writeNumberField("chance", branch.chance());
        json.writeBooleanField("left", branch.left());
        Json.objects(json, "reports", branch.reports(), SheetJson::report);
        if (branch.way() instanceof Sheet.Way.Go go) {
            json.writeNumberField("station", go.station());
        } else if (branch.way() instanceof Sheet.Way.Stop stop) {
            json.writeNumberField("end", stop.end());
        } else if (branch.way() instanceof Sheet.Way.AskAgain again) {
            json.writeBooleanField("askAgain", true);
            Optional<Confirmation> next = again.next();
            if (next.isPresent()) {
                json.writeStringField("next", next.get().id());
            }
        }
    }

    private static void report(JsonGenerator json, Map<String, Boolean> answers) throws IOException {
        for (Map.Entry<String, Boolean> answer : answers.entrySet()) {
            json.writeBooleanField(answer.getKey(), answer.getValue());
        }
    }

    private static void end(JsonGenerator json, Sheet.End end, CareOrder.Care care) throws IOException {
        json.writeNumberField("number", end.number());
        json.writeNumberField("chance", end.chance());
        json.writeStringField("decision", end.decision().kind().id());
        List<String> fits = end.decision().parts().stream().map(Part::id).toList();
        Json.texts(json, "fits", fits);
        care(json, care);
    }
}
