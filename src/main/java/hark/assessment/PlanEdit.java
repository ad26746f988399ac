package hark.assessment;

import java.util.Optional;

/**
 * What somebody would do otherwise.
 *
 * @param window its id
 * @param procedure id of what to do there; empty to leave it out
 */
public record PlanEdit(String window, Optional<String> procedure) {}
