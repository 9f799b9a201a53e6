package hingewise.wizard.view;

import hingewise.report.ConditionNote;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.VBox;

/** The condition note, as it will be read by a buyer. */
final class NotePanel {
    private NotePanel() {}

    static VBox of(ConditionNote note, Runnable copied) {
        VBox panel = Ui.column(16, Ui.heading("Condition note"));
        if (note.sections().isEmpty()) {
            panel.getChildren().add(Ui.text("Nothing can be said of this phone yet: no answer is recorded.", "muted"));
        }
        note.sections()
                .forEach(s -> panel.getChildren()
                        .add(section(
                                s.topic().heading(),
                                s.sentences().stream()
                                        .map(ConditionNote.Sentence::text)
                                        .toList())));
        if (!note.notTested().isEmpty()) {
            panel.getChildren()
                    .add(Ui.column(
                            4,
                            Ui.text(note.notTestedHeading(), "name"),
                            Ui.text(String.join(", ", note.notTested()) + ".")));
        }
        Button copy = Bands.button("copy-note", "Copy the note", () -> {
            ClipboardContent content = new ClipboardContent();
            content.putString(plain(note));
            Clipboard.getSystemClipboard().setContent(content);
            copied.run();
        });
        panel.getChildren().add(copy);
        panel.getStyleClass().add("card");
        return panel;
    }

    private static Node section(String heading, List<String> sentences) {
        VBox section = Ui.column(4, Ui.text(heading, "name"));
        sentences.forEach(s -> section.getChildren().add(Ui.text(s)));
        return section;
    }

    /** The note as plain text, a heading or a sentence a line. */
    static String plain(ConditionNote note) {
        Stream<String> head = Stream.of(note.title(), note.phone()).filter(s -> !s.isBlank());
        Stream<String> said = note.sections().stream()
                .flatMap(s -> Stream.concat(
                        Stream.of("", s.topic().heading()),
                        s.sentences().stream().map(t -> "- " + t.text())));
        Stream<String> untested = note.notTested().isEmpty()
                ? Stream.empty()
                : Stream.concat(
                        Stream.of("", note.notTestedHeading()),
                        note.notTested().stream().map(t -> "- " + t));
        return Stream.of(head, said, untested).flatMap(s -> s).collect(Collectors.joining("\n", "", "\n"));
    }
}
