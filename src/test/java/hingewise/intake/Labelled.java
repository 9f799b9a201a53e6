package hingewise.intake;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** A listing text with what a careful reader takes from it, as {@code observation=yes} or {@code =no}. */
record Labelled(String id, String language, String family, String text, Set<String> labels) {
    /** The texts that phrases may be written by. */
    static final String WRITTEN = "written";

    /** Texts by another hand, which phrases were widened by. */
    static final String FRESH = "fresh";

    /** The texts that are only counted, never looked at. */
    static final String HELD_OUT = "held-out";

    /** How the ids of held-out texts begin that are by the hand of the written ones. */
    static final String FIRST_HAND = "kept-";

    /** How the ids of held-out texts begin that are by the hand of the fresh ones. */
    static final String OTHER_HAND = "kept2-";

    /** How the ids of held-out texts begin that are by further hands, which write no phrases. */
    static final String FURTHER_HANDS = "kept3-";

    /** How the files are called whose texts tell how far claims are to be trusted. */
    private static final String FOR_TRUST = "trust-";

    private static final Path FOLDER = Path.of("src/test/resources/hingewise/listings");

    /** The files that further hands have added for phrases to be widened by, each called {@code fresh-} and a name. */
    static List<String> added() {
        return called("fresh-");
    }

    /** Texts that neither phrases nor examples are written by, so that trust can be fitted to them. */
    static List<Labelled> forTrust() {
        return called(FOR_TRUST).stream().flatMap(n -> read(n).stream()).toList();
    }

    private static List<String> called(String beginning) {
        List<String> names = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(FOLDER, beginning + "*.yaml")) {
            files.forEach(f -> names.add(f.getFileName().toString().replace(".yaml", "")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return names.stream().sorted().toList();
    }

    static List<Labelled> read(String name) {
        try {
            JsonNode root =
                    new YAMLMapper().readTree(FOLDER.resolve(name + ".yaml").toFile());
            List<Labelled> all = new ArrayList<>();
            for (JsonNode n : root.get("listings")) {
                Set<String> labels = new TreeSet<>();
                n.get("labels").forEach(l -> labels.add(l.asText()));
                all.add(new Labelled(
                        n.get("id").asText(),
                        n.get("language").asText(),
                        n.get("family").asText(),
                        n.get("text").asText(),
                        labels));
            }
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
