package hingewise.casefile;

import hingewise.rulebook.EvidenceKind;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells an invented case in tests, one entry a minute. */
public final class Story {
    private static final Instant START = Instant.parse("2026-03-02T09:00:00Z");

    private final String family;
    private final List<Entry> entries = new ArrayList<>();

    public Story(String family) {
        this.family = family;
    }

    private String id() {
        return "e" + (entries.size() + 1);
    }

    private Instant at() {
        return START.plusSeconds(60L * entries.size());
    }

    public Story look(String about, String answer) {
        return report(EvidenceKind.LOOK, "bench", about, answer);
    }

    public Story report(EvidenceKind kind, String by, String about, String answer) {
        return add(new Report(id(), at(), by, kind, about, answer, Optional.empty(), ""));
    }

    public Story tried(String confirmation) {
        return add(new Try(id(), at(), "bench", confirmation, ""));
    }

    public Story repaired(String part, String grade) {
        return add(new Repair(id(), at(), "bench", List.of(part), grade, ""));
    }

    public Story opened(String access) {
        return add(new Opened(id(), at(), "bench", access, ""));
    }

    public Story closed() {
        return add(new Closed(id(), at(), "bench", ""));
    }

    public Story meanwhile(String what) {
        return add(new Meanwhile(id(), at(), "bench", what, ""));
    }

    /** In euros. */
    public Story price(Price.What what, String amount) {
        return price(what, amount, "EUR");
    }

    public Story price(Price.What what, String amount, String currency) {
        return add(new Price(id(), at(), "bench", what, Price.amount(amount, currency), ""));
    }

    public Story withdrawn(String entry) {
        return add(new Withdrawal(id(), at(), "bench", entry, ""));
    }

    private Story add(Entry entry) {
        entries.add(entry);
        return this;
    }

    public CaseFile told() {
        return new CaseFile("a test", true, new Phone(family, "invented"), entries);
    }
}
