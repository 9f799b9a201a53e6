package hingewise.listings;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A listing with the answers a careful reader takes from it.
 *
 * @param language {@code en} or {@code de}
 * @param family family id
 * @param labels observation ids with the answer that the text settles; what is not among them it leaves open
 */
record LabelledText(String id, String language, String family, String text, Map<String, Boolean> labels) {
    private static final Pattern LABEL = Pattern.compile("([a-z0-9-]+)=(yes|no)");
    private static final Path FOLDER = Path.of("src/test/resources/hingewise/listings");
    private static final Set<String> FIELDS = Set.of("id", "language", "family", "text", "labels");

    /**
     * Reads one file of labelled texts.
     *
     * @throws IllegalArgumentException if it is not a list of {@code id, language, family, text, labels}
     */
    static List<LabelledText> read(String file) throws IOException {
        ObjectMapper yaml = new ObjectMapper(new YAMLFactory()).enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION);
        try (InputStream in = LabelledText.class.getResourceAsStream("/hingewise/listings/" + file)) {
            JsonNode root = yaml.readTree(in);
            if (root == null || root.size() != 1 || !root.path("listings").isArray()) {
                throw new IllegalArgumentException(file + ": the one key at the top is listings, and it holds a list");
            }
            List<LabelledText> texts = new ArrayList<>();
            root.get("listings").forEach(node -> texts.add(of(file, node)));
            return List.copyOf(texts);
        }
    }

    /** Reads every file that further hands have added to the folder, each called {@code fresh-} and a name. */
    static List<LabelledText> readAdded() throws IOException {
        List<LabelledText> texts = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(FOLDER, "fresh-*.yaml")) {
            for (Path file : files) {
                texts.addAll(read(file.getFileName().toString()));
            }
        }
        return List.copyOf(texts);
    }

    private static LabelledText of(String file, JsonNode node) {
        String id = node.path("id").asText();
        Set<String> fields = new TreeSet<>();
        node.fieldNames().forEachRemaining(fields::add);
        if (!fields.equals(FIELDS)) {
            throw new IllegalArgumentException(file + ", " + id + ": has " + fields + ", not " + new TreeSet<>(FIELDS));
        }
        Map<String, Boolean> labels = new LinkedHashMap<>();
        for (JsonNode label : node.get("labels")) {
            Matcher parts = LABEL.matcher(label.asText());
            if (!parts.matches()) {
                throw new IllegalArgumentException(
                        file + ", " + id + ": " + label.asText() + " is not observation=yes or observation=no");
            }
            if (labels.put(parts.group(1), parts.group(2).equals("yes")) != null) {
                throw new IllegalArgumentException(file + ", " + id + ": " + parts.group(1) + " is labelled twice");
            }
        }
        return new LabelledText(
                id,
                node.get("language").asText(),
                node.get("family").asText(),
                node.get("text").asText(),
                Map.copyOf(labels));
    }
}
