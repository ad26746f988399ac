package hark.plan;

import hark.ensemble.Listening;

/**
 * A procedure that is possible in a window.
 *
 * @param listening how the station listens meanwhile
 * @param listens false for staying at home
 * @param costHours people's hours when nothing else is done at that station near that time, h
 */
public record WindowOption(
    Procedure procedure, Listening listening, boolean listens, double costHours) {
  /** True when something is sent. */
  public boolean sends() {
    return procedure.change() instanceof Procedure.Command;
  }
}
