package hark.assessment;

import java.time.Instant;
import java.util.List;

/**
 * Returns without any action, followed beyond the horizon on a few bodies of each cause.
 *
 * @param until how far
 * @param returns one for each cause looked at, heaviest first
 */
public record LongLook(Instant until, List<LongReturn> returns) {}
