package hingewise.intake.sheet;

import hingewise.intake.sheet.Appraisal.LikelyCause;
import hingewise.intake.sheet.Outcome.Appraised;
import hingewise.intake.sheet.Outcome.Place;
import hingewise.intake.sheet.Outcome.Skipped;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Outcomes as bytes, for files that only this run and its resumption read. */
final class OutcomeCodec {
    private static final int APPRAISED = 1;
    private static final int SKIPPED = 2;

    private final CurrencyUnit currency;

    OutcomeCodec(CurrencyUnit currency) {
        this.currency = currency;
    }

    private interface Item<T> {
        void write(DataOutputStream out, T value) throws IOException;
    }

    private interface Source<T> {
        T read(DataInputStream in) throws IOException;
    }

    byte[] bytes(Outcome outcome) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        write(new DataOutputStream(bytes), outcome);
        return bytes.toByteArray();
    }

    Outcome outcome(byte[] bytes) throws IOException {
        return read(new DataInputStream(new ByteArrayInputStream(bytes)));
    }

    private static void write(DataOutputStream out, Outcome outcome) throws IOException {
        out.writeByte(outcome instanceof Appraised ? APPRAISED : SKIPPED);
        out.writeLong(outcome.line());
        out.writeLong(outcome.next().at());
        out.writeLong(outcome.next().line());
        if (outcome instanceof Appraised row) {
            list(out, row.cells(), OutcomeCodec::text);
            text(out, row.price().getAmount().toPlainString());
            appraisal(out, row.appraisal());
        } else if (outcome instanceof Skipped row) {
            text(out, row.problem());
        }
    }

    private static void appraisal(DataOutputStream out, Appraisal a) throws IOException {
        for (Money amount : List.of(a.profit(), a.spread(), a.ceiling())) {
            text(out, amount.getAmount().toPlainString());
        }
        out.writeDouble(a.chanceOfLoss());
        list(out, a.claims(), OutcomeCodec::text);
        list(out, a.causes(), (o, c) -> {
            text(o, c.id());
            text(o, c.label());
            o.writeDouble(c.chance());
        });
        list(out, a.ask(), OutcomeCodec::text);
        list(out, a.stops(), OutcomeCodec::text);
    }

    private Outcome read(DataInputStream in) throws IOException {
        int kind = in.readByte();
        long line = in.readLong();
        Place next = new Place(in.readLong(), in.readLong());
        return switch (kind) {
            case APPRAISED -> new Appraised(line, next, list(in, OutcomeCodec::text), money(in), appraisal(in));
            case SKIPPED -> new Skipped(line, next, text(in));
            default -> throw new IOException("an outcome of the unknown kind " + kind);
        };
    }

    private Appraisal appraisal(DataInputStream in) throws IOException {
        Money profit = money(in);
        Money spread = money(in);
        Money ceiling = money(in);
        return new Appraisal(
                profit,
                spread,
                in.readDouble(),
                ceiling,
                list(in, OutcomeCodec::text),
                list(in, i -> new LikelyCause(text(i), text(i), i.readDouble())),
                list(in, OutcomeCodec::text),
                list(in, OutcomeCodec::text));
    }

    private Money money(DataInputStream in) throws IOException {
        return Money.of(currency, new BigDecimal(text(in)));
    }

    private static <T> void list(DataOutputStream out, List<T> values, Item<T> item) throws IOException {
        out.writeInt(values.size());
        for (T value : values) {
            item.write(out, value);
        }
    }

    private static <T> List<T> list(DataInputStream in, Source<T> source) throws IOException {
        int size = in.readInt();
        List<T> values = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            values.add(source.read(in));
        }
        return values;
    }

    private static void text(DataOutputStream out, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static String text(DataInputStream in) throws IOException {
        byte[] bytes = new byte[in.readInt()];
        in.readFully(bytes);
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
