package hingewise.rulebook;

import java.util.Optional;

/**
 * A link from a history to a cause.
 *
 * @param history id of what happened to the phone
 * @param strength chance that this history alone brings the cause about, in .001–.999
 * @param because a reason of its own, where the cause's reason does not cover it
 */
public record Raise(String history, double strength, Optional<String> because) {}
