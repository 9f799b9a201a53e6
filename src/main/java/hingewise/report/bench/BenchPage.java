package hingewise.report.bench;

import java.util.List;
import java.util.Optional;

/**
 * A sheet in words, the same for the terminal, for paper and for the window. Nothing in it is escaped.
 *
 * @param about the phone, and whether it is invented
 * @param stops why work stops, and when that ends; empty unless it does
 * @param overall what to expect of the whole plan, in sentences
 * @param care what the case itself brings up
 * @param ready what to have ready
 * @param questions while work stops, what may still be asked
 * @param outline where stations lead, each at the first place that leads to it; empty if there is none
 * @param notes how to read the figures
 */
public record BenchPage(
        String title,
        List<String> about,
        List<String> stops,
        List<String> overall,
        List<String> care,
        List<Row> ready,
        List<Row> questions,
        Optional<Twig> outline,
        List<Station> stations,
        List<End> ends,
        List<String> notes) {
    public BenchPage {
        about = List.copyOf(about);
        stops = List.copyOf(stops);
        overall = List.copyOf(overall);
        care = List.copyOf(care);
        stations = List.copyOf(stations);
        ends = List.copyOf(ends);
        ready = List.copyOf(ready);
        questions = List.copyOf(questions);
        notes = List.copyOf(notes);
    }

    /**
     * A station and those it leads to first.
     *
     * @param chance of getting there; empty for the first, which is where one begins
     */
    public record Twig(int station, String label, String chance, List<Twig> twigs) {
        public Twig {
            twigs = List.copyOf(twigs);
        }
    }

    /** What to do, with what to know before, and where each outcome leads. */
    public record Station(int number, String label, String figures, List<Row> rows, List<Branch> branches) {
        public Station {
            rows = List.copyOf(rows);
            branches = List.copyOf(branches);
        }
    }

    /** One thing to know, under a short name. */
    public record Row(String name, String text, boolean care) {
        static Row of(String name, String text) {
            return new Row(name, text, false);
        }
    }

    /**
     * Where an outcome leads.
     *
     * @param when the outcome
     * @param to where it leads, in words
     * @param station the station it leads to
     * @param end letter of the end it leads to
     */
    public record Branch(String when, String chance, String to, Optional<Integer> station, Optional<String> end) {}

    /** Where to stop. */
    public record End(String letter, String label, String chance, List<Row> rows) {
        public End {
            rows = List.copyOf(rows);
        }
    }
}
