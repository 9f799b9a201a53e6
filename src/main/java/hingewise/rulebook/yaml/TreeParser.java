package hingewise.rulebook.yaml;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import hingewise.plain.Quoted;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;

/**
 * YAML text into a tree of values that know their lines. Values stay as written ({@code yes}, {@code .75},
 * {@code 010}): what they mean is the business of whoever reads them. What YAML offers beyond keys, lists and values
 * (anchors, tags, several documents) is refused.
 */
public final class TreeParser {
    /** Deeper than anything this program reads, which needs six. */
    private static final int DEEPEST = 12;

    /** What a block of text that keeps its lines begins with. */
    private static final char BLOCK = '|';

    private final Source source;
    private final YAMLParser parser;
    /** Where each line begins. */
    private final int[] starts;

    private TreeParser(Source source, YAMLParser parser) {
        this.source = source;
        this.parser = parser;
        this.starts = source.starts();
    }

    /** The one document in the text; nothing when the text is empty. */
    public static Optional<Node> parse(Source source) throws Refusal {
        LoaderOptions limits = new LoaderOptions();
        limits.setCodePointLimit(Source.LARGEST_BYTES);
        YAMLFactory factory = YAMLFactory.builder().loaderOptions(limits).build();
        try (YAMLParser parser = factory.createParser(source.text())) {
            return new TreeParser(source, parser).document();
        } catch (JsonProcessingException e) {
            throw notYaml(source, e);
        } catch (IOException e) {
            throw new Refusal(new Place(source.name(), 0), "the file cannot be read", "See that it is a text file.");
        }
    }

    private Optional<Node> document() throws IOException, Refusal {
        JsonToken first = parser.nextToken();
        if (first == null) {
            return Optional.empty();
        }
        Node root = node(first, here(), "", 1);
        if (parser.nextToken() != null) {
            throw new Refusal(
                    here(),
                    "a second document begins here",
                    "Take out the line \"---\", or put the second document into a file of its own.");
        }
        return Optional.of(root);
    }

    /**
     * The value that begins at the present token.
     *
     * @param from where a list or block is said to stand
     */
    private Node node(JsonToken token, Place from, String under, int depth) throws IOException, Refusal {
        Place place = here();
        refuseReferences(place);
        if (token == JsonToken.START_OBJECT || token == JsonToken.START_ARRAY) {
            if (depth > DEEPEST) {
                throw new Refusal(
                        place,
                        "this is nested more than " + DEEPEST + " levels deep",
                        "Compare with the format: nothing in it is so deep.");
            }
            return token == JsonToken.START_OBJECT ? mapping(from, under, depth) : sequence(from, under, depth);
        }
        return token == JsonToken.VALUE_NULL ? new Node.Scalar(place, under, "") : scalar(place, under);
    }

    private Node.Scalar scalar(Place place, String under) throws IOException {
        String whole = parser.getText();
        int blank = (int) whole.lines().takeWhile(String::isBlank).count();
        OptionalInt firstLine = keepsLines(whole) ? OptionalInt.of(place.line() + 1 + blank) : OptionalInt.empty();
        return new Node.Scalar(place, under, whole.strip(), firstLine);
    }

    /** Whether the present text is a block behind "|". */
    private boolean keepsLines(String text) {
        JsonLocation start = parser.currentTokenLocation();
        if (text.indexOf('\n') < 0) {
            return false;
        }
        int at = source.text().offsetByCodePoints(starts[start.getLineNr() - 1], start.getColumnNr() - 1);
        return source.text().charAt(at) == BLOCK;
    }

    private Node mapping(Place place, String under, int depth) throws IOException, Refusal {
        List<Node.Member> members = new ArrayList<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            Place at = here();
            refuseReferences(at);
            String key = parser.currentName();
            members.add(new Node.Member(key, at, node(parser.nextToken(), at, key, depth + 1)));
        }
        return new Node.Mapping(place, under, members);
    }

    private Node sequence(Place place, String under, int depth) throws IOException, Refusal {
        List<Node> items = new ArrayList<>();
        for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
            items.add(node(t, here(), under, depth + 1));
        }
        return new Node.Sequence(place, under, items);
    }

    private void refuseReferences(Place place) throws IOException, Refusal {
        if (parser.isCurrentAlias()) {
            throw new Refusal(place, "this refers to another place by \"*\"", "Write it out.");
        }
        if (parser.getObjectId() != null) {
            throw new Refusal(place, "this is marked with \"&\" to be used again", "Write it out wherever it is used.");
        }
        if (parser.getTypeId() != null) {
            throw new Refusal(place, "this is tagged with \"!\"", "Take the tag out.");
        }
    }

    private Place here() {
        int line = parser.currentTokenLocation().getLineNr();
        return new Place(source.name(), Math.max(1, Math.min(line, starts.length)));
    }

    private static Refusal notYaml(Source source, JsonProcessingException e) {
        int line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
        String what = "a key must be a plain word";
        if (e.getCause() instanceof MarkedYAMLException marked) {
            line = marked.getProblemMark() == null
                    ? line
                    : marked.getProblemMark().getLine() + 1;
            what = marked.getProblem() == null ? "the structure is broken" : marked.getProblem();
        } else if (e.getCause() instanceof YAMLException) {
            what = "the text has characters that are not allowed";
        }
        return new Refusal(
                new Place(source.name(), Math.max(1, Math.min(line, source.lines()))),
                "this is not readable YAML (" + Quoted.line(what) + ")",
                "Look at the indentation, quotes, brackets and colons of this line and the one before.");
    }
}
