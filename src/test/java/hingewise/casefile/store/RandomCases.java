package hingewise.casefile.store;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Phone;
import hingewise.casefile.Report;
import hingewise.rulebook.EvidenceKind;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

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
        for (int i = random.nextInt(6); i > 0; i--) {
            entries.add(new Report(
                    "e" + i + text(),
                    Instant.ofEpochSecond(random.nextLong(-100_000_000_000L, 100_000_000_000L), random.nextInt()),
                    "b" + text(),
                    EvidenceKind.values()[random.nextInt(EvidenceKind.values().length)],
                    "o" + text(),
                    "a" + text(),
                    text()));
        }
        return new CaseFile("t" + text(), random.nextBoolean(), new Phone("f" + text(), text()), entries);
    }

    private String text() {
        return random.ints(random.nextInt(8), 0, TELLING.length)
                .map(i -> TELLING[i])
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
