package hark.assessment;

import java.time.Instant;
import java.util.Optional;

/**
 * When bodies with a cause send again by themselves.
 *
 * @param bodies that were followed
 * @param sending share that sends already; what is wrong then is not that it is off
 * @param probability share that sends at some time up to the end
 * @param note in words
 */
public record LongReturn(
    String cause,
    String title,
    int bodies,
    double sending,
    double probability,
    Optional<Instant> p10,
    Optional<Instant> p50,
    Optional<Instant> p90,
    String note) {}
