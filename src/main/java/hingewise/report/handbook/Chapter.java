package hingewise.report.handbook;

import java.util.Locale;

/** The chapters of the handbook, in their order; each is one page. */
public enum Chapter {
    CAUSES(
            "Causes",
            "cause",
            "What can be wrong, by component: how it shows, what brings it about, what confirms and cures it."),
    OBSERVATIONS("Observations", "question", "What can be asked of a phone, how to look, and what an answer is worth."),
    CONFIRMATIONS("Confirmations", "confirmation", "What to ask, check or try, with minutes, money and risk."),
    COMPONENTS("Components", "component", "What a phone is made of, what fails in each, and what renews it."),
    ACCESS("Access", "access step", "How a phone is opened, step by step."),
    PARTS("Parts", "part", "What can be bought, what it renews, and what must be bought with it."),
    HISTORIES("Histories", "history", "What may have happened to a phone, and what follows from it."),
    CAUTIONS("Cautions", "caution", "Warnings, and what brings them up.");

    private final String title;
    private final String singular;
    private final String lead;

    Chapter(String title, String singular, String lead) {
        this.title = title;
        this.singular = singular;
        this.lead = lead;
    }

    public String title() {
        return title;
    }

    /** What one of its articles is about. */
    public String singular() {
        return singular;
    }

    /** One sentence on what the chapter holds. */
    public String lead() {
        return lead;
    }

    /** The name of its page. */
    public String file() {
        return name().toLowerCase(Locale.ROOT) + ".html";
    }
}
