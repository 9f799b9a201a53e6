package hingewise.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

/** Sheets of invented listings, the same for the same seed. */
final class InventedSheet {
    private static final String[] COMPLAINTS = {
        "Inner screen is black, the phone still vibrates when switched on.",
        "Dark spot at the fold, and it is growing.",
        "It does not charge by cable, wireless charging works.",
        "Does not turn on at all.",
        "The hinge makes a grinding noise and it does not close flat.",
        "Green vertical line on the inner screen.",
        "Back glass is cracked.",
        "The outer screen is dead.",
        "The SIM card is not recognised.",
        "Touch does not work along the fold.",
        "Battery drains fast and it shuts down at 30 percent.",
        "Sold as faulty, no idea what is wrong with it.",
    };
    private static final String[] HISTORIES = {
        "",
        "Never opened.",
        "It was opened before.",
        "Was dropped once.",
        "Has never been wet.",
        "It got wet last summer."
    };
    private static final String[] FILLERS = {
        "Comes with the box.", "Collection or post.", "Bought two years ago, now I have another one.",
                "No returns please.",
        "Photos show the actual phone.", "Feel free to ask.", "Charger not included.", "Selling for my brother."
    };

    /** The different complaints and histories, each for both families; the first rows go through them all. */
    static final int KINDS = COMPLAINTS.length * HISTORIES.length * 2;

    private InventedSheet() {}

    static void write(Path file, long rows, long seed) throws IOException {
        Random random = new Random(seed);
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write("id,text,price,shipping,family\n");
            for (long row = 0; row < rows; row++) {
                int kind = row < KINDS ? (int) row : random.nextInt(KINDS);
                String text = pick(FILLERS, random) + " " + COMPLAINTS[kind % COMPLAINTS.length] + " "
                        + pick(FILLERS, random) + " " + HISTORIES[kind / COMPLAINTS.length % HISTORIES.length] + " "
                        + pick(FILLERS, random);
                int price = 20 + random.nextInt(400);
                out.write("L" + row + ",\"" + text + "\"," + price + ".00," + (4 + random.nextInt(6)) + ".50,"
                        + (kind < KINDS / 2 ? "clamshell" : "book") + "\n");
            }
        }
    }

    private static String pick(String[] of, Random random) {
        return of[random.nextInt(of.length)];
    }
}
