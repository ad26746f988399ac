package hark.plan;

/**
 * What a choice is worth.
 *
 * @param found chance to have heard something by the horizon
 * @param early the same, found early: a reception {@code d} days from now counts {@code exp(−d/3)}
 * @param days restricted mean time to the first reception: horizon where none comes, days
 */
record Worth(double found, double early, double days) {}
