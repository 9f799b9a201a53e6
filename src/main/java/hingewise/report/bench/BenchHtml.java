package hingewise.report.bench;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;

/** A sheet as one page for a browser or for paper, which needs nothing else. */
public final class BenchHtml {
    private static final String STYLE = "bench.css";

    private BenchHtml() {}

    /** @param invented whether prices or the shop's figures are those that come with the program */
    public static String of(BenchPage page, boolean invented) {
        StringOutput output = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html)
                .render("bench/sheet.jte", Map.of("page", page, "invented", invented, "style", style()), output);
        return output.toString();
    }

    private static String style() {
        try (InputStream in = Objects.requireNonNull(BenchHtml.class.getResourceAsStream(STYLE), STYLE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("the sheet's style is not delivered", e);
        }
    }
}
