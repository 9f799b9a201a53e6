package hingewise.inference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A Bayesian network of yes/no variables. Immutable. */
public final class Network {
    private final Map<String, Variable> variables;
    private final Set<String> parents;
    private final List<Variable> inOrder;

    private Network(Map<String, Variable> variables, Set<String> parents) {
        this.variables = variables;
        this.parents = parents;
        inOrder = List.copyOf(variables.values());
    }

    /**
     * Makes a network of variables given in any order.
     *
     * @throws IllegalArgumentException when a name occurs twice, a parent is unknown or the links run in a circle
     */
    public static Network of(List<Variable> variables) {
        Map<String, Variable> byName = new LinkedHashMap<>();
        for (Variable variable : variables) {
            if (byName.put(variable.name(), variable) != null) {
                throw new IllegalArgumentException("the variable '" + variable.name() + "' is declared twice");
            }
        }
        Set<String> parents = new LinkedHashSet<>();
        for (Variable variable : variables) {
            for (String parent : variable.mechanism().parents()) {
                if (!byName.containsKey(parent)) {
                    throw new IllegalArgumentException(
                            "the variable '" + variable.name() + "' names an unknown parent '" + parent + "'");
                }
                parents.add(parent);
            }
        }
        Map<String, Variable> sorted = new LinkedHashMap<>();
        for (Variable variable : variables) {
            place(variable, byName, sorted, new LinkedHashSet<>());
        }
        return new Network(Collections.unmodifiableMap(sorted), parents);
    }

    private static void place(
            Variable variable, Map<String, Variable> byName, Map<String, Variable> sorted, Set<String> path) {
        if (sorted.containsKey(variable.name())) {
            return;
        }
        if (!path.add(variable.name())) {
            throw new IllegalArgumentException("the links run in a circle: " + circle(variable.name(), path));
        }
        for (String parent : variable.mechanism().parents()) {
            place(lookUp(byName, parent), byName, sorted, path);
        }
        path.remove(variable.name());
        sorted.put(variable.name(), variable);
    }

    private static String circle(String start, Set<String> path) {
        List<String> names = new ArrayList<>(path);
        List<String> circle = new ArrayList<>(names.subList(names.indexOf(start), names.size()));
        Collections.reverse(circle);
        circle.add(circle.get(0));
        return String.join(" -> ", circle);
    }

    private static Variable lookUp(Map<String, Variable> variables, String name) {
        @Nullable Variable found = variables.get(name);
        if (found == null) {
            throw new IllegalArgumentException("there is no variable '" + name + "' in the network");
        }
        return found;
    }

    /** All variables, each after its parents and otherwise in the order given. */
    public List<Variable> variables() {
        return inOrder;
    }

    /**
     * The variable of that name.
     *
     * @throws IllegalArgumentException when there is none
     */
    public Variable variable(String name) {
        return lookUp(variables, name);
    }

    boolean hasChildren(String name) {
        return parents.contains(name);
    }
}
