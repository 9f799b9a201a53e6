package hingewise.offer;

import java.util.Optional;

/**
 * What may be paid for a phone.
 *
 * @param verdict one or two sentences
 * @param worth the figures; empty where the verdict says why there are none
 */
public record Appraisal(String verdict, Optional<Worth> worth) {}
