package hingewise.wizard.view;

import hingewise.casefile.Report;
import hingewise.rulebook.Choice;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Question;

/** The words the window uses for what the program calls by name. */
final class Spoken {
    private Spoken() {}

    static String evidence(EvidenceKind kind) {
        return switch (kind) {
            case CLAIM -> "Seller says";
            case PHOTO -> "In a photo";
            case LOOK -> "Own look";
            case METER -> "Measured";
        };
    }

    static String kind(Confirmation.Kind kind) {
        return switch (kind) {
            case QUESTION -> "Ask the seller";
            case CHECK -> "Check";
            case TRY -> "Try";
        };
    }

    static String answer(Question question, String answer) {
        if (answer.equals(Report.CANT_TELL)) {
            return "can't tell";
        }
        Choice.Answer known = question.answers().get(answer);
        return known == null ? answer : known.label();
    }
}
