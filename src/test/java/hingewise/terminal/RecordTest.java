package hingewise.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A case worked from the terminal alone. */
class RecordTest {
    @TempDir
    Path folder;

    private String file = "";

    @BeforeEach
    void startACase() {
        file = folder.resolve("case.json").toString();
        assertThat(Ran.shipped("new", file, "--family", "clamshell", "--title", "Lot 7")
                        .exit())
                .isZero();
    }

    private Ran record(String... arguments) {
        String[] all = new String[arguments.length + 2];
        all[0] = "record";
        all[1] = file;
        System.arraycopy(arguments, 0, all, 2, arguments.length);
        return Ran.shipped(all);
    }

    private void done(String... arguments) {
        Ran ran = record(arguments);
        assertThat(ran.exit()).as(ran.err()).isZero();
    }

    private void refused(String sentence, String... arguments) throws IOException {
        String before = Files.readString(Path.of(file));
        Ran ran = record(arguments);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains(sentence).doesNotContain("Exception");
        assertThat(Path.of(file)).content().isEqualTo(before);
    }

    @Test
    void aCaseCanBeWorkedWithoutTheWindow() {
        done("claim", "dead-cover-screen=no", "--time", "2026-11-20T09:00:00Z");
        done("look", "dead-cover-screen=yes", "back-loose=yes", "--time", "2026-11-20T10:00:00Z");
        done("opened", "batteries-off", "--time", "2026-11-20T11:00:00Z");
        done(
                "try",
                "reseat-cover-cable",
                "--result",
                "dead-cover-screen=no",
                "cover-touch-dead=no",
                "--time",
                "2026-11-20T11:10:00Z");
        done("closed", "--time", "2026-11-20T11:20:00Z");
        done("withdraw", "e3", "--time", "2026-11-20T11:30:00Z");

        Ran history = Ran.shipped("history", file);
        assertThat(history.exit()).isZero();
        assertThat(history.out())
                .contains("e5    try: Reseat the outer screen's cable")
                .contains("(result of e5)")
                .contains("e3    look: A back is loose. [withdrawn later]");
        assertThat(Ran.shipped("assess", file).out()).contains("Told differently");
        assertThat(Ran.shipped("assess", file, "--at", "e3").out()).contains("cable left unplugged");
    }

    @Test
    void whatCannotHaveHappenedIsRefusedAndNothingIsLost() throws IOException {
        done("look", "back-loose=yes", "--time", "2026-11-20T10:00:00Z");

        refused("Record that it was opened first", "try", "reseat-cover-cable");
        refused("is not a confirmation. Did you mean \"reseat-cover-cable\"?", "try", "reseat-cover-cabel");
        refused("no earlier entry has that id", "withdraw", "e9");
        refused("Correct the date or the computer's clock", "look", "back-loose=no", "--time", "2026-11-19T10:00:00Z");
        refused("is no point in time", "look", "back-loose=no", "--time", "yesterday");
        refused("is not a part", "repair", "inner-asembly", "--grade", "service");
        refused("with --grade: service, aftermarket, pulled", "repair", "alcohol");
        refused("Known with it are: battery-adhesive, battery-pair.", "repair", "battery", "--grade", "service");
        refused("\"opened\" needs ACCESS", "opened");
        refused("\"closed\" takes nothing more, but here is \"again\"", "closed", "again");
        refused("more than a day ahead of this computer's clock", "closed", "--time", "2999-01-01T00:00:00Z");
        refused("is not a way to change by itself", "meanwhile", "eaten");
        refused("no entry is of the kind \"glance\"", "glance", "back-loose=yes");
        refused("is no ID=ANSWER", "look", "back-loose");
        refused("--result goes with a try", "closed", "--result", "back-loose=no");
    }

    @Test
    void pricesAreRecordedShownAndUsedForTheOffer() throws IOException {
        done("asked", "150", "EUR", "--time", "2026-11-20T09:00:00Z");
        done("asked", "140.50", "EUR", "--time", "2026-11-20T09:30:00Z");
        done("paid", "120.00", "EUR", "--time", "2026-11-20T10:00:00Z");
        assertThat(Ran.shipped("history", file).out()).contains("asked: 140.50 EUR", "paid: 120.00 EUR");
        assertThat(Ran.shipped("offer", file).out())
                .contains("Paid 120.00 EUR; the most to pay", "Routes, at 120.00 EUR paid");
        done("withdraw", "e3", "--time", "2026-11-20T10:30:00Z");
        assertThat(Ran.shipped("offer", file).out()).contains("at 140.50 EUR", "Routes, at 140.50 EUR asked");
        assertThat(Ran.shipped("offer", file, "--asked", "90").out()).contains("Routes, at 90.00 EUR asked");

        refused("the currency \"EURO\" is not one of ISO 4217; write its code, such as EUR", "paid", "12", "EURO");
        refused("the amount is \"12,50\"; write a number with at most 2 decimals", "paid", "12,50", "EUR");
        refused("the amount is \"-3\"", "asked", "-3", "EUR");
        refused("\"paid\" takes an amount and its currency, as in: paid 120.00 EUR", "paid", "120");
    }

    @Test
    void aClosedPhoneIsNotClosedAgain() throws IOException {
        done("opened", "batteries-off", "--time", "2026-11-20T11:00:00Z");
        done("closed", "--time", "2026-11-20T11:20:00Z");
        refused("the phone is closed already (entry e2)", "closed", "--time", "2026-11-20T11:30:00Z");
        done("withdraw", "e2", "--time", "2026-11-20T11:40:00Z");
        done("closed", "--time", "2026-11-20T11:50:00Z");
    }

    @Test
    void anEntryThatIsNotThereHasNoEarlierAnswer() {
        assertThat(Ran.shipped("assess", file, "--at", "e1").err()).contains("the case has no entry \"e1\"");
    }

    @Test
    void anExistingFileIsNotStartedAnew() {
        Ran again = Ran.shipped("new", file, "--family", "clamshell");
        assertThat(again.exit()).isEqualTo(2);
        assertThat(again.err()).contains("exists");
    }
}
