package hingewise.diagnosis;

import java.util.Map;

/**
 * What an answer would do.
 *
 * @param yes chance that it is so
 * @param ifYes chance of each cause if it is
 * @param ifNo chance of each cause if it is not
 */
public record CauseOutlook(double yes, Map<String, Double> ifYes, Map<String, Double> ifNo) {}
