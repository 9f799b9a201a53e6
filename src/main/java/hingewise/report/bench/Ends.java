package hingewise.report.bench;

import hingewise.planning.Decision;
import hingewise.rulebook.Part;
import java.util.List;

/** Decisions in words. */
final class Ends {
    private Ends() {}

    /** The letter of an end: A for the first; after Z, AA. */
    static String letter(int number) {
        int rest = number - 1;
        String last = Character.toString('A' + rest % 26);
        return rest < 26 ? last : letter(rest / 26) + last;
    }

    /** What to do, in a few words. */
    static String brief(Decision decision) {
        List<Part> parts = decision.parts().stream()
                .filter(p -> p.form() != Part.Form.CONSUMABLE)
                .toList();
        return parts.size() > 1
                ? "fit " + parts.get(0).label() + " and " + (parts.size() - 1) + " more"
                : decision.order();
    }
}
