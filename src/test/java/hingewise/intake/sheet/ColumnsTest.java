package hingewise.intake.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hingewise.intake.csv.Row;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColumnsTest {
    private static Columns of(String... names) {
        return Columns.of(Path.of("sheet.csv"), new Row(1, 0, 2, List.of(names), ""), Set.of("rank"));
    }

    @Test
    void columnsStandInAnyOrderAndCase() {
        Columns columns = of("Price", " shipping", "text", "colour", "ID", "model");
        assertThat(columns.unread()).containsExactly("colour");
        Row row = new Row(2, 0, 3, List.of("12", "3", " words ", "blue", "a", ""), "");
        assertThat(columns.cell(row, Columns.PRICE)).contains("12");
        assertThat(columns.cell(row, Columns.TEXT)).contains("words");
        assertThat(columns.cell(row, Columns.MODEL)).isEmpty();
        assertThat(columns.cell(row, Columns.QUOTE)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,cracked,50,5,clamshell | the first row names no column that is known but begins with \"1\"",
                "id;text;price;shipping | divided by semicolons or tabs",
                "id,text,price,shipping | neither a column \"family\" nor a column \"model\"",
                "id,text,price,family | the column \"shipping\" is missing",
                "id,text,price,shiping,family | no column is called \"shiping\". Did you mean \"shipping\"?",
                "id,text,price,shipping,family,qoute | Did you mean \"quote\"?",
                "id,text,price,shipping,family,Text | the column \"text\" stands here twice",
                "id,text,price,shipping,family,rank | the column \"rank\" is one that the result adds",
            })
    void aHeaderThatCannotBeUsedSaysWhy(String header, String sentence) {
        assertThatThrownBy(() -> of(header.split(",")))
                .hasMessageStartingWith("sheet.csv: line 1: ")
                .hasMessageContaining(sentence);
    }

    @Test
    void everythingWrongIsSaidAtOnce() {
        assertThatThrownBy(() -> of("id", "rank", "rank"))
                .satisfies(e -> assertThat(e.getMessage().lines()).hasSize(7));
    }
}
