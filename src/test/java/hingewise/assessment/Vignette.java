package hingewise.assessment;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Phone;
import hingewise.casefile.Report;
import hingewise.rulebook.EvidenceKind;
import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A whole case as a technician tells it, with what a good answer to it holds.
 *
 * @param told the case in words
 * @param family family id
 * @param seen what is recorded of it, in order
 * @param among causes that must be in the first three; none where nothing is wrong
 * @param notOrdered parts that must not be on the order list
 * @param firstTry any of these is right as the first thing to do; none where a stop must come first
 * @param stops whether a stopping caution must stand
 * @param nothingWrong whether the hardware is sound
 */
record Vignette(
        String id,
        String told,
        String family,
        List<Seen> seen,
        List<String> among,
        List<String> notOrdered,
        List<String> firstTry,
        boolean stops,
        boolean nothingWrong) {
    private static final Pattern SEEN = Pattern.compile("([a-z0-9-]+)=([a-z0-9-]+)(?:@([a-z]+))?");
    private static final Set<String> HEAD = Set.of("format", "invented", "vignettes");
    private static final Set<String> FIELDS =
            Set.of("told", "family", "seen", "among", "not-ordered", "first-try", "stops", "nothing-wrong");

    /** One recorded answer; {@code about} names an observation or a choice. */
    record Seen(String about, String answer, EvidenceKind kind) {}

    /**
     * Reads one file of vignettes.
     *
     * @throws IllegalArgumentException if it is not of the form that the file's head states
     */
    static List<Vignette> read(String file) throws IOException {
        ObjectMapper yaml = new ObjectMapper(new YAMLFactory()).enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION);
        try (InputStream in = Vignette.class.getResourceAsStream("/hingewise/vignettes/" + file)) {
            if (in == null) {
                throw new IllegalArgumentException("no file " + file);
            }
            JsonNode root = yaml.readTree(in);
            fieldsMustBe(file, root, HEAD);
            must(root.path("format").asInt() == 1, file + ": format must be 1");
            must(root.path("invented").asBoolean(), file + ": must be marked as invented");
            return root.path("vignettes").properties().stream()
                    .map(e -> of(e.getKey(), e.getValue()))
                    .toList();
        }
    }

    CaseFile caseFile() {
        List<Entry> entries = new ArrayList<>();
        for (Seen s : seen) {
            entries.add(new Report(
                    "e" + (entries.size() + 1),
                    Instant.EPOCH,
                    s.kind().id(),
                    s.kind(),
                    s.about(),
                    s.answer(),
                    Optional.empty(),
                    ""));
        }
        return new CaseFile(id, true, new Phone(family, ""), entries);
    }

    private static Vignette of(String id, JsonNode node) {
        fieldsMustBe(id, node, FIELDS);
        return new Vignette(
                id,
                node.path("told").asText(),
                node.path("family").asText(),
                texts(id, node.path("seen")).stream().map(s -> seen(id, s)).toList(),
                texts(id, node.path("among")),
                texts(id, node.path("not-ordered")),
                texts(id, node.path("first-try")),
                truth(id, node.path("stops")),
                truth(id, node.path("nothing-wrong")));
    }

    private static Seen seen(String id, String text) {
        Matcher m = SEEN.matcher(text);
        must(m.matches(), id + ": \"" + text + "\" must read about=answer or about=answer@kind");
        EvidenceKind kind = Optional.ofNullable(m.group(3))
                .map(k -> EvidenceKind.valueOf(k.toUpperCase(java.util.Locale.ROOT)))
                .orElse(EvidenceKind.LOOK);
        return new Seen(m.group(1), m.group(2), kind);
    }

    private static List<String> texts(String id, JsonNode node) {
        must(node.isArray(), id + ": a list was expected, not " + node);
        return node.valueStream().map(JsonNode::asText).toList();
    }

    private static boolean truth(String id, JsonNode node) {
        must(node.isBoolean(), id + ": true or false was expected, not " + node);
        return node.asBoolean();
    }

    private static void fieldsMustBe(String where, JsonNode node, Set<String> names) {
        Set<String> found = new TreeSet<>();
        node.fieldNames().forEachRemaining(found::add);
        must(found.equals(names), where + ": holds " + found + ", must hold " + new TreeSet<>(names));
    }

    private static void must(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalArgumentException(otherwise);
        }
    }
}
