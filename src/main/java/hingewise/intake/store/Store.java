package hingewise.intake.store;

import hingewise.intake.Learned;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.zip.CRC32;

/**
 * What was learned when the program was built: a file for each language. It only saves time. Whatever is missing,
 * damaged or of another rule book is as if it were not there, and nothing is said of it.
 *
 * @param files a file's bytes, by its name
 */
record Store(Function<String, Optional<byte[]>> files) {
    /** The files that come with the program. */
    static final Store SHIPPED = new Store(Store::resource);

    private static final String FORMAT = "hingewise learned 2";

    /**
     * What stands at the head of each file.
     *
     * @param rules digest of the rule book that was learned from
     * @param lessons digest of all in it that was learned from
     * @param learner digest of the code that learned
     */
    record Origin(String rules, String lessons, String learner) {}

    private record File(Origin origin, byte[] packed) {}

    static String name(String language) {
        return "learned-" + language;
    }

    /** @param fits whether what comes from there is what these languages teach */
    Optional<Learned> find(Collection<String> languages, Predicate<Origin> fits) {
        Map<String, byte[]> packed = new LinkedHashMap<>();
        for (String language : languages) {
            file(language).filter(f -> fits.test(f.origin())).ifPresent(f -> packed.put(language, f.packed()));
        }
        return packed.size() == languages.size() ? unpacked(packed) : Optional.empty();
    }

    private static Optional<Learned> unpacked(Map<String, byte[]> packed) {
        try {
            return Optional.of(Learned.unpacked(packed));
        } catch (RuntimeException e) {
            // It is of another make than its head says, as while code is being changed: then it is learned again.
            return Optional.empty();
        }
    }

    private Optional<File> file(String language) {
        return files.apply(name(language)).flatMap(Store::opened);
    }

    static byte[] file(Origin origin, byte[] packed) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeUTF(FORMAT);
        out.writeUTF(Learned.KIND);
        out.writeUTF(origin.rules());
        out.writeUTF(origin.lessons());
        out.writeUTF(origin.learner());
        out.writeLong(sum(packed));
        out.write(packed);
        return bytes.toByteArray();
    }

    private static Optional<File> opened(byte[] bytes) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            boolean readable = in.readUTF().equals(FORMAT) && in.readUTF().equals(Learned.KIND);
            Origin origin = new Origin(in.readUTF(), in.readUTF(), in.readUTF());
            long sum = in.readLong();
            byte[] packed = in.readAllBytes();
            return readable && sum == sum(packed) ? Optional.of(new File(origin, packed)) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static long sum(byte[] bytes) {
        CRC32 sum = new CRC32();
        sum.update(bytes);
        return sum.getValue();
    }

    private static Optional<byte[]> resource(String name) {
        try (InputStream in = Store.class.getResourceAsStream(name)) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
