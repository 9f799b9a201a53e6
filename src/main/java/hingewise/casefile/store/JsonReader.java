package hingewise.casefile.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import hingewise.casefile.store.Json.Member;
import hingewise.casefile.store.Json.Spot;
import hingewise.plain.Quoted;
import hingewise.plain.Utf8;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads one JSON text into values that know their places. */
final class JsonReader {
    private static final int DEEPEST = 16;
    /** Far more than any case has; a bound on memory for files made to exhaust it. */
    private static final int MOST_VALUES = 1_000_000;
    /** Names are neither pooled nor interned: a file of millions of different keys leaves nothing behind. */
    private static final JsonFactory JSON = JsonFactory.builder()
            .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .build();

    private final Source source;
    private final JsonParser parser;
    private int values;

    private JsonReader(Source source, JsonParser parser) {
        this.source = source;
        this.parser = parser;
    }

    static Json read(Source source, String text) {
        try (JsonParser parser = JSON.createParser(text)) {
            return new JsonReader(source, parser).document();
        } catch (IOException e) {
            throw new IllegalStateException("reading from memory failed", e);
        }
    }

    private Json document() throws IOException {
        try {
            if (parser.nextToken() == null) {
                throw source.problem("is empty, so it is no case file; take an earlier copy or start a new case");
            }
            Json value = value(DEEPEST);
            if (parser.nextToken() != null) {
                throw source.problem(spot(), "something follows the end of the case; remove it");
            }
            return value;
        } catch (JsonEOFException e) {
            throw source.problem(spot(e.getLocation()), "the file ends too early; take an earlier copy of it");
        } catch (StreamConstraintsException e) {
            throw source.problem(spot(parser.currentLocation()), "a number or key is far too long; correct it");
        } catch (JsonProcessingException e) {
            throw source.problem(
                    spot(e.getLocation()),
                    "this is not JSON (" + Quoted.line(e.getOriginalMessage())
                            + "); correct it or take an earlier copy");
        }
    }

    private Json value(int deeper) throws IOException {
        if (deeper == 0) {
            throw source.problem(spot(), "lists and objects stand too deep in one another; the file is damaged");
        }
        if (++values > MOST_VALUES) {
            throw source.problem(spot(), "holds more than " + MOST_VALUES + " values; no case file is that large");
        }
        Spot at = spot();
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(at, deeper - 1);
            case START_ARRAY -> list(at, deeper - 1);
            case VALUE_STRING -> new Json.Text(at, paired(at, parser.getText()));
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Number(at, parser.getText());
            case VALUE_TRUE -> new Json.Flag(at, true);
            case VALUE_FALSE -> new Json.Flag(at, false);
            default -> new Json.Nothing(at);
        };
    }

    private Json object(Spot at, int deeper) throws IOException {
        Map<String, Member> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            Spot keyAt = spot();
            String key = paired(keyAt, parser.currentName());
            parser.nextToken();
            if (members.put(key, new Member(keyAt, value(deeper))) != null) {
                throw source.problem(keyAt, "the key " + Quoted.of(key) + " stands here twice; remove one");
            }
        }
        return new Json.Members(at, members);
    }

    private Json list(Spot at, int deeper) throws IOException {
        List<Json> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(deeper));
        }
        return new Json.Items(at, items);
    }

    /** JSON can spell half a character, which no file in UTF-8 can hold. */
    private String paired(Spot at, String text) {
        if (Utf8.canHold(text)) {
            return text;
        }
        throw source.problem(at, Quoted.of(text) + " holds half a character (a lone surrogate); retype it");
    }

    private Spot spot() {
        return spot(parser.currentTokenLocation());
    }

    private static Spot spot(JsonLocation at) {
        return new Spot(Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()));
    }
}
