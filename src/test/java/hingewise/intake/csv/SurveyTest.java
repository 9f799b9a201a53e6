package hingewise.intake.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SurveyTest {
    @TempDir
    private Path folder;

    private Survey survey(byte[] bytes) throws IOException {
        return Survey.of(Files.write(folder.resolve("sheet.csv"), bytes));
    }

    private Survey survey(String text) throws IOException {
        return survey(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void utf8IsKnownWithAndWithoutItsMark() throws IOException {
        assertThat(survey("id,text\n1,größer €\n").encoding()).isEqualTo(Encoding.UTF_8);
        Survey marked = survey("\uFEFFid,text\n1,größer\n");
        assertThat(marked.encoding()).isEqualTo(Encoding.UTF_8);
        assertThat(marked.begins()).isEqualTo(3);
        assertThat(marked.notUtf8()).isZero();
    }

    @Test
    void windows1252IsGuessedAndTheLineIsKnown() throws IOException {
        Survey survey = survey("id,text\n1,plain\n2,größer\n3,weiß\n".getBytes(Charset.forName("windows-1252")));
        assertThat(survey.encoding()).isEqualTo(Encoding.WINDOWS_1252);
        assertThat(survey.notUtf8()).isEqualTo(3);
    }

    @Test
    void oneSpoiltByteDoesNotTurnASheetIntoAnotherEncoding() throws IOException {
        byte[] bytes = "id,text\n1,größer\n2,weiß\n3,x\n".getBytes(StandardCharsets.UTF_8);
        bytes[bytes.length - 2] = (byte) 0xE9;
        Survey survey = survey(bytes);
        assertThat(survey.encoding()).isEqualTo(Encoding.UTF_8);
        assertThat(survey.notUtf8()).isEqualTo(4);
    }

    @Test
    void aCharacterAcrossTwoPiecesIsWhole() throws IOException {
        for (int before = 65_530; before < 65_540; before++) {
            Survey survey = survey("a".repeat(before) + "\uD83D\uDCF1€ä");
            assertThat(survey.notUtf8()).as("%d bytes before", before).isZero();
        }
    }

    /** FIPS 180-4, the message "abc". */
    @Test
    void aSheetIsKnownAgainByItsDigest() throws IOException {
        assertThat(survey("abc").digest())
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void whatIsNoSheetIsSaid() throws IOException {
        assertThatThrownBy(() -> survey(new byte[0])).hasMessageContaining("is empty");
        assertThatThrownBy(() -> survey("id,text\n".getBytes(StandardCharsets.UTF_16)))
                .hasMessageContaining("UTF-16");
        assertThatThrownBy(() -> survey("PK\u0003\u0004")).hasMessageContaining("save it as CSV");
        assertThatThrownBy(() -> Survey.of(folder)).hasMessageContaining("is a folder");
        assertThatThrownBy(() -> Survey.of(folder.resolve("none.csv"))).hasMessageContaining("no such file");
    }
}
