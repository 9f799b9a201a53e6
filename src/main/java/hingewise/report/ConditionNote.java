package hingewise.report;

import java.util.List;

/**
 * What may be said of a phone when it is sold: only what was recorded.
 *
 * @param title what the case is called
 * @param phone the phone as the user calls it; may be blank
 * @param invented whether this is a made-up example
 * @param sections those that have something to say, in reading order
 * @param repaired whether parts were fitted
 * @param notTested what the full round of tests holds and nobody has looked at, since the last repair if there was one, in
 *     a few words each
 * @param openingRecorded whether any entry says that the phone was opened here
 */
public record ConditionNote(
        String title,
        String phone,
        boolean invented,
        List<Section> sections,
        boolean repaired,
        List<String> notTested,
        boolean openingRecorded) {
    public ConditionNote {
        sections = List.copyOf(sections);
        notTested = List.copyOf(notTested);
    }

    /** What stands above the list of what was not tested. */
    public String notTestedHeading() {
        return repaired ? "Not tested since the repair" : "Not tested";
    }

    /** What a sentence is about, in reading order. */
    public enum Topic {
        WORKS("Tested and in order"),
        FAULTY("Tested and not in order"),
        DONE("Work done"),
        OPENING("Opening"),
        BEFORE("Found before the work and not tested since"),
        CHANGED("Found before the work and otherwise since"),
        PICTURED("Seen in pictures only"),
        CLAIMED("Said by others only, not tested"),
        DISPUTED("Told or seen both ways"),
        UNSURE("Looked at, could not be told");

        private final String heading;

        Topic(String heading) {
            this.heading = heading;
        }

        public String heading() {
            return heading;
        }
    }

    /** All sentences on one topic; never empty. */
    public record Section(Topic topic, List<Sentence> sentences) {
        public Section {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * One statement.
     *
     * @param entries ids of the entries that support it; never empty
     */
    public record Sentence(String text, List<String> entries) {
        /** @throws IllegalArgumentException if no entry supports it */
        public Sentence {
            entries = List.copyOf(entries);
            if (entries.isEmpty()) {
                throw new IllegalArgumentException("no entry supports the sentence \"" + text + "\"");
            }
        }
    }
}
