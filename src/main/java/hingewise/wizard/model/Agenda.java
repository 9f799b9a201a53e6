package hingewise.wizard.model;

import hingewise.assessment.Assessment;
import hingewise.casefile.CaseFile;
import hingewise.casefile.Report;
import hingewise.diagnosis.Readings;
import hingewise.planning.Step;
import hingewise.rulebook.Choice;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Question;
import hingewise.rulebook.RuleBook;
import hingewise.wizard.model.Item.Standing;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Which questions a case has, how each stands, and which to ask next. */
public final class Agenda {
    private final RuleBook rules;
    private final CaseFile file;
    private final Readings readings;
    private final Map<String, Boolean> latest;

    /** @throws hingewise.diagnosis.CaseException if the case names something the rule book lacks */
    public Agenda(RuleBook rules, CaseFile file) {
        this.rules = rules;
        this.file = file;
        this.readings = Readings.of(rules, file);
        this.latest = readings.latest();
    }

    /** Every question of the phone's family, in the rule book's order. */
    public List<Item> items() {
        String family = file.phone().family();
        return rules.questions().stream()
                .filter(q -> q.families().contains(family))
                .map(this::item)
                .toList();
    }

    /** The question of this id and how it stands. */
    public Optional<Item> item(String question) {
        return rules.question(question).map(this::item);
    }

    /** The questions whose words contain all words of the text, in any case. */
    public static List<Item> matching(List<Item> items, String text) {
        String[] words = text.toLowerCase(Locale.ROOT).strip().split("\\s+");
        return items.stream()
                .filter(i -> Stream.of(words).allMatch(words(i.question())::contains))
                .toList();
    }

    private static String words(Question question) {
        return (question.label() + " " + question.question() + " " + question.id()).toLowerCase(Locale.ROOT);
    }

    /**
     * Ids of the open questions of an occasion, the one to ask next first: what the proposed steps need or settle, in
     * their order, then the rest in the rule book's order.
     *
     * @param assessment the latest known; may be older than the case
     * @param setAside questions not to ask by themselves
     */
    public List<String> next(Optional<Assessment> assessment, Occasion occasion, Set<String> setAside) {
        Set<String> open = new LinkedHashSet<>();
        items().stream()
                .filter(i -> i.standing() == Standing.OPEN)
                .filter(i -> occasion.asks(i.question()))
                .map(i -> i.question().id())
                .filter(id -> !setAside.contains(id))
                .forEach(open::add);
        Set<String> order = new LinkedHashSet<>();
        assessment.stream()
                .flatMap(a -> a.tryFirst().stream())
                .flatMap(Agenda::looksAt)
                .flatMap(o -> askedBy(o, open))
                .forEach(order::add);
        order.addAll(open);
        return List.copyOf(order);
    }

    private static Stream<String> looksAt(Step step) {
        return Stream.concat(step.askFirst().stream(), step.confirmation().settles().stream());
    }

    /** The open question that answers an observation: a choice settles more at once than the bare question. */
    private Stream<String> askedBy(String observation, Set<String> open) {
        return Stream.concat(
                        rules.choices().values().stream()
                                .filter(c -> settles(c, observation))
                                .map(Choice::id),
                        Stream.of(observation))
                .filter(open::contains)
                .limit(1);
    }

    private static boolean settles(Choice choice, String observation) {
        return choice.answers().values().stream().anyMatch(a -> a.settles().containsKey(observation));
    }

    private Item item(Question question) {
        List<Report> answers = Answers.to(file, question.id());
        if (!answers.isEmpty()) {
            Report last = answers.get(answers.size() - 1);
            return last.answer().equals(Report.CANT_TELL)
                    ? new Item(question, Standing.UNSURE, "can't tell")
                    : new Item(question, Standing.ANSWERED, spoken(question, last.answer()));
        }
        Set<String> observed = observations(question);
        if (observed.stream().allMatch(latest::containsKey)) {
            return new Item(question, Standing.ANSWERED, "settled by another answer");
        }
        Optional<String> obstacle = observed.stream().allMatch(o -> obstacle(o).isPresent())
                ? observed.stream().flatMap(o -> obstacle(o).stream()).findFirst()
                : Optional.empty();
        return obstacle.map(why -> new Item(question, Standing.NOT_ASKABLE, why))
                .orElseGet(() -> new Item(question, Standing.OPEN, ""));
    }

    private static String spoken(Question question, String answer) {
        Choice.Answer chosen = question.answers().get(answer);
        return chosen == null ? answer : chosen.label().toLowerCase(Locale.ROOT);
    }

    private Set<String> observations(Question question) {
        Set<String> observed = new LinkedHashSet<>();
        question.answers().values().forEach(a -> observed.addAll(a.settles().keySet()));
        return observed;
    }

    private Optional<String> obstacle(String observation) {
        Observation o = rules.observations().get(observation);
        return o == null
                ? Optional.empty()
                : o.needs().entrySet().stream()
                        .filter(n ->
                                latest.containsKey(n.getKey()) && !n.getValue().equals(latest.get(n.getKey())))
                        .map(n -> "cannot be seen: " + label(n.getKey()) + " is recorded as "
                                + (n.getValue() ? Question.NO : Question.YES))
                        .sorted()
                        .findFirst();
    }

    private String label(String observation) {
        Observation o = rules.observations().get(observation);
        return "\"" + (o == null ? observation : o.label()) + "\"";
    }
}
