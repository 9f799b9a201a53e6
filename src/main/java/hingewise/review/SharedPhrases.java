package hingewise.review;

import hingewise.rulebook.Observation;
import hingewise.rulebook.Phrase;
import hingewise.rulebook.Phrases;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Phrases that stand under two observations, so that one sentence of a seller answers both. */
final class SharedPhrases {
    private SharedPhrases() {}

    static List<Remark> of(RuleBook rules) {
        Map<String, String> first = new LinkedHashMap<>();
        List<Remark> remarks = new ArrayList<>();
        for (Observation o : rules.observations().values()) {
            o.phrases()
                    .byLanguage()
                    .forEach((language, said) -> written(said).distinct().forEach(phrase -> {
                        String before = first.putIfAbsent(language + " " + phrase, o.id());
                        if (before != null) {
                            remarks.add(new Remark(
                                    "observations",
                                    o.id(),
                                    "its phrase \"" + phrase + "\" stands under " + before + " as well",
                                    "Say in one of them what tells them apart, or let one follow from the other."));
                        }
                    }));
        }
        return remarks;
    }

    private static Stream<String> written(Phrases.Said said) {
        return Stream.concat(said.yes().stream(), said.no().stream()).map(Phrase::written);
    }
}
