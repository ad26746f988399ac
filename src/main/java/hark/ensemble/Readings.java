package hark.ensemble;

import hark.power.BodyHistory;
import hark.power.EnergyBooks;
import java.util.List;

/**
 * What is read off a simulated body beside its grid: the one place that knows how it is offered.
 */
public final class Readings {
  private Readings() {}

  /** Books at the probe times, cumulative from separation; none where the kernel keeps none. */
  public static List<EnergyBooks> books(BodyHistory history) {
    return List.of();
  }

  /** Array power at a probe, W; NaN where the kernel does not say. */
  public static double arrayWatts(BodyHistory.Probe probe) {
    return Double.NaN;
  }

  /** Power of all loads at a probe, W; NaN where the kernel does not say. */
  public static double loadWatts(BodyHistory.Probe probe) {
    return Double.NaN;
  }

  /** Temperature of the structure at a probe, °C; NaN where the kernel does not say. */
  public static double structureCelsius(BodyHistory.Probe probe) {
    return Double.NaN;
  }
}
