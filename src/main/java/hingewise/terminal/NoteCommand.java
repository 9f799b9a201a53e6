package hingewise.terminal;

import hingewise.report.ConditionNote;
import hingewise.report.ConditionNote.Sentence;
import hingewise.report.NoteWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "note",
        description = {"Print the condition note of a case: only what was recorded, each sentence with its entries.", ""
        })
final class NoteCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "CASE", description = "A case file.")
    private Path file = Path.of("");

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Mixin
    private ColourOption colour = new ColourOption();

    NoteCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        ConditionNote note = NoteWriter.write(rulesOption.read(), Inputs.caseFile(file));
        console.print(text(note, colour.on(console.look())));
        return ExitCode.OK.number();
    }

    private static Page text(ConditionNote note, Look look) {
        Page page = new Page(look);
        page.line("Condition note: " + note.title());
        if (!note.phone().isBlank()) {
            page.line(note.phone());
        }
        if (note.invented()) {
            page.line("Invented example: phone, people and findings do not exist.");
        }
        for (ConditionNote.Section section : note.sections()) {
            page.heading(section.topic().heading());
            for (Sentence sentence : section.sentences()) {
                page.hanging(0, "-  ", sentence.text() + " [" + String.join(", ", sentence.entries()) + "]");
            }
        }
        if (!note.notTested().isEmpty()) {
            page.heading(note.notTestedHeading());
            page.line(String.join("; ", note.notTested()) + ".");
        }
        page.blank();
        if (!note.openingRecorded()) {
            page.line("No entry says that the phone was opened here.");
        }
        return page.line("In brackets: the entries of the case file that each sentence stands on. Dates are in UTC.");
    }
}
