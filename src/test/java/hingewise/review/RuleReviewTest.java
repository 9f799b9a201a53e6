package hingewise.review;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each remark is provoked once in a book that is otherwise the same. */
class RuleReviewTest {
    private static final String GROUNDS = "    because: Invented for a test.\n    source: invented\n";

    @TempDir
    Path folder;

    private List<String> remarks(Small book) throws IOException {
        return RuleReview.of(book.readIn(folder), List.of()).stream()
                .map(r -> r.section() + "/" + r.id() + ": " + r.what())
                .toList();
    }

    private static Small withTwin(String strength, String cures) throws IOException {
        return Small.book()
                .adding(
                        "causes",
                        "  cover-cable-torn:\n    label: Cable torn\n    component: cover-connection\n    base-rate: .02\n"
                                + "    raised-by: {opened-before: .2}\n    signs: {dead-cover-screen: " + strength
                                + "}\n" + GROUNDS)
                .with("cures: {cover-cable-loose: .95}", "cures: {cover-cable-loose: .95" + cures + "}");
    }

    @Test
    void causesThatNothingTellsApartAreNamed() throws IOException {
        assertThat(remarks(withTwin(".96", ", cover-cable-torn: .9")))
                .contains("causes/cover-cable-loose: nothing tells it from cover-cable-torn");
    }

    @Test
    void aTryThatCuresOnlyOneOfTwoTwinsIsNamed() throws IOException {
        assertThat(remarks(withTwin(".96", "")))
                .contains("causes/cover-cable-loose: only reseat-cover-cable tells it from cover-cable-torn");
    }

    @Test
    void aSignTwiceAsOftenTellsCausesApart() throws IOException {
        assertThat(remarks(withTwin(".45", ", cover-cable-torn: .9"))).noneMatch(r -> r.contains("tells it"));
    }

    @Test
    void aSignThatIsSeldomAbsentTellsByItsAbsence() throws IOException {
        // No is .03 · .99 under one and .08 · .99 under the other, a ratio of 2.7; yes is near the same.
        assertThat(remarks(withTwin(".92", ", cover-cable-torn: .9"))).noneMatch(r -> r.contains("tells it"));
    }

    @Test
    void aCauseThatNothingCuresIsNamed() throws IOException {
        assertThat(remarks(Small.book().with("    renews: [battery]\n", "    renews: [inner-panel]\n")))
                .contains(
                        "causes/swollen-battery: nothing cures it: no part renews its component \"battery\" and no try"
                                + " cures it");
        assertThat(remarks(Small.book())).noneMatch(r -> r.contains("nothing cures it"));
    }

    @Test
    void aCauseWithoutConfirmationIsNamed() throws IOException {
        assertThat(remarks(Small.book()))
                .contains("causes/swollen-battery: no confirmation bears on it")
                .doesNotContain("causes/panel-fractured: no confirmation bears on it");
    }

    @Test
    void anObservationThatNothingShowsIsNamedUnlessAnotherWaitsForIt() throws IOException {
        assertThat(remarks(Small.book()))
                .contains(
                        "observations/cover-plug-out: no cause or history shows \"cover-plug-out\", so that its answer"
                                + " says nothing")
                .noneMatch(r -> r.contains("shows \"no-sign-of-life\""));
    }

    @Test
    void aCheckBehindAnOpeningItDoesNotNeedIsNamed() throws IOException {
        String what = "confirmations/look-at-fold: it waits for \"back-off\", and all it does can be done on the closed"
                + " phone";
        Small behind = Small.book()
                .with("    settles: [crease-blobs]\n", "    settles: [crease-blobs]\n    access: back-off\n");
        assertThat(remarks(behind)).contains(what);
        assertThat(remarks(behind.with("settles: [crease-blobs]", "settles: [crease-blobs, cover-plug-out]")
                        .with(
                                "    moments: [arrival]\n    because: Blobs settle it.",
                                "    moments: [arrival]\n    families: [clamshell]\n    because: Blobs settle it.")))
                .doesNotContain(what);
    }

    @Test
    void aTryBehindAnOpeningIsNeedlessOnlyIfAClosedOneCuresAsMuch() throws IOException {
        String closed = "  press-cable:\n    kind: try\n    label: Press\n    how: Press.\n    minutes: 1\n"
                + "    cures: {cover-cable-loose: %s}\n    moments: [arrival]\n    families: [clamshell]\n" + GROUNDS;
        assertThat(remarks(Small.book().adding("confirmations", String.format(closed, ".95"))))
                .anyMatch(r -> r.startsWith("confirmations/reseat-cover-cable: it waits for"));
        assertThat(remarks(Small.book().adding("confirmations", String.format(closed, ".3"))))
                .noneMatch(r -> r.startsWith("confirmations/reseat-cover-cable: it waits for"));
    }

    @Test
    void aToolThatNothingTakesIsNamed() throws IOException {
        String tools = "\ntools:\n  picks: {label: picks}\n  lamp: {label: lamp}\naccess:\n";
        Small book = Small.book()
                .with("\naccess:\n", tools)
                .with(
                        "    cautions: [eyes]\n    because: Glue takes",
                        "    tools: [picks]\n    cautions: [eyes]\n    because: Glue takes");
        assertThat(remarks(book)).contains("tools/lamp: nothing takes it").noneMatch(r -> r.startsWith("tools/picks"));
    }

    @Test
    void whatMustBeAnsweredBeforeOpeningIsAnsweredByACheckOfTheClosedPhone() throws IOException {
        Small book = Small.book()
                .with(
                        "    cautions: [eyes]\n    because: Glue takes",
                        "    needs: {back-bulges: no}\n    cautions: [eyes]\n    because: Glue takes");
        String said = "access/back-off: it needs \"back-bulges\", which no check of the closed phone answers";
        assertThat(remarks(book)).contains(said);
        String check = "  look-along:\n    kind: check\n    label: Look\n    how: Look.\n    minutes: 1\n"
                + "    settles: [back-bulges]\n    moments: [arrival]\n" + GROUNDS;
        assertThat(remarks(book.adding("confirmations", check))).doesNotContain(said);
    }

    @Test
    void aChanceOutsideTheRecordsIsNamedByFamily() throws IOException {
        // 1 − (1 − .02 − …) = .0592 in the one family that has the cable (worked by hand).
        String records = "marginals:\n  cable:\n    label: outer cable\n    causes: [cover-cable-loose]\n    from: %s\n"
                + "    to: %s\n" + GROUNDS;
        assertThat(remarks(new Small(Small.book().text() + String.format(records, ".07", ".2"))))
                .contains("marginals/cable: outer cable in family clamshell has a chance of 0.059 before any entry, and"
                        + " the records say 0.070 to 0.200");
        assertThat(remarks(new Small(Small.book().text() + String.format(records, ".03", ".2"))))
                .noneMatch(r -> r.startsWith("marginals"));
    }

    @Test
    void recordsOfHistoriesAndCausesTogetherCountEither() throws IOException {
        // At least one of: opened before (.2), blobs' cause (.2): 1 − .8 · .8 = .36, for both families alike.
        String records = "marginals:\n  either:\n    label: either\n    causes: [panel-fractured]\n"
                + "    histories: [opened-before]\n    from: .5\n    to: .6\n" + GROUNDS;
        assertThat(remarks(new Small(Small.book().text() + records)))
                .filteredOn(r -> r.startsWith("marginals"))
                .hasSize(2)
                .allMatch(r -> r.contains("has a chance of 0.360"));
    }

    @Test
    void rulesThatNoCaseExercisesAreNamed() throws IOException {
        assertThat(remarks(Small.book()))
                .contains("causes/swollen-battery: no case expects it", "causes/panel-fractured: no case excludes it")
                .contains("observations/crease-blobs: no case answers it with no")
                .doesNotContain("observations/crease-blobs: no case answers it with yes")
                .contains("cautions/eyes: no case expects it")
                .doesNotContain("causes/panel-fractured: no case expects it");
    }

    @Test
    void aChoiceAnswersItsObservations() throws IOException {
        assertThat(remarks(Small.book().with("seen: [crease-blobs=yes]", "seen: [power-on=buzz]")))
                .doesNotContain("observations/vibrates-no-image: no case answers it with yes")
                .doesNotContain("observations/no-sign-of-life: no case answers it with no");
    }

    @Test
    void linksAreTriedWhereTheirCauseIsExpectedAndTheirSignIsSeen() throws IOException {
        Links links = Links.of(Small.book().readIn(folder));
        assertThat(links.all()).isEqualTo(6);
        assertThat(links.untried())
                .containsEntry("panel-fractured", List.of("vibrates-no-image"))
                .containsEntry("cover-cable-loose", List.of("dead-cover-screen", "opened-before"));
        assertThat(links.untriedCount()).isEqualTo(5);
    }

    @Test
    void textsTooLongForTheirPlaceAreNamed() throws IOException {
        assertThat(remarks(Small.book().with("label: dark blobs at the fold", "label: " + "dark ".repeat(13) + "spot")))
                .contains("observations/crease-blobs: its \"label\" has 69 characters, more than 60");
    }

    @Test
    void entangledCasesAreNamed() throws IOException {
        List<Entanglement> all =
                List.of(new Entanglement("cases", "blobs", "case blobs", 19), new Entanglement("cases", "x", "x", 18));
        assertThat(RuleReview.of(Small.book().readIn(folder), all))
                .filteredOn(r -> r.section().equals("cases"))
                .extracting(Remark::what)
                .containsExactly("case blobs: its largest clique has 19 yes/no variables, more than 18");
    }

    @Test
    void aPhraseOfTwoObservationsIsNamed() throws IOException {
        String words = "languages:\n  en:\n    label: English\n    stemming: english\n    common: [the]\n"
                + "    sets: {screen: [screen]}\n" + GROUNDS;
        Small book = Small.book();
        Matcher leaks = Pattern.compile("\n    leak:").matcher(book.text());
        Small two = new Small(leaks.replaceAll("\n    phrases: {en: {yes: ['@screen black']}}\n    leak:") + words);
        assertThat(remarks(two)).anyMatch(r -> r.contains("its phrase \"@screen black\" stands under"));
    }

    @Test
    void whatIsMarkedIncurableNeedsNoCure() throws IOException {
        assertThat(remarks(Small.book()
                        .with("    renews: [battery]\n", "    renews: [inner-panel]\n")
                        .with("battery: {label: battery}", "battery: {label: battery, incurable: true}")))
                .noneMatch(r -> r.contains("nothing cures it"));
    }

    @Test
    void theShippedRulesTryEveryLinkAndLeaveNothingToWarnOf() {
        RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
        assertThat(Links.of(rules).untried()).isEmpty();
        assertThat(RuleReview.of(rules, Entanglement.of(rules, new Random(1))))
                .filteredOn(r -> !r.what().contains("its phrase"))
                .isEmpty();
    }
}
