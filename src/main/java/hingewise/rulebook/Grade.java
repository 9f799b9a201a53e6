package hingewise.rulebook;

/**
 * What kind of part was fitted: a service part, an aftermarket part, a pulled part.
 *
 * @param bad chance that such a part is bad, in .001–.999
 */
public record Grade(String id, String label, double bad, Grounds grounds) {}
