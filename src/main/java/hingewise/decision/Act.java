package hingewise.decision;

import java.util.List;

/**
 * Something that can be done once: asked, looked at or tried. It opens the gates before it, may cure and harm, and then
 * the looks are taken.
 *
 * @param cost of doing it, opening not included
 * @param gate behind which it lies, or {@link Gate#NONE}
 * @param needs asked in this order before anything is opened
 */
public record Act(
        String id, double cost, int gate, List<Need> needs, List<Look> looks, List<Cure> cures, List<Harm> harms) {
    public Act {
        needs = List.copyOf(needs);
        looks = List.copyOf(looks);
        cures = List.copyOf(cures);
        harms = List.copyOf(harms);
    }
}
