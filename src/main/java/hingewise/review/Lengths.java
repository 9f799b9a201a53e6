package hingewise.review;

import hingewise.rulebook.Grounds;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.List;

/** Texts too long for where they are shown. */
final class Lengths {
    /** One row of a list in 80 columns, beside its figures. */
    private static final int LABEL = 60;
    /** A question is taken in at one glance: less than a line and a half of 80 columns. */
    private static final int QUESTION = 110;
    /** What to do is read with the phone in hand: two lines. */
    private static final int HOW = 160;
    /** One statement of a note or of a reason: a line with room for who said it. */
    private static final int STATEMENT = 70;
    /** One sentence: two lines and a little. */
    private static final int BECAUSE = 170;
    /** A warning of more than a few sentences is not read. */
    private static final int CAUTION = 250;

    private final List<Remark> remarks = new ArrayList<>();

    private Lengths() {}

    static List<Remark> of(RuleBook rules) {
        Lengths lengths = new Lengths();
        lengths.read(rules);
        return lengths.remarks;
    }

    private void read(RuleBook rules) {
        rules.components().values().forEach(c -> at("components", c.id()).most("label", c.label(), LABEL));
        rules.histories()
                .values()
                .forEach(h ->
                        at("histories", h.id()).most("label", h.label(), LABEL).grounds(h.grounds()));
        rules.causes()
                .values()
                .forEach(c ->
                        at("causes", c.id()).most("label", c.label(), LABEL).grounds(c.grounds()));
        rules.observations()
                .values()
                .forEach(o -> at("observations", o.id())
                        .most("label", o.label(), LABEL)
                        .most("question", o.question(), QUESTION)
                        .most("look", o.look(), HOW)
                        .most("when-yes", o.whenYes(), STATEMENT)
                        .most("when-no", o.whenNo(), STATEMENT)
                        .grounds(o.grounds()));
        rules.choices()
                .values()
                .forEach(c -> at("choices", c.id())
                        .most("label", c.label(), LABEL)
                        .most("question", c.question(), QUESTION)
                        .most("look", c.look(), HOW)
                        .grounds(c.grounds()));
        rules.confirmations()
                .values()
                .forEach(c -> at("confirmations", c.id())
                        .most("label", c.label(), LABEL)
                        .most("how", c.how(), HOW)
                        .grounds(c.grounds()));
        rules.access()
                .values()
                .forEach(a ->
                        at("access", a.id()).most("label", a.label(), LABEL).grounds(a.grounds()));
        rules.parts()
                .values()
                .forEach(
                        p -> at("parts", p.id()).most("label", p.label(), LABEL).grounds(p.grounds()));
        rules.cautions()
                .values()
                .forEach(c ->
                        at("cautions", c.id()).most("text", c.text(), CAUTION).grounds(c.grounds()));
    }

    private At at(String section, String id) {
        return new At(section, id);
    }

    /** The texts of one entry. */
    private final class At {
        private final String section;
        private final String id;

        At(String section, String id) {
            this.section = section;
            this.id = id;
        }

        At most(String key, String text, int most) {
            int length = text.codePointCount(0, text.length());
            if (length > most) {
                remarks.add(new Remark(
                        section,
                        id,
                        "its \"" + key + "\" has " + length + " characters, more than " + most,
                        "Say it more shortly."));
            }
            return this;
        }

        At grounds(Grounds grounds) {
            return most("because", grounds.because(), BECAUSE);
        }
    }
}
