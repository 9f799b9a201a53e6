package hingewise.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Everything the program knows about folding phones: each map is keyed by id, in the order written. A rule book that
 * was read without problems refers to nothing it does not hold.
 *
 * @param title what the rule book calls itself
 * @param reliability how far each kind of evidence is believed where an observation says nothing else
 */
public record RuleBook(
        String title,
        Bench bench,
        Words words,
        Map<EvidenceKind, Reliability> reliability,
        Map<String, Component> components,
        Map<String, Tool> tools,
        Map<String, Family> families,
        Map<String, History> histories,
        Map<String, Cause> causes,
        Map<String, Observation> observations,
        Map<String, Choice> choices,
        Map<String, Confirmation> confirmations,
        Map<String, Access> access,
        Map<String, Part> parts,
        Map<String, Caution> cautions,
        Map<String, Lapse> lapses,
        Map<String, Grade> grades,
        Map<String, Marginal> marginals,
        Map<String, Language> languages,
        Map<String, Hint> hints,
        List<RuleCase> cases) {
    public RuleBook {
        reliability = Map.copyOf(reliability);
        components = Ordered.copyOf(components);
        tools = Ordered.copyOf(tools);
        families = Ordered.copyOf(families);
        histories = Ordered.copyOf(histories);
        causes = Ordered.copyOf(causes);
        observations = Ordered.copyOf(observations);
        choices = Ordered.copyOf(choices);
        confirmations = Ordered.copyOf(confirmations);
        access = Ordered.copyOf(access);
        parts = Ordered.copyOf(parts);
        cautions = Ordered.copyOf(cautions);
        lapses = Ordered.copyOf(lapses);
        grades = Ordered.copyOf(grades);
        marginals = Ordered.copyOf(marginals);
        languages = Ordered.copyOf(languages);
        hints = Ordered.copyOf(hints);
        cases = List.copyOf(cases);
    }

    /** The ways of folding, without the models. */
    public List<Family> waysOfFolding() {
        return families.values().stream().filter(f -> f.model().isEmpty()).toList();
    }

    /** This rule book with models, each as a family beside the one it refines. */
    public RuleBook withModels(List<Model> models) {
        return ModelLayer.over(this, models);
    }

    /**
     * This rule book as it is for a phone of this family: the same, unless the family is a model with ways of its own.
     *
     * @param family a family's id; one that is unknown changes nothing
     */
    public RuleBook of(String family) {
        return Optional.ofNullable(families.get(family))
                .flatMap(Family::model)
                .map(model -> ModelLayer.within(this, model))
                .orElse(this);
    }

    RuleBook with(
            Map<String, Family> newFamilies,
            Map<String, History> newHistories,
            Map<String, Cause> newCauses,
            Map<String, Observation> newObservations,
            Map<String, Choice> newChoices,
            Map<String, Confirmation> newConfirmations,
            Map<String, Access> newAccess,
            Map<String, Part> newParts,
            Map<String, Marginal> newMarginals) {
        return new RuleBook(
                title,
                bench,
                words,
                reliability,
                components,
                tools,
                newFamilies,
                newHistories,
                newCauses,
                newObservations,
                newChoices,
                newConfirmations,
                newAccess,
                newParts,
                cautions,
                lapses,
                grades,
                newMarginals,
                languages,
                hints,
                cases);
    }

    /** The causes a phone of this family can have. */
    public List<Cause> causesOf(String family) {
        Set<String> has = family(family).components();
        return causes.values().stream().filter(c -> has.contains(c.component())).toList();
    }

    /** The observations that can be asked of this family. */
    public List<Observation> observationsOf(String family) {
        return observations.values().stream()
                .filter(o -> o.families().contains(family))
                .toList();
    }

    /** Everything that can be asked, choices first: they settle several observations at once. */
    public List<Question> questions() {
        return Stream.concat(
                        choices.values().stream().map(Question::of),
                        observations.values().stream().map(Question::of))
                .toList();
    }

    /** The observation or choice of this id. */
    public Optional<Question> question(String id) {
        return Optional.ofNullable(choices.get(id))
                .map(Question::of)
                .or(() -> Optional.ofNullable(observations.get(id)).map(Question::of));
    }

    /**
     * The family of this id.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Family family(String id) {
        return Optional.ofNullable(families.get(id))
                .orElseThrow(() -> new IllegalArgumentException(
                        "no family \"" + id + "\"; there are " + String.join(", ", families.keySet())));
    }

    /** The access steps from closed to this state, outermost first; empty for a closed phone. */
    public List<Access> pathTo(Optional<String> state) {
        List<Access> path = new ArrayList<>();
        for (Optional<String> at = state; at.isPresent(); ) {
            Access step = access.get(at.get());
            if (step == null) {
                throw new IllegalArgumentException("no access state \"" + at.get() + "\"");
            }
            path.add(0, step);
            at = step.parent();
        }
        return List.copyOf(path);
    }

    /**
     * Whether the recorded answers allow a confirmation and all that must be opened for it. What is not recorded forbids
     * nothing and must be asked first, unless the recorded answers say that it cannot be asked.
     *
     * @param open ids of the access states that are open already
     */
    public boolean possible(Confirmation c, Map<String, Boolean> answers, Set<String> open) {
        return possible(c.needs(), answers)
                && pathTo(c.access()).stream()
                        .filter(a -> !open.contains(a.id()))
                        .allMatch(a -> possible(a.needs(), answers));
    }

    /** Whether the recorded answers are these, or may become these if they are asked for. */
    public boolean possible(Map<String, Boolean> needs, Map<String, Boolean> answers) {
        return Observation.allowed(needs, answers)
                && unanswered(needs, answers).keySet().stream()
                        .map(observations::get)
                        .allMatch(o -> o == null || o.askable(answers) && Observation.allowed(o.askedIf(), answers));
    }

    /** What of these is not recorded, in the order to ask; each behind what must be asked before it makes sense. */
    public Map<String, Boolean> unanswered(Map<String, Boolean> needs, Map<String, Boolean> answers) {
        Map<String, Boolean> unanswered = new LinkedHashMap<>();
        needs.forEach((id, answer) -> {
            Observation o = observations.get(id);
            if (!answers.containsKey(id) && o != null) {
                unanswered.putAll(unanswered(o.askedIf(), answers));
                unanswered.put(id, answer);
            }
        });
        return unanswered;
    }

    /** Whether "yes" to an observation brings up a caution that stops all work. */
    public boolean stops(String observation) {
        return cautions.values().stream()
                .anyMatch(c -> c.stops() && c.observations().contains(observation));
    }
}
