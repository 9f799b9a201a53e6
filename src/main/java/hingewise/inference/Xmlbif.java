package hingewise.inference;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Writes a network in XMLBIF 0.3, the interchange format of general-purpose Bayesian-network tools (Cozman 1998, "The
 * Interchange Format for Bayesian Networks"). In a table the outcome of the variable varies fastest, then the parent
 * given last.
 *
 * <p>The format has no place for evidence. A report becomes a further variable, a child of what it is about, that has to
 * be observed as yes; {@link #observations} lists what has to be observed. Variables stand in an order that suits
 * junction trees.
 */
public final class Xmlbif {
    private static final String HEAD = """
            <?xml version="1.0" encoding="UTF-8"?>
            <!DOCTYPE BIF [
              <!ELEMENT BIF ( NETWORK )*>
              <!ATTLIST BIF VERSION CDATA #REQUIRED>
              <!ELEMENT NETWORK ( NAME, ( PROPERTY | VARIABLE | DEFINITION )* )>
              <!ELEMENT NAME (#PCDATA)>
              <!ELEMENT VARIABLE ( NAME, ( OUTCOME | PROPERTY )* )>
              <!ATTLIST VARIABLE TYPE (nature|decision|utility) "nature">
              <!ELEMENT OUTCOME (#PCDATA)>
              <!ELEMENT DEFINITION ( FOR | GIVEN | TABLE | PROPERTY )*>
              <!ELEMENT FOR (#PCDATA)>
              <!ELEMENT GIVEN (#PCDATA)>
              <!ELEMENT TABLE (#PCDATA)>
              <!ELEMENT PROPERTY (#PCDATA)>
            ]>
            <BIF VERSION="0.3">
            <NETWORK>
            <NAME>network</NAME>
            """;

    private Xmlbif() {}

    /**
     * Writes the network and the reports on it.
     *
     * @param network a network of tables, as {@link Solver#expanded()} gives it; noisy-ORs without parents are allowed
     * @param evidence its weighted findings become report variables; likelihoods above 1 are scaled down in proportion
     * @throws IllegalArgumentException when a variable with parents is not a table or evidence names an unknown variable
     * @throws IOException when writing fails
     */
    public static void write(Network network, Evidence evidence, Appendable out) throws IOException {
        Map<String, String> names = names(network, evidence);
        out.append(HEAD);
        for (String name : FileOrder.of(families(network, evidence, names))) {
            out.append("<VARIABLE TYPE=\"nature\"><NAME>")
                    .append(name)
                    .append("</NAME><OUTCOME>no</OUTCOME><OUTCOME>yes</OUTCOME></VARIABLE>\n");
        }
        for (Variable variable : network.variables()) {
            List<String> parents = variable.mechanism().parents().stream()
                    .map(parent -> known(names, parent))
                    .toList();
            define(known(names, variable.name()), parents, rows(variable), out);
        }
        for (Map.Entry<String, Finding> entry : evidence.findings().entrySet()) {
            Finding finding = entry.getValue();
            if (finding instanceof Weighted) {
                double scale = Math.max(1, Math.max(finding.ifYes(), finding.ifNo()));
                double[] rows = {finding.ifNo() / scale, finding.ifYes() / scale};
                define(known(names, report(entry.getKey())), List.of(known(names, entry.getKey())), rows, out);
            }
        }
        out.append("</NETWORK>\n</BIF>\n");
    }

    /** What has to be observed in the written network, each as {@code NAME=OUTCOME}. */
    public static List<String> observations(Network network, Evidence evidence) {
        Map<String, String> names = names(network, evidence);
        List<String> observations = new ArrayList<>();
        evidence.findings().forEach((name, finding) -> {
            if (finding instanceof Hard hard) {
                observations.add(known(names, name) + "=" + (hard.yes() ? "yes" : "no"));
            } else {
                observations.add(known(names, report(name)) + "=yes");
            }
        });
        return observations;
    }

    /**
     * The name in the file of each variable and each report, reports under {@code "report on " + variable}. A name of
     * letters, digits, dots, hyphens and underscores that begins with a letter is kept; other characters become
     * underscores and a number keeps the result unique.
     *
     * @throws IllegalArgumentException when evidence names an unknown variable
     */
    public static Map<String, String> names(Network network, Evidence evidence) {
        Map<String, String> names = new LinkedHashMap<>();
        Set<String> taken = new HashSet<>();
        for (Variable variable : network.variables()) {
            names.put(variable.name(), unique(safe(variable.name()), taken));
        }
        evidence.findings().forEach((name, finding) -> {
            String own = known(names, name);
            if (finding instanceof Weighted) {
                names.put(report(name), unique(own + ".report", taken));
            }
        });
        return names;
    }

    private static Map<String, List<String>> families(Network network, Evidence evidence, Map<String, String> names) {
        Map<String, List<String>> families = new LinkedHashMap<>();
        for (Variable variable : network.variables()) {
            families.put(
                    known(names, variable.name()),
                    variable.mechanism().parents().stream()
                            .map(parent -> known(names, parent))
                            .toList());
        }
        evidence.findings().forEach((name, finding) -> {
            if (finding instanceof Weighted) {
                families.put(known(names, report(name)), List.of(known(names, name)));
            }
        });
        return families;
    }

    private static String report(String name) {
        return "report on " + name;
    }

    private static String known(Map<String, String> names, String name) {
        String found = names.get(name);
        if (found == null) {
            throw new IllegalArgumentException("there is no variable '" + name + "' in the network to be written");
        }
        return found;
    }

    private static String safe(String name) {
        String safe = name.replaceAll("[^A-Za-z0-9._-]", "_");
        return safe.matches("[A-Za-z].*") ? safe : "v" + safe;
    }

    private static String unique(String name, Set<String> taken) {
        String candidate = name;
        for (int number = 2; !taken.add(candidate); number++) {
            candidate = name + "_" + number;
        }
        return candidate;
    }

    private static double[] rows(Variable variable) {
        if (variable.mechanism() instanceof NoisyOr or) {
            if (!or.links().isEmpty()) {
                throw new IllegalArgumentException("'" + variable.name()
                        + "' is a noisy-OR with parents, which the format cannot hold; write the expanded network");
            }
            return new double[] {or.leak()};
        }
        Table table = (Table) variable.mechanism();
        double[] rows = new double[table.rows()];
        for (int row = 0; row < rows.length; row++) {
            rows[row] = table.yes(row);
        }
        return rows;
    }

    private static void define(String name, List<String> parents, double[] yes, Appendable out) throws IOException {
        out.append("<DEFINITION><FOR>").append(name).append("</FOR>");
        for (String parent : parents) {
            out.append("<GIVEN>").append(parent).append("</GIVEN>");
        }
        out.append("<TABLE>");
        for (double p : yes) {
            out.append(Double.toString(1 - p))
                    .append(' ')
                    .append(Double.toString(p))
                    .append(' ');
        }
        out.append("</TABLE></DEFINITION>\n");
    }
}
