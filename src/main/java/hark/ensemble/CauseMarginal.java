package hark.ensemble;

/**
 * What is believed of one cause.
 *
 * @param prior probability within 30 days, as the mission's causes say
 * @param posterior it has happened by now
 * @param later it is still to come
 * @param error Monte-Carlo standard error of {@code posterior}
 * @param ifPriorHalved the posterior had the prior been half
 * @param ifPriorDoubled the posterior had the prior been twice
 */
public record CauseMarginal(
    double prior,
    double posterior,
    double later,
    double error,
    double ifPriorHalved,
    double ifPriorDoubled) {}
