package hingewise.intake.sheet;

import hingewise.casefile.Phone;
import hingewise.intake.ListingReader;
import hingewise.intake.Suggestion;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.List;

/** Takes as claims what a listing says plainly; what is hedged, heard or misspelt stays for a person to decide. */
public final class ListingClaims implements ClaimReader {
    private final RuleBook rules;
    private final ListingReader reader;

    /** @param reader of texts, by the same rule book; no other thread uses it */
    public ListingClaims(RuleBook rules, ListingReader reader) {
        this.rules = rules;
        this.reader = reader;
    }

    @Override
    public List<Claim> read(Phone phone, String text) {
        return reader.read(text).suggestions().stream()
                .filter(s -> s.certainty() >= Suggestion.PLAIN)
                .filter(s -> asked(s, phone))
                .map(s -> new Claim(s.observation(), s.yes()))
                .toList();
    }

    private boolean asked(Suggestion suggestion, Phone phone) {
        Observation observation = rules.observations().get(suggestion.observation());
        return observation != null && observation.families().contains(phone.family());
    }
}
