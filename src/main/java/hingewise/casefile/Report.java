package hingewise.casefile;

import hingewise.rulebook.EvidenceKind;
import java.time.Instant;
import java.util.Optional;

/**
 * An answer to a question of the rule book: a claim, a photo, a look or a measurement.
 *
 * @param about id of an observation or a choice
 * @param answer an answer id of the question, or {@link #CANT_TELL}
 * @param resultOf id of the try whose result this is; empty for any other look
 */
public record Report(
        String id,
        Instant at,
        String by,
        EvidenceKind kind,
        String about,
        String answer,
        Optional<String> resultOf,
        String remark)
        implements Entry {
    /** Looked at, and it could not be told; says nothing either way, unlike "no". */
    public static final String CANT_TELL = "cant-tell";
}
