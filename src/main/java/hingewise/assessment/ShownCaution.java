package hingewise.assessment;

import hingewise.rulebook.Caution;

/**
 * A caution that applies to this case.
 *
 * @param stops whether work stops now; a stopping caution that merely comes with a proposed step only warns
 */
public record ShownCaution(Caution caution, boolean stops) {}
