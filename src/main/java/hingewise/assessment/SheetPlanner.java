package hingewise.assessment;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Report;
import hingewise.costing.RepairCosts;
import hingewise.costing.Terms;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.Diagnostician;
import hingewise.diagnosis.PossiblePhones;
import hingewise.planning.Planning;
import hingewise.planning.Sheet;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Question;
import hingewise.rulebook.RuleBook;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Plans a sheet on which nothing is opened before what must be answered first is: where it is not, the look that answers it
 * is a station of its own and stands first, and the rest is planned as if it had been answered so that the phone may be
 * opened.
 */
final class SheetPlanner {
    /** The likeliest branch is drawn, however likely the look is to end it all. */
    private static final double MOST = .5;

    private final RuleBook rules;
    private final RepairCosts costs;
    private final Terms terms;

    SheetPlanner(RuleBook rules, RepairCosts costs, Terms terms) {
        this.rules = rules;
        this.costs = costs;
        this.terms = terms;
    }

    Sheet sheet(CaseFile file, Diagnosis diagnosis) {
        return sheet(file, diagnosis, Sheet.LEAST_CHANCE);
    }

    private Sheet sheet(CaseFile file, Diagnosis diagnosis, double least) {
        Planning planning = new Planning(rules, costs, diagnosis, terms);
        Sheet sheet = planning.sheet(least);
        return planning.beforeOpening(sheet).stream()
                .flatMap(n -> planning.check(n.observation()).stream().map(c -> first(file, diagnosis, n, c, least)))
                .findFirst()
                .orElse(sheet);
    }

    /** Looks first, and then does what is planned once nothing forbids to open. */
    private Sheet first(CaseFile file, Diagnosis diagnosis, Sheet.Need need, Confirmation check, double least) {
        List<Sheet.Need> looks = Stream.concat(Stream.of(need), alsoStopping(check, diagnosis))
                .distinct()
                .toList();
        CaseFile answered = file;
        Diagnosis then = diagnosis;
        double goesOn = 1;
        for (Sheet.Need look : looks) {
            double yes = chanceOfYes(then, look.observation());
            goesOn *= look.answer() ? yes : 1 - yes;
            answered = with(answered, look.observation(), look.answer());
            then = new Diagnostician(rules).diagnose(answered);
        }
        Sheet rest = sheet(answered, then, Math.min(MOST, least / goesOn));
        Diagnosis other = new Diagnostician(rules).diagnose(with(file, need.observation(), !need.answer()));
        double cost = costs.money(check.cost())
                        .plus(costs.labour(check.minutes()))
                        .getAmount()
                        .doubleValue()
                + goesOn * rest.expected().getAmount().doubleValue()
                + (1 - goesOn)
                        * new Planning(rules, costs, other, terms)
                                .plan()
                                .now()
                                .getAmount()
                                .doubleValue();
        return rest.after(check, looks, goesOn, costs.money(check.cost()), costs.expected(cost));
    }

    /** What the same check sees besides that stops all work. */
    private Stream<Sheet.Need> alsoStopping(Confirmation check, Diagnosis diagnosis) {
        return check.settles().stream()
                .flatMap(o -> Optional.ofNullable(rules.observations().get(o)).stream())
                .filter(o -> o.families().contains(costs.family()))
                .filter(o -> !diagnosis.readings().latest().containsKey(o.id()))
                .filter(o -> rules.stops(o.id()))
                .map(o -> new Sheet.Need(o, false));
    }

    private static double chanceOfYes(Diagnosis diagnosis, Observation observation) {
        PossiblePhones.Look look = PossiblePhones.look(observation, EvidenceKind.LOOK);
        double so = diagnosis.outlook(observation.id()).yes();
        return so * look.ifSo() + (1 - so) * look.ifNot();
    }

    private static CaseFile with(CaseFile file, Observation observation, boolean yes) {
        List<Entry> entries = file.entries();
        Instant at = entries.isEmpty()
                ? Instant.EPOCH
                : entries.get(entries.size() - 1).at();
        return file.with(new Report(
                file.nextId(),
                at,
                EvidenceKind.LOOK.id(),
                EvidenceKind.LOOK,
                observation.id(),
                yes ? Question.YES : Question.NO,
                Optional.empty(),
                ""));
    }
}
