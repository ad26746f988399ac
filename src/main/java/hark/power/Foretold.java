package hark.power;

/** Foretells from the step before where heaters and charge inhibits switch in the next. */
final class Foretold {
  /** Rounds that close in on when something switches; each makes the error a tenth. */
  private static final int CLOSINGS = 3;

  private final Lanes of;

  /** The cells at the end of the step, °C. */
  private final double[] end;

  /** How far they are past a mark; 0 when they are not. */
  private final double[] due;

  Foretold(Lanes lanes) {
    of = lanes;
    end = new double[lanes.count];
    due = new double[lanes.count];
  }

  /**
   * Foretells where heaters and charge inhibits switch: {@link #switchesAfter} then tells when. The
   * battery's temperature in a step is its length times watts over (capacity + length · coupling /
   * 2).
   */
  void step(double seconds) {
    for (int i = 0; i < of.count; i++) {
      double structure = of.structureC[i] + of.structureRate[i] * seconds / 2;
      double across = of.coupling[i] * (of.batteryC[i] - structure);
      end[i] = of.cellWatts[i] + of.heater[i] - across;
    }
    for (int i = 0; i < of.count; i++) {
      double stiffness = of.batteryCapacity[i] + seconds * of.coupling[i] / 2;
      double celsius = of.batteryC[i] + of.shiftKelvin[i] + seconds * end[i] / stiffness;
      due[i] = Glide.past(celsius - of.lowMarkC[i]) + Glide.past(of.highMarkC[i] - celsius);
      end[i] = celsius;
    }
  }

  /** When in the step something of a body switches by warmth, s; infinite when nothing does. */
  double switchesAfter(int i, double seconds) {
    if (due[i] == 0 || !of.glides[i]) {
      return Double.POSITIVE_INFINITY;
    }
    double wanted = markOf(i) - of.shiftKelvin[i] - of.batteryC[i];
    if (rises(i) ? wanted <= 0 : wanted >= 0) {
      return 0;
    }
    double until = seconds;
    for (int round = 0; round < CLOSINGS; round++) {
      double moved =
          of.structureC[i] + of.structureRate[i] * until / 2 - of.batteryC[i] - wanted / 2;
      double watts = of.cellWatts[i] + of.heater[i] + of.coupling[i] * moved;
      until = Math.max(0, Math.min(seconds, wanted * of.batteryCapacity[i] / watts));
    }
    return until;
  }

  /** Whether what is foretold to switch does so on the way up. */
  boolean rises(int i) {
    return end[i] > of.highMarkC[i];
  }

  private double markOf(int i) {
    return rises(i) ? of.highMarkC[i] : of.lowMarkC[i];
  }
}
