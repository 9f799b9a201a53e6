package hingewise.terminal;

import hingewise.plain.Quoted;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.Map;

/**
 * The world as a command sees it.
 *
 * @param out for the answer alone
 * @param err for what went wrong
 * @param look what {@code out} can show
 * @param clock stamps what is recorded
 */
public record Console(PrintStream out, PrintStream err, Look look, InstantSource clock) {
    /** The terminal or pipe that the program was started from. */
    public static Console ofSystem(Map<String, String> environment) {
        boolean terminal = System.console() != null && !"dumb".equals(environment.get("TERM"));
        boolean refused = !environment.getOrDefault("NO_COLOR", "").isEmpty();
        boolean unicode = Charset.defaultCharset().equals(StandardCharsets.UTF_8);
        return new Console(System.out, System.err, new Look(terminal && !refused, unicode), InstantSource.system());
    }

    void print(Page page) {
        out.print(page);
        out.flush();
    }

    /** Bytes that are the same in every surrounding: UTF-8. */
    void print(String json) {
        byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
        out.write(bytes, 0, bytes.length);
        out.flush();
    }

    /** One line on the error stream. */
    void complain(String sentence) {
        err.println("hingewise: " + look.shown(Quoted.line(sentence)));
        err.flush();
    }
}
