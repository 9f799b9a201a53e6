package hingewise.rulebook;

import java.util.Optional;

/**
 * A link from a cause or history to an observation.
 *
 * @param observation id of what is seen
 * @param strength chance that this cause alone makes it show, in .001–.999
 * @param because a reason of its own, where the owner's reason does not cover it
 */
public record Sign(String observation, double strength, Optional<String> because) {}
