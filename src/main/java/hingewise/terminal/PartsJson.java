package hingewise.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import hingewise.costing.HeldPart;
import hingewise.costing.Offer;
import hingewise.costing.OrderLine;
import hingewise.costing.PartsList;
import hingewise.costing.Purchase;
import hingewise.costing.Regret;
import hingewise.rulebook.Confirmation;
import java.io.IOException;
import java.util.Optional;
import java.util.TreeSet;

/** A parts list for another program. */
final class PartsJson {
    private PartsJson() {}

    /** Writes the members of one object. */
    static void write(JsonGenerator json, PartsList parts) throws IOException {
        Json.objects(json, "order", parts.order(), PartsJson::line);
        Json.objects(json, "wait", parts.held(), PartsJson::held);
        purchase(json, "purchase", parts.purchase());
        purchase(json, "runnerUp", parts.runnerUp());
    }

    /** Writes the members of one line. */
    static void line(JsonGenerator json, OrderLine line) throws IOException {
        json.writeStringField("id", line.part().id());
        json.writeNumberField("quantity", line.quantity());
        offer(json, line.offer());
        Json.texts(json, "for", new TreeSet<>(line.causes()));
        json.writeNumberField("chance", line.chance());
        json.writeBooleanField("sure", line.sure());
        regret(json, line.regret());
    }

    private static void offer(JsonGenerator json, Optional<Offer> offer) throws IOException {
        if (offer.isPresent()) {
            json.writeObjectFieldStart("offer");
            json.writeStringField("supplier", offer.get().supplier());
            json.writeStringField("grade", offer.get().grade());
            json.writeNumberField("days", offer.get().days());
            json.writeNumberField("badOnArrival", offer.get().badOnArrival());
            json.writeEndObject();
            json.writeNumberField("price", offer.get().price().getAmount());
        } else {
            json.writeNullField("offer");
            json.writeNullField("price");
        }
    }

    private static void held(JsonGenerator json, HeldPart held) throws IOException {
        json.writeStringField("component", held.component());
        Json.texts(json, "for", new TreeSet<>(held.causes()));
        json.writeStringField("until", held.until().map(Confirmation::id).orElse(null));
        json.writeNumberField("chance", held.chance());
        regret(json, held.regret());
    }

    private static void regret(JsonGenerator json, Regret regret) throws IOException {
        json.writeNumberField("regretOfOrdering", regret.ordering().getAmount());
        json.writeNumberField("regretOfWaiting", regret.waiting().getAmount());
    }

    private static void purchase(JsonGenerator json, String name, Optional<Purchase> purchase) throws IOException {
        if (purchase.isEmpty()) {
            json.writeNullField(name);
            return;
        }
        Purchase p = purchase.get();
        json.writeObjectFieldStart(name);
        Json.objects(json, "lines", p.lines(), (j, l) -> {
            j.writeStringField("id", l.part().id());
            offer(j, l.offer());
        });
        json.writeNumberField("goods", p.goods().getAmount());
        json.writeNumberField("sending", p.sending().getAmount());
        json.writeNumberField("risk", p.risk().getAmount());
        json.writeNumberField("lessResale", p.lessResale().getAmount());
        json.writeNumberField("work", p.work().getAmount());
        json.writeNumberField("waiting", p.waiting().getAmount());
        json.writeNumberField("total", p.total().getAmount());
        json.writeNumberField("days", p.days());
        json.writeEndObject();
    }
}
