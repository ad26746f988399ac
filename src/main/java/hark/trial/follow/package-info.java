/**
 * Campaigns that are followed under different rules, with one hidden truth and the same luck for
 * all of them: enter through {@link hark.trial.follow.FollowTrial}.
 *
 * <p>A truth is drawn until one is heard and then falls silent; from there each rule has its hours
 * a week. Bodies, bursts and the way up are those of {@code hark.trial}. Threads come in; nothing
 * here touches a disk.
 *
 * <p>Not modelled: signals of others taken for ours, crews that learn an object from a neighbour,
 * stations that are out of order for a while, element sets that get better.
 */
package hark.trial.follow;
