package hingewise.report.bench;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import hingewise.report.Style;
import java.util.Map;

/** A sheet as one page for a browser or for paper, which needs nothing else. */
public final class BenchHtml {
    private static final String STYLE = "bench.css";

    private BenchHtml() {}

    /** @param invented whether prices or the shop's figures are those that come with the program */
    public static String of(BenchPage page, boolean invented) {
        StringOutput output = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html)
                .render(
                        "bench/sheet.jte",
                        Map.of("page", page, "invented", invented, "style", Style.of(BenchHtml.class, STYLE)),
                        output);
        return output.toString();
    }
}
