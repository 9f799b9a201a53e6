package hingewise.intake;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
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

    /** How the ids of held-out texts begin that are by the hand of the fresh ones. */
    static final String OTHER_HAND = "kept2-";

    static List<Labelled> read(String name) {
        try {
            JsonNode root = new YAMLMapper()
                    .readTree(Path.of("src/test/resources/hingewise/listings", name + ".yaml")
                            .toFile());
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
