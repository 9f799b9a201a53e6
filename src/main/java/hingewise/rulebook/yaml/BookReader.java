package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import hingewise.rulebook.Bench;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Grounds;
import hingewise.rulebook.Reliability;
import hingewise.rulebook.Words;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/** What a rule book says once: title, bench, words, reliability. */
final class BookReader {
    private static final Grounds NONE = new Grounds("", "");

    private final Context start;
    private final List<Document> documents;
    private final Place expected;

    /**
     * @param expected the file in which a missing part is to be added
     */
    BookReader(Context start, List<Document> documents, Place expected) {
        this.start = start;
        this.documents = documents;
        this.expected = expected;
    }

    /**
     * What is said once.
     *
     * @param repeat chance that the same person looking again repeats the reading
     * @param context the context, now with words and currency
     */
    record Book(
            String title,
            Bench bench,
            Words words,
            Map<EvidenceKind, Reliability> reliability,
            double repeat,
            Context context) {}

    private record Believed(Map<EvidenceKind, Reliability> kinds, double repeat) {}

    Book read() {
        String title = once("title").flatMap(new Values(start)::text).orElse("");
        Optional<Words> words = block("words", WordsReader::read);
        Context worded = words.map(w -> start.with(w.strengths(), w.rates())).orElse(start);
        Optional<CurrencyUnit> currency = peekCurrency();
        Context context =
                currency.map(c -> worded.withDecimals(c.getDecimalPlaces())).orElse(worded);
        Optional<Bench> bench = once("bench").flatMap(n -> Fields.read(context, n, "\"bench\"", BookReader::bench));
        Optional<Believed> believed = block("reliability", BookReader::believed);
        return new Book(
                title,
                bench.orElse(new Bench("", NONE)),
                words.orElse(new Words(List.of(), Map.of(), Map.of(), NONE)),
                believed.map(Believed::kinds).orElse(Map.of()),
                believed.map(Believed::repeat).orElse(Range.CHANCE.lowest().doubleValue()),
                context);
    }

    private <T> Optional<T> block(String key, Function<Fields, T> body) {
        return once(key).flatMap(n -> Fields.read(start, n, Quoted.of(key), body));
    }

    /** The value of a key that must stand once in all files; of several, the first. */
    private Optional<Node> once(String key) {
        List<Node.Member> members =
                documents.stream().flatMap(d -> d.under(key).stream()).toList();
        if (members.isEmpty() && start.whole()) {
            start.problems().add(expected, "the rule book has no " + Quoted.of(key), "Add it to book.yaml.");
        }
        members.stream()
                .skip(1)
                .forEach(m -> start.problems()
                        .add(
                                m.place(),
                                Quoted.of(key) + " is already given at "
                                        + members.get(0).place(),
                                "Take one of them out."));
        return members.stream().findFirst().map(Node.Member::value);
    }

    private static Believed believed(Fields fields) {
        Map<EvidenceKind, Reliability> kinds = ReliabilityReader.all(fields);
        double repeat = fields.chance("repeat").orElse(Range.CHANCE.lowest().doubleValue());
        fields.grounds();
        return new Believed(kinds, repeat);
    }

    private static Bench bench(Fields fields) {
        Optional<Node> node = fields.required("currency");
        Optional<String> code = node.flatMap(n -> fields.values().scalar(n, "a currency"));
        if (node.isPresent() && code.isPresent() && currency(code.get()).isEmpty()) {
            List<String> known = CurrencyUnit.registeredCurrencies().stream()
                    .filter(c -> !c.isPseudoCurrency())
                    .map(CurrencyUnit::getCode)
                    .toList();
            String upper = code.get().toUpperCase(Locale.ROOT);
            fields.values()
                    .problem(
                            node.get(),
                            Quoted.of(code.get()) + " is not a currency",
                            known.contains(upper)
                                    ? "Did you mean \"" + upper + "\"?"
                                    : "Write an ISO 4217 code such as EUR.");
        }
        return new Bench(code.orElse(""), fields.grounds());
    }

    /** The currency if it is there and right; otherwise it is told when the bench is read. */
    private Optional<CurrencyUnit> peekCurrency() {
        return documents.stream()
                .flatMap(d -> d.under("bench").stream())
                .findFirst()
                .map(Node.Member::value)
                .flatMap(n -> n instanceof Node.Mapping m ? m.member("currency") : Optional.empty())
                .flatMap(m -> m.value() instanceof Node.Scalar s ? currency(s.text()) : Optional.empty());
    }

    private static Optional<CurrencyUnit> currency(String code) {
        try {
            return Optional.of(CurrencyUnit.of(code)).filter(c -> !c.isPseudoCurrency());
        } catch (IllegalCurrencyException e) {
            return Optional.empty();
        }
    }
}
