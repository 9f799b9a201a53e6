package hingewise.report.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.review.Small;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HandbookPagesTest {
    private static final Pattern LINK = Pattern.compile("href=\"([^\"]*)\"");
    private static final Pattern ID = Pattern.compile("<article id=\"([^\"]*)\"");

    @TempDir
    Path folder;

    private Map<String, String> pages(Small book) throws IOException {
        return HandbookPages.of(Handbook.of(book.readIn(folder)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"index.html", "causes.html", "confirmations.html"})
    void pagesOfTheSmallBookAreAsAccepted(String name) throws IOException {
        assertThat(pages(Small.book()).get(name))
                .isEqualTo(Files.readString(Path.of("src/test/resources/handbook", name)));
    }

    @Test
    void whateverStandsInARuleBookIsTextAndNoMarkup() throws IOException {
        String hostile = "<script>alert(1)</script> \\\"onload=x & more";
        Map<String, String> pages = pages(Small.book()
                .with("label: dark blobs at the fold", "label: \"" + hostile + "\"")
                .with("because: Blobs settle it.", "because: \"" + hostile + "\"")
                .with("title: A small rule book for tests", "title: \"</title>" + hostile + "\""));
        pages.forEach((name, text) -> {
            if (name.endsWith(".html")) {
                assertThat(text).as(name).doesNotContain("<script").doesNotContain("</title><");
                assertThat(text).as(name).contains("&lt;script&gt;alert(1)&lt;/script&gt;");
            }
        });
    }

    @Test
    void everyLinkOfTheShippedHandbookLeadsToAnArticle() {
        Map<String, String> pages = HandbookPages.of(Handbook.of(shipped()));
        Set<String> there = new TreeSet<>(pages.keySet());
        pages.forEach((name, text) -> matches(ID, text).forEach(id -> there.add(name + "#" + id)));
        List<String> dead = new ArrayList<>();
        pages.forEach((name, text) -> matches(LINK, text).stream()
                .filter(link -> !link.equals("#main"))
                .map(link -> link.startsWith("#") ? name + link : link)
                .filter(link -> !there.contains(link))
                .forEach(dead::add));
        assertThat(there).hasSizeGreaterThan(100);
        assertThat(dead).isEmpty();
    }

    @Test
    void noPageNeedsTheNetworkOrAScript() {
        HandbookPages.of(Handbook.of(shipped()))
                .forEach((name, text) -> assertThat(text.replaceAll("(?s)<p class=\"because\">.*?</p>", ""))
                        .as(name)
                        .doesNotContain("http:")
                        .doesNotContain("https:")
                        .doesNotContain("<script")
                        .doesNotContain("@import")
                        .doesNotContain("url("));
    }

    @Test
    void everyEntryHasItsArticle() {
        RuleBook rules = shipped();
        Handbook handbook = Handbook.of(rules);
        assertThat(handbook.of(Chapter.CAUSES)).hasSameSizeAs(rules.causes().keySet());
        assertThat(handbook.of(Chapter.OBSERVATIONS))
                .hasSize(rules.observations().size() + rules.choices().size());
        assertThat(handbook.of(Chapter.CAUTIONS)).hasSameSizeAs(rules.cautions().keySet());
        assertThat(handbook.of(Chapter.CAUSES))
                .allSatisfy(a -> assertThat(a.groups()).isNotEmpty());
    }

    @Test
    void whatTellsACauseFromItsNeighbourIsSaid() throws IOException {
        Handbook handbook = Handbook.of(Small.book()
                .adding(
                        "causes",
                        "  glue-old:\n    label: Glue old\n    component: battery\n    base-rate: .02\n"
                                + "    signs: {back-loose: most}\n    because: Invented.\n    source: invented\n")
                .readIn(folder));
        Article swollen = handbook.about("swollen-battery").get(0);
        // Bulges: 1 − .2 · .995 = .801 against .005; flat: .995 against .199, five times; worked by hand.
        assertThat(swollen.groups())
                .filteredOn(g -> g.heading().equals("Easily taken for"))
                .flatExtracting(Group::items)
                .singleElement()
                .satisfies(i -> assertThat(i.text())
                        .isEqualTo("This one, rather: A back bulges (over 100 times as likely). The other, rather: Both"
                                + " backs are flat (5 times as likely)."));
    }

    @Test
    void aCautionIsCalledByHowItBeginsButNotByAMereStop() throws IOException {
        Handbook handbook = Handbook.of(Small.book().readIn(folder));
        assertThat(handbook.of(Chapter.CAUTIONS))
                .extracting(a -> a.self().label())
                .containsExactly(
                        "Stop. A swollen battery can burn; no heat, no prying, no charging.", "Wear eye protection.");
    }

    @Test
    void chancesHaveAsManyDigitsAsTheyDeserve() {
        assertThat(List.of(.5, .985, .025, .0003, .8, .1, .9995))
                .extracting(Words::percent)
                .containsExactly(
                        "50\u00A0%",
                        "98.5\u00A0%", "2.5\u00A0%", "0.03\u00A0%", "80\u00A0%", "10\u00A0%", "99.95\u00A0%");
    }

    private static List<String> matches(Pattern pattern, String text) {
        List<String> found = new ArrayList<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    private static RuleBook shipped() {
        return RuleBookReader.readShipped().ruleBook().orElseThrow();
    }
}
