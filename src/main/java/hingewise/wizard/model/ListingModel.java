package hingewise.wizard.model;

import hingewise.casefile.CaseFile;
import hingewise.intake.ListingReader;
import hingewise.intake.Suggestion;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Question;
import hingewise.rulebook.RuleBook;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The text of a listing becomes suggested claims, each to be accepted or refused by a person. Nothing enters the case
 * unseen.
 */
public final class ListingModel {
    private static final String SELLER = "seller";

    private final WizardModel wizard;
    private final Reckoner<ListingState> reader;
    private Optional<Taught> taught = Optional.empty();
    private final ReadOnlyObjectWrapper<ListingState> state = new ReadOnlyObjectWrapper<>(ListingState.none());

    public ListingModel(WizardModel wizard) {
        this.wizard = wizard;
        this.reader = new Reckoner<>(
                wizard.setup().reckoning(),
                state::set,
                words -> state.set(new ListingState(
                        state().text(), false, List.of(), Optional.of("The text could not be read: " + words))));
        wizard.stateProperty().addListener((o, was, is) -> {
            if (is.page() == Page.START && is.page() != was.page()) {
                forget();
            }
        });
    }

    public ReadOnlyObjectProperty<ListingState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    public ListingState state() {
        return state.get();
    }

    /** Forgets the text; what was accepted stays in the case. */
    public void forget() {
        reader.drop();
        state.set(ListingState.none());
    }

    /** Reads a text, as far as it is about the family of the open case. */
    public void read(String text) {
        Optional<RuleBook> rules = wizard.rules();
        Optional<CaseFile> file = file();
        if (rules.isPresent() && file.isPresent()) {
            String family = file.get().phone().family();
            state.set(new ListingState(text, true, List.of(), Optional.empty()));
            reader.reckon(() -> found(rules.get(), family, text));
        }
    }

    /** A reader that has learned from the rule book, which may have taken seconds. */
    private record Taught(RuleBook rules, ListingReader reader) {}

    private synchronized ListingReader reader(RuleBook rules) {
        if (taught.filter(t -> t.rules() == rules).isEmpty()) {
            taught = Optional.of(new Taught(rules, wizard.setup().reader().apply(rules)));
        }
        return taught.orElseThrow().reader().another();
    }

    private ListingState found(RuleBook rules, String family, String text) {
        List<Suggestion> suggestions = reader(rules).read(text).suggestions().stream()
                .filter(s -> about(rules, s).families().contains(family))
                .toList();
        String words = suggestions.isEmpty()
                ? "Nothing in it answers a question."
                : suggestions.size() + " to decide. Nothing is recorded before you accept it.";
        return new ListingState(text, false, suggestions, Optional.of(words));
    }

    private static Observation about(RuleBook rules, Suggestion suggestion) {
        return Objects.requireNonNull(rules.observations().get(suggestion.observation()));
    }

    /** What a suggestion says, as a plain statement. */
    public String statement(Suggestion suggestion) {
        return wizard.rules()
                .map(r -> about(r, suggestion))
                .map(o -> suggestion.yes() ? o.whenYes() : o.whenNo())
                .orElse("");
    }

    /** Records a suggestion as the seller's claim, with the words it rests on. */
    public void accept(Suggestion suggestion) {
        Optional<CaseFile> open = file();
        if (open.isEmpty() || !wizard.state().unread().isEmpty()) {
            return;
        }
        CaseFile before = open.get();
        Answers answers = new Answers(SELLER, wizard.answers().now().truncatedTo(ChronoUnit.SECONDS));
        String answer = suggestion.yes() ? Question.YES : Question.NO;
        CaseFile after = answers.give(
                before, suggestion.observation(), EvidenceKind.CLAIM, answer, "listing: " + suggestion.quote());
        wizard.keep(after);
        wizard.reckon();
        decided(suggestion, "Recorded: ");
    }

    /** Leaves a suggestion out of the case. */
    public void refuse(Suggestion suggestion) {
        decided(suggestion, "Left out: ");
    }

    private void decided(Suggestion suggestion, String how) {
        ListingState now = state();
        state.set(new ListingState(
                now.text(),
                false,
                now.open().stream().filter(s -> !s.equals(suggestion)).toList(),
                Optional.of(how + statement(suggestion))));
    }

    private Optional<CaseFile> file() {
        return wizard.state().sitting().map(Sitting::file);
    }
}
