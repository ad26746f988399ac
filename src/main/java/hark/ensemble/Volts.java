package hark.ensemble;

import hark.power.BodyHistory;

/** A telemetered bus voltage; {@code probe} is its place among the simulation's probes. */
record Volts(int entry, int probe, double seconds, double volts, double sdVolts)
    implements BodyClue {
  /**
   * Model discrepancy of the terminal voltage, V a cell: curves of other cells, sag, calibration.
   * Judged.
   */
  private static final double DISCREPANCY_VOLTS_PER_CELL = 0.03;

  /** Telemetry that is wrong altogether, spread over so many volts. */
  private static final double WRONG_TELEMETRY = 0.01;

  private static final double WRONG_TELEMETRY_SPREAD_VOLTS = 5;

  @Override
  public double likelihood(Member member, Body body) {
    BodyHistory.Probe told = body.history().probes().get(probe);
    double wrong = WRONG_TELEMETRY / WRONG_TELEMETRY_SPREAD_VOLTS;
    if (Double.isNaN(told.volts()) || member.radio().muteFrom() <= seconds) {
      return wrong;
    }
    return wrong + (1 - WRONG_TELEMETRY) * Normal.density(volts, told.volts(), spread(body));
  }

  @Override
  public double residual(Body body) {
    return (body.history().probes().get(probe).volts() - volts) / spread(body);
  }

  /** Spread around a body's own voltage: reading and model together, V. */
  double spread(Body body) {
    int series = body.model().battery().series();
    return Math.hypot(sdVolts, DISCREPANCY_VOLTS_PER_CELL * series);
  }
}
