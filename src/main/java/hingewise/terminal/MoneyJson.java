package hingewise.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import hingewise.offer.Appraisal;
import hingewise.offer.Mover;
import hingewise.offer.RouteWorth;
import hingewise.offer.Spread;
import hingewise.offer.Worth;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** The money of a case for another program: amounts are decimals in the shop's currency. */
final class MoneyJson {
    private MoneyJson() {}

    /** Writes the members of one object. */
    static void write(JsonGenerator json, Appraisal appraisal) throws IOException {
        json.writeStringField("verdict", appraisal.verdict());
        if (appraisal.worth().isEmpty()) {
            json.writeNullField("offerCeiling");
            json.writeNullField("bracket");
            Json.objects(json, "routes", List.<RouteWorth>of(), MoneyJson::route);
            Json.objects(json, "movers", List.<Mover>of(), MoneyJson::mover);
            return;
        }
        Worth worth = appraisal.worth().get();
        json.writeStringField("currency", worth.price().getCurrencyUnit().getCode());
        amount(json, "offerCeiling", worth.offerCeiling());
        json.writeObjectFieldStart("bracket");
        amount(json, "fixed", worth.bracket().fixed());
        amount(json, "ceiling", worth.bracket().ceiling());
        amount(json, "perfect", worth.bracket().perfect());
        json.writeEndObject();
        amount(json, "lossCeiling", worth.lossCeiling());
        json.writeNumberField("lossLimit", worth.lossLimit());
        amount(json, "standardError", worth.error());
        amount(json, "price", worth.price());
        json.writeBooleanField("asked", worth.asked());
        json.writeBooleanField("paid", worth.paid());
        json.writeObjectFieldStart("repairCost");
        spread(json, worth.repairCost());
        json.writeEndObject();
        Json.objects(json, "routes", worth.routes(), MoneyJson::route);
        Json.texts(json, "closed", worth.closed());
        Json.texts(json, "looks", worth.looks());
        Json.texts(json, "sheet", worth.sheet());
        Json.objects(json, "movers", worth.movers(), MoneyJson::mover);
    }

    private static void route(JsonGenerator json, RouteWorth route) throws IOException {
        json.writeStringField("id", route.route().id());
        json.writeStringField("label", route.route().label());
        json.writeStringField("detail", route.detail());
        amount(json, "proceeds", route.proceeds());
        amount(json, "expected", route.expected());
        amount(json, "p10", route.low());
        amount(json, "p50", route.middle());
        amount(json, "p90", route.high());
        json.writeNumberField("chanceOfLoss", route.chanceOfLoss());
    }

    private static void spread(JsonGenerator json, Spread spread) throws IOException {
        amount(json, "expected", spread.expected());
        amount(json, "p10", spread.low());
        amount(json, "p50", spread.middle());
        amount(json, "p90", spread.high());
    }

    private static void mover(JsonGenerator json, Mover mover) throws IOException {
        json.writeStringField("number", mover.number());
        json.writeNumberField("change", mover.change());
        amount(json, "ifLower", mover.lower());
        amount(json, "ifHigher", mover.higher());
        amount(json, "swing", mover.swing());
        json.writeStringField("sentence", mover.sentence());
    }

    private static void amount(JsonGenerator json, String name, Optional<Money> money) throws IOException {
        if (money.isPresent()) {
            amount(json, name, money.get());
        } else {
            json.writeNullField(name);
        }
    }

    private static void amount(JsonGenerator json, String name, Money money) throws IOException {
        json.writeNumberField(name, money.getAmount());
    }
}
