package hingewise.report.handbook;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import hingewise.report.Style;
import java.util.LinkedHashMap;
import java.util.Map;

/** The handbook as pages for a browser, which need nothing but each other. */
public final class HandbookPages {
    static final String STYLE = "handbook.css";

    private HandbookPages() {}

    /** Text by file name. */
    public static Map<String, String> of(Handbook handbook) {
        TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("index.html", render(engine, "handbook/index.jte", Map.of("handbook", handbook)));
        for (Chapter chapter : Chapter.values()) {
            pages.put(
                    chapter.file(),
                    render(engine, "handbook/chapter.jte", Map.of("handbook", handbook, "chapter", chapter)));
        }
        pages.put(STYLE, Style.of(HandbookPages.class, STYLE));
        return pages;
    }

    private static String render(TemplateEngine engine, String template, Map<String, Object> values) {
        StringOutput output = new StringOutput();
        engine.render(template, values, output);
        return output.toString();
    }
}
