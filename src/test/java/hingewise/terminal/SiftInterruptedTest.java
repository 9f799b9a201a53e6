package hingewise.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class SiftInterruptedTest {
    private static final int ROWS = 20_000;
    private static final long SOME_WORK = 50_000;

    @TempDir
    private Path folder;

    /** There a process that is ended has no last word. */
    @DisabledOnOs(OS.WINDOWS)
    @Test
    void aProcessThatIsAskedToEndKeepsWhatItHasDone() throws IOException, InterruptedException {
        List<String> lines = new ArrayList<>(List.of("id,text,price,shipping,family"));
        for (int row = 0; row < ROWS; row++) {
            lines.add(row + ",Back glass is cracked.," + row % 90 + ",5,clamshell");
        }
        Path sheet = Files.write(folder.resolve("sheet.csv"), lines);
        Path out = folder.resolve("ranked.csv");
        Path work = folder.resolve("ranked.csv.sifting");
        Path err = folder.resolve("err.txt");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "hingewise.Main",
                        "sift",
                        sheet.toString(),
                        "--out",
                        out.toString())
                .redirectError(err.toFile())
                .start();
        while (process.isAlive() && (!Files.exists(work) || Files.size(work) < SOME_WORK)) {
            Thread.onSpinWait();
        }
        process.destroy();
        assertThat(process.waitFor()).isEqualTo(128 + 15);
        assertThat(Files.readString(err)).contains("are kept in").contains("--resume");
        assertThat(out).doesNotExist();
        assertThat(Files.size(work)).isGreaterThanOrEqualTo(SOME_WORK);

        Ran resumed = Ran.shipped("sift", sheet.toString(), "--out", out.toString(), "--resume");
        assertThat(resumed.exit()).as(resumed.err()).isZero();
        assertThat(resumed.err()).contains("goes on behind").contains("20000 listings ranked");
        try (var ranked = Files.lines(out)) {
            assertThat(ranked).hasSize(ROWS + 1);
        }
        assertThat(work).doesNotExist();
    }
}
