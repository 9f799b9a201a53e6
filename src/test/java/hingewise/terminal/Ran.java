package hingewise.terminal;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What one command did. */
record Ran(int exit, String out, String err) {
    static final String SMALL_RULES = Path.of("src/test/resources/rules-small").toString();
    static final String SMALL_PRICES = SMALL_RULES + "/prices.csv";
    static final String SMALL_SHOP =
            Path.of("src/test/resources/shop-small/shop.yaml").toString();
    static final Look PLAIN = new Look(false, true);

    /** Runs a command with the rule book that comes with the program, in UTF-8, without a terminal. */
    static Ran shipped(String... arguments) {
        return run(PLAIN, arguments);
    }

    /** Runs a command with the small rule book of the tests. */
    static Ran small(String... arguments) {
        return small(PLAIN, arguments);
    }

    static Ran small(Look look, String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.add("--rules");
        all.add(SMALL_RULES);
        if (List.of("assess", "sheet").contains(all.get(0))) {
            all.add("--prices");
            all.add(SMALL_PRICES);
            all.add("--shop");
            all.add(SMALL_SHOP);
        }
        return run(look, all.toArray(String[]::new));
    }

    static Ran run(Look look, String... arguments) {
        Charset charset = look.unicode() ? StandardCharsets.UTF_8 : StandardCharsets.US_ASCII;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(
                new PrintStream(out, true, charset),
                new PrintStream(err, true, charset),
                look,
                () -> Instant.parse("2026-11-20T10:00:00Z"));
        int exit = Terminal.run(
                console, (assessor, reader, demos) -> Optional.of("no window: " + demos.size() + " demo"), arguments);
        return new Ran(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
