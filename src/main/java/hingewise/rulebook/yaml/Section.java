package hingewise.rulebook.yaml;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The sections that hold entries by id. */
enum Section {
    COMPONENTS("a component"),
    TOOLS("a tool"),
    FAMILIES("a family"),
    MODELS("a model"),
    HISTORIES("a history"),
    CAUSES("a cause"),
    OBSERVATIONS("an observation"),
    CHOICES("a choice"),
    CONFIRMATIONS("a confirmation"),
    ACCESS("an access state"),
    PARTS("a part"),
    CAUTIONS("a caution"),
    MEANWHILE("a way to change by itself"),
    GRADES("a grade of part"),
    MARGINALS("a marginal"),
    LANGUAGES("a language"),
    HINTS("a hint"),
    EXAMPLES("a set of examples"),
    CASES("a case");

    /** What an entry is called in a message. */
    final String noun;

    Section(String noun) {
        this.noun = noun;
    }

    /** What one entry is called, without an article. */
    String singular() {
        return noun.substring(noun.indexOf(' ') + 1);
    }

    /** The word that heads the section. */
    String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    static List<String> keys() {
        return Stream.of(values()).map(Section::key).toList();
    }
}
