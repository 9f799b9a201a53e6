package hingewise.casefile.store;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Closed;
import hingewise.casefile.Entry;
import hingewise.casefile.Meanwhile;
import hingewise.casefile.Opened;
import hingewise.casefile.Phone;
import hingewise.casefile.Price;
import hingewise.casefile.Repair;
import hingewise.casefile.Report;
import hingewise.casefile.Try;
import hingewise.casefile.Withdrawal;
import hingewise.rulebook.EvidenceKind;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Cases that no person would write. */
final class RandomCases {
    private static final int[] TELLING = {
        0, '\t', '\n', '\r', 0x1b, '"', '\\', '/', '{', ' ', 'a', 'é', 0x2028, 0x202E, 0xFEFF, 0xFFFF, 0x1F4F1, 0x10FFFF
    };

    private final RandomGenerator random;

    RandomCases(RandomGenerator random) {
        this.random = random;
    }

    CaseFile next() {
        List<Entry> entries = new ArrayList<>();
        Instant at = Instant.ofEpochSecond(random.nextLong(-100_000_000_000L, 100_000_000_000L), random.nextInt());
        for (int i = random.nextInt(9); i > 0; i--) {
            at = at.plusSeconds(random.nextInt(100_000));
            entries.add(entry("e" + i + text(), at, entries));
        }
        return new CaseFile("t" + text(), random.nextBoolean(), new Phone("f" + text(), text()), entries);
    }

    private Entry entry(String id, Instant at, List<Entry> earlier) {
        String by = "b" + text();
        return switch (random.nextInt(10)) {
            case 0 -> new Try(id, at, by, "c" + text(), text());
            case 1 -> new Repair(id, at, by, List.of("p" + text(), "q" + text()), "g" + text(), text());
            case 2 -> new Opened(id, at, by, "a" + text(), text());
            case 3 -> new Closed(id, at, by, text());
            case 4 -> new Meanwhile(id, at, by, "m" + text(), text());
            case 5 ->
                earlier.stream()
                        .filter(e -> !(e instanceof Withdrawal))
                        .filter(e -> earlier.stream()
                                .noneMatch(w -> w instanceof Withdrawal taken
                                        && taken.withdraws().equals(e.id())))
                        .findAny()
                        .<Entry>map(e -> new Withdrawal(id, at, by, e.id(), text()))
                        .orElse(new Closed(id, at, by, text()));
            case 6 ->
                new Price(
                        id,
                        at,
                        by,
                        Price.What.values()[random.nextInt(Price.What.values().length)],
                        Money.ofMinor(CurrencyUnit.of(random.nextBoolean() ? "EUR" : "JPY"), random.nextInt(1_000_000)),
                        text());
            default ->
                new Report(
                        id,
                        at,
                        by,
                        EvidenceKind.values()[random.nextInt(EvidenceKind.values().length)],
                        "o" + text(),
                        "a" + text(),
                        earlier.stream()
                                .filter(Try.class::isInstance)
                                .map(Entry::id)
                                .findFirst(),
                        text());
        };
    }

    private String text() {
        return random.ints(random.nextInt(8), 0, TELLING.length)
                .map(i -> TELLING[i])
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
