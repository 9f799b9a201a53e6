package hingewise.terminal;

import hingewise.offer.Appraisal;
import hingewise.plain.Quoted;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "offer",
        description = {
            "Say what may be paid for a phone at most, how its routes compare, and which numbers that hangs on.",
            ""
        })
final class OfferCommand implements Callable<Integer> {
    private static final Pattern AMOUNT = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,9})?");

    private final Console console;

    @Mixin
    private CaseInput input = new CaseInput();

    @Option(names = "--asked", paramLabel = "AMOUNT", description = "What is asked for it, in the shop's currency.")
    private Optional<String> asked = Optional.empty();

    @Option(names = "--json", description = "Print the answer as JSON, alone and complete.")
    private boolean json;

    @Mixin
    private ColourOption colour = new ColourOption();

    OfferCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        CaseInput.Answered answered = input.answer(console);
        CurrencyUnit currency = answered.assessor().shop().currency();
        Appraisal appraisal = answered.assessor().appraise(answered.assessment(), asked.map(a -> amount(a, currency)));
        if (json) {
            console.print(Json.object(appraisal, (j, a) -> {
                j.writeStringField("title", answered.assessment().file().title());
                j.writeBooleanField("inventedPrices", input.inventedPrices());
                j.writeBooleanField("inventedShop", input.inventedShop());
                MoneyJson.write(j, a);
            }));
        } else {
            Page page = new Page(colour.on(console.look()));
            page.line(answered.assessment().file().title());
            MoneySection.write(page, appraisal, input.inventedPrices() || input.inventedShop());
            console.print(page);
        }
        return ExitCode.OK.number();
    }

    private static Money amount(String text, CurrencyUnit currency) {
        if (!AMOUNT.matcher(text).matches() || new BigDecimal(text).scale() > currency.getDecimalPlaces()) {
            throw Refusal.badInput("--asked is " + Quoted.of(text) + "; write an amount in " + currency
                    + " with at most " + currency.getDecimalPlaces() + " decimals, as in "
                    + Money.of(currency, 120).getAmount().toPlainString());
        }
        return Money.of(currency, new BigDecimal(text));
    }
}
