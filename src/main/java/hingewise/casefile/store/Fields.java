package hingewise.casefile.store;

import hingewise.casefile.store.Json.Member;
import hingewise.plain.Quoted;
import hingewise.rulebook.NearestId;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The members of one object of a case file, taken out by key and type.
 *
 * @param owner what the object describes, for messages, such as "the case"
 */
record Fields(Source source, String owner, Json.Members object) {
    /** These fields of a value that must be an object. */
    static Fields of(Source source, String owner, Json value) {
        if (value instanceof Json.Members members) {
            return new Fields(source, owner, members);
        }
        throw source.problem(value.at(), owner + " must be an object in braces, but here is " + value.called());
    }

    /** Complains about the first key that is not among these. */
    void allow(Collection<String> keys) {
        for (Map.Entry<String, Member> member : object.members().entrySet()) {
            if (!keys.contains(member.getKey())) {
                throw source.problem(
                        member.getValue().at(),
                        owner + " has no key " + Quoted.of(member.getKey()) + ". "
                                + NearestId.advice(member.getKey(), keys));
            }
        }
    }

    boolean has(String key) {
        return object.members().containsKey(key);
    }

    Json value(String key) {
        Member member = object.members().get(key);
        if (member == null) {
            throw source.problem(object.at(), owner + " lacks the key \"" + key + "\"; add it");
        }
        return member.value();
    }

    /** A text that says something. */
    String text(String key) {
        String text = anyText(key);
        if (text.isBlank()) {
            throw source.problem(value(key).at(), "\"" + key + "\" of " + owner + " is blank; fill it in");
        }
        return text;
    }

    /** A text, perhaps blank. */
    String anyText(String key) {
        Json value = value(key);
        if (value instanceof Json.Text text) {
            return text.value();
        }
        throw wrongType(key, value, "a text in double quotes");
    }

    /** A text, perhaps blank; a key left out is a blank text. */
    String remark(String key) {
        return has(key) ? anyText(key) : "";
    }

    /** A list of texts that say something; at least one. */
    List<String> texts(String key) {
        List<Json> items = list(key);
        if (items.isEmpty()) {
            throw source.problem(value(key).at(), "\"" + key + "\" of " + owner + " is empty; name at least one");
        }
        return items.stream()
                .map(item -> {
                    if (item instanceof Json.Text text && !text.value().isBlank()) {
                        return text.value();
                    }
                    throw source.problem(
                            item.at(),
                            "\"" + key + "\" of " + owner + " must hold texts, but here is " + item.called());
                })
                .toList();
    }

    boolean flag(String key) {
        Json value = value(key);
        if (value instanceof Json.Flag flag) {
            return flag.value();
        }
        throw wrongType(key, value, "true or false");
    }

    List<Json> list(String key) {
        Json value = value(key);
        if (value instanceof Json.Items items) {
            return items.items();
        }
        throw wrongType(key, value, "a list in square brackets");
    }

    Instant instant(String key) {
        String text = text(key);
        try {
            return Instant.parse(text);
        } catch (DateTimeException e) {
            throw source.problem(
                    value(key).at(),
                    "\"" + key + "\" of " + owner + " is " + Quoted.of(text)
                            + ", which is no point in time; write it like 2026-11-20T10:00:00Z");
        }
    }

    /** A whole number of at least 1, or empty when it is too large to matter which. */
    Optional<Integer> count(String key) {
        Json value = value(key);
        if (value instanceof Json.Number number && number.written().matches("[1-9][0-9]*")) {
            return number.written().length() < 10 ? Optional.of(Integer.valueOf(number.written())) : Optional.empty();
        }
        throw wrongType(key, value, "a whole number from 1 up, without quotes");
    }

    private CaseFileException wrongType(String key, Json value, String wanted) {
        return source.problem(
                value.at(), "\"" + key + "\" of " + owner + " must be " + wanted + ", but here is " + value.called());
    }
}
