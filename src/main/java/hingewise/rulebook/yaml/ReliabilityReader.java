package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Reliability;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** How far each kind of evidence is believed. */
final class ReliabilityReader {
    /** Room for the rounding of two written decimals. */
    private static final double ROUNDING = 1e-9;

    private ReliabilityReader() {}

    /** One kind, when it is there. */
    static Optional<Reliability> kind(Fields fields, EvidenceKind kind) {
        return fields.optional(kind.id())
                .flatMap(n -> Fields.read(
                        fields.context(), n, "the reliability of " + Quoted.of(kind.id()), ReliabilityReader::read));
    }

    private static Reliability read(Fields fields) {
        Optional<Double> yes = fields.chance("yes");
        Optional<Double> no = fields.chance("no");
        if (yes.isPresent() && no.isPresent() && yes.get() + no.get() < 1 - ROUNDING) {
            fields.problem(
                    "yes",
                    "\"yes\" and \"no\" together are less than 1, so that a yes would speak against itself",
                    "Raise one of them.");
        }
        double lowest = Range.CHANCE.lowest().doubleValue();
        return new Reliability(yes.orElse(lowest), no.orElse(lowest));
    }

    /** The kinds an observation states for itself. */
    static Map<EvidenceKind, Reliability> some(Fields fields) {
        return fields.optional("reliability")
                .flatMap(n -> Fields.read(fields.context(), n, "the reliability", ReliabilityReader::kinds))
                .orElse(Map.of());
    }

    private static Map<EvidenceKind, Reliability> kinds(Fields fields) {
        Map<EvidenceKind, Reliability> result = new EnumMap<>(EvidenceKind.class);
        for (EvidenceKind kind : EvidenceKind.values()) {
            kind(fields, kind).ifPresent(r -> result.put(kind, r));
        }
        return result;
    }

    /** All kinds, as the rule book must state them once. */
    static Map<EvidenceKind, Reliability> all(Fields fields) {
        for (EvidenceKind kind : EvidenceKind.values()) {
            fields.present(kind.id());
        }
        return kinds(fields);
    }
}
