package hingewise.diagnosis;

import hingewise.inference.Link;
import hingewise.inference.Network;
import hingewise.inference.NoisyOr;
import hingewise.inference.Variable;
import hingewise.rulebook.Cause;
import hingewise.rulebook.History;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Sign;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The rule book of one family as a network: histories raise causes, both show observations. */
final class RuleNetwork {
    private RuleNetwork() {}

    static Network of(RuleBook rules, String family) {
        List<Variable> variables = new ArrayList<>();
        Map<String, List<Link>> shownBy = new LinkedHashMap<>();
        for (History history : rules.histories().values()) {
            String name = Names.history(history.id());
            variables.add(new Variable(name, NoisyOr.root(history.rate().in(family))));
            gather(shownBy, name, history.signs());
        }
        for (Cause cause : rules.causesOf(family)) {
            String name = Names.cause(cause.id());
            List<Link> raises = cause.raisedBy().stream()
                    .map(r -> new Link(Names.history(r.history()), r.strength()))
                    .toList();
            variables.add(new Variable(name, new NoisyOr(cause.baseRate().in(family), raises)));
            gather(shownBy, name, cause.signs());
        }
        for (Observation observation : rules.observationsOf(family)) {
            variables.add(new Variable(
                    Names.observation(observation.id()),
                    new NoisyOr(observation.leak(), shownBy.getOrDefault(observation.id(), List.of()))));
        }
        return Network.of(variables);
    }

    private static void gather(Map<String, List<Link>> shownBy, String name, List<Sign> signs) {
        for (Sign sign : signs) {
            shownBy.computeIfAbsent(sign.observation(), o -> new ArrayList<>()).add(new Link(name, sign.strength()));
        }
    }
}
