package hingewise.casefile.store;

import java.util.List;
import java.util.Map;

/** A JSON value that knows where it stands in its file. */
sealed interface Json {
    Spot at();

    /** What it is, as a person would call it. */
    String called();

    /** A place in a file; both count from 1. */
    record Spot(int line, int column) {}

    record Text(Spot at, String value) implements Json {
        @Override
        public String called() {
            return "a text";
        }
    }

    /** A number, kept as written. */
    record Number(Spot at, String written) implements Json {
        @Override
        public String called() {
            return "the number " + (written.length() > 20 ? written.substring(0, 20) + "…" : written);
        }
    }

    record Flag(Spot at, boolean value) implements Json {
        @Override
        public String called() {
            return String.valueOf(value);
        }
    }

    record Nothing(Spot at) implements Json {
        @Override
        public String called() {
            return "null";
        }
    }

    record Items(Spot at, List<Json> items) implements Json {
        @Override
        public String called() {
            return "a list";
        }
    }

    record Members(Spot at, Map<String, Member> members) implements Json {
        @Override
        public String called() {
            return "an object";
        }
    }

    /** A value under a key; {@code at} is where the key stands. */
    record Member(Spot at, Json value) {}
}
