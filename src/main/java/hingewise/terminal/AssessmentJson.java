package hingewise.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import hingewise.assessment.Assessment;
import hingewise.assessment.Cautions;
import hingewise.assessment.ShownCaution;
import hingewise.diagnosis.Contradiction;
import hingewise.diagnosis.LikelySet;
import hingewise.diagnosis.RankedCause;
import hingewise.diagnosis.Reason;
import hingewise.diagnosis.Skipped;
import hingewise.offer.Appraisal;
import hingewise.planning.Plan;
import hingewise.planning.Step;
import hingewise.rulebook.Caution;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import java.io.IOException;
import java.util.Set;
import java.util.stream.Collectors;

/** An assessment for another program to read: the same answer as the text, complete and unrounded. */
final class AssessmentJson {
    private AssessmentJson() {}

    static String of(Assessment assessment, Appraisal money, RuleBook rules, boolean inventedPrices) {
        RuleBook own = rules.of(assessment.file().phone().family());
        return Json.object(assessment, (json, a) -> {
            json.writeStringField("title", a.file().title());
            json.writeStringField("family", a.file().phone().family());
            json.writeBooleanField("invented", a.file().invented());
            json.writeStringField("currency", rules.bench().currency());
            json.writeBooleanField("inventedPrices", inventedPrices);
            json.writeBooleanField("stopped", a.stopped());
            Json.objects(json, "causes", a.diagnosis().causes(), AssessmentJson::cause);
            Json.objects(json, "combinations", a.diagnosis().combinations(), AssessmentJson::combination);
            json.writeObjectFieldStart("plan");
            plan(json, a.plan());
            json.writeEndObject();
            Json.objects(json, "tryFirst", a.tryFirst(), (j, s) -> step(j, s, a, own));
            Json.objects(json, "parts", a.parts().order(), PartsJson::line);
            Json.objects(json, "cautions", a.cautions(), (j, c) -> caution(j, c.caution(), c.stops()));
            Json.objects(
                    json, "contradictions", a.diagnosis().readings().contradictions(), AssessmentJson::contradiction);
            Json.objects(json, "skipped", a.diagnosis().readings().skipped(), AssessmentJson::skipped);
            Json.texts(json, "untested", a.untested().stream().map(o -> o.id()).toList());
            Json.texts(
                    json,
                    "notTestedSinceRepair",
                    a.notTestedSinceRepair().stream().map(o -> o.id()).toList());
            json.writeObjectFieldStart("money");
            MoneyJson.write(json, money);
            json.writeEndObject();
        });
    }

    private static void cause(JsonGenerator json, RankedCause cause) throws IOException {
        json.writeStringField("id", cause.cause().id());
        json.writeStringField("label", cause.cause().label());
        json.writeStringField("component", cause.cause().component());
        json.writeNumberField("prior", cause.prior());
        json.writeNumberField("probability", cause.probability());
        json.writeStringField("words", cause.words());
        Json.objects(json, "reasons", cause.reasons(), AssessmentJson::reason);
    }

    private static void reason(JsonGenerator json, Reason reason) throws IOException {
        json.writeStringField("text", reason.text());
        json.writeNumberField("weight", reason.weight());
        json.writeStringField("entry", reason.entry());
        json.writeNumberField("without", reason.without());
    }

    private static void combination(JsonGenerator json, LikelySet set) throws IOException {
        Json.texts(json, "causes", set.causes());
        json.writeNumberField("probability", set.probability());
    }

    static void plan(JsonGenerator json, Plan plan) throws IOException {
        json.writeStringField("decision", plan.decision().kind().id());
        Json.texts(json, "fits", plan.decision().parts().stream().map(Part::id).toList());
        json.writeNumberField("worthDoing", plan.worth());
        json.writeNumberField("decidingNow", plan.now().getAmount());
        json.writeNumberField("goingOn", plan.expected().getAmount());
        json.writeNumberField("knowingEverything", plan.knowing().getAmount());
        json.writeNumberField("standardError", plan.error().getAmount());
    }

    private static void step(JsonGenerator json, Step step, Assessment assessment, RuleBook rules) throws IOException {
        json.writeStringField("id", step.confirmation().id());
        json.writeStringField("kind", step.confirmation().kind().id());
        json.writeStringField("label", step.confirmation().label());
        json.writeNumberField("minutes", step.minutes());
        json.writeNumberField("cost", step.cost().getAmount());
        Json.texts(json, "opens", step.opens());
        Json.texts(json, "askFirst", step.askFirst());
        json.writeNumberField("saves", step.saves().getAmount());
        json.writeNumberField("net", step.net().getAmount());
        if (step.together().isPresent()) {
            json.writeStringField("together", step.together().get().id());
        }
        Set<Caution> stopping = assessment.cautions().stream()
                .filter(ShownCaution::stops)
                .map(ShownCaution::caution)
                .collect(Collectors.toSet());
        Json.objects(json, "cautions", Cautions.of(rules, step), (j, c) -> caution(j, c, stopping.contains(c)));
        json.writeStringField("why", step.why());
    }

    /** @param stops whether it stops the work now */
    static void caution(JsonGenerator json, Caution caution, boolean stops) throws IOException {
        json.writeStringField("id", caution.id());
        json.writeBooleanField("stops", stops);
        json.writeStringField("text", caution.text());
    }

    private static void contradiction(JsonGenerator json, Contradiction contradiction) throws IOException {
        json.writeStringField("observation", contradiction.observation().id());
        Json.objects(json, "reports", contradiction.readings(), (j, r) -> {
            j.writeStringField("entry", r.entry().id());
            j.writeStringField("kind", r.entry().kind().id());
            j.writeStringField("by", r.entry().by());
            j.writeStringField("at", r.entry().at().toString());
            j.writeBooleanField("yes", r.yes());
        });
        Json.texts(
                json,
                "meanwhile",
                contradiction.meanwhile().stream().map(t -> t.entry().id()).toList());
    }

    private static void skipped(JsonGenerator json, Skipped skipped) throws IOException {
        json.writeStringField("entry", skipped.entry());
        json.writeStringField("observation", skipped.observation());
        json.writeStringField("why", skipped.why());
    }
}
