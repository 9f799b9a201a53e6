package hingewise.inference;

import java.util.Map;

/**
 * What looking at one more variable would show and teach.
 *
 * @param yes chance that it is yes given the evidence so far
 * @param ifYes posteriors of the wanted variables if it turned out yes; equal to the present ones if yes is impossible
 * @param ifNo posteriors of the wanted variables if it turned out no; equal to the present ones if no is impossible
 */
public record Outlook(double yes, Map<String, Double> ifYes, Map<String, Double> ifNo) {}
