package hark.ensemble;

import hark.evidence.Channel;
import hark.evidence.Evidence.Mode;
import hark.link.NormalCurve;
import hark.power.BodyHistory;
import hark.power.PowerModel;
import java.util.List;
import java.util.Optional;

/**
 * One frame of telemetry against the member's own numbers at that time.
 *
 * @param probe its place among the simulation's probes
 * @param seconds when, s since separation
 * @param counterSurvives whether the beacon counter goes on through a restart
 */
record Frame(
    int entry,
    int probe,
    double seconds,
    List<Told> told,
    Optional<Mode> mode,
    boolean counterSurvives)
    implements BodyClue {
  /** Frames that mean something else altogether: another satellite's, another scale. Judged. */
  private static final double WRONG = 0.01;

  /** A member must send within so many seconds of the time written down. Common practice. */
  private static final double SENDS_WITHIN_SECONDS = 600;

  /**
   * Model discrepancy of the terminal voltage, V a cell: curves of other cells, sag, calibration.
   * Judged.
   */
  private static final double VOLTS_PER_CELL = 0.03;

  /**
   * Model discrepancy of the current: the arrays turn (share of their power), loads differ from
   * their mean (share), and the transmitter may be sending (share of its power). Judged.
   */
  private static final double ARRAY_SHARE = 0.4;

  private static final double LOAD_SHARE = 0.15;
  private static final double TRANSMIT_SHARE = 0.5;

  /** Model discrepancy of the battery's temperature: two thermal nodes, K. Judged. */
  private static final double KELVIN = 5;

  /** The bus says the state it is simulated in; near a threshold it may be another. Judged. */
  private static final double SAME_MODE = 0.9;

  @Override
  public double likelihood(Member member, Body body) {
    double wrong = WRONG;
    for (Told number : told) {
      wrong *= number.ifWrong();
    }
    wrong *= mode.isPresent() ? 1.0 / Mode.values().length : 1;
    return speaks(member, body) ? wrong + (1 - WRONG) * fits(body) : wrong;
  }

  /** Whether it was able to say anything at that time. */
  private boolean speaks(Member member, Body body) {
    boolean radiates = member.radio().muteFrom() > seconds;
    return radiates && !Double.isNaN(at(body).volts()) && maySpeak(body);
  }

  /** Whether a body sends near that time. */
  boolean maySpeak(Body body) {
    double early = seconds - SENDS_WITHIN_SECONDS;
    double late = seconds + SENDS_WITHIN_SECONDS;
    return Ear.Segments.any(body.history().segments(), early, late);
  }

  private BodyHistory.Probe at(Body body) {
    return body.history().probes().get(probe);
  }

  private double fits(Body body) {
    double density = counters(body).likelihood(told);
    for (Told number : told) {
      double expected = expected(number, body);
      if (!Double.isNaN(expected)) {
        density *= Normal.density(number.value(), expected, spread(number, body));
      }
    }
    if (mode.isPresent()) {
      boolean same = mode.get().name().equals(at(body).state().name());
      density *= same ? SAME_MODE : (1 - SAME_MODE) / (Mode.values().length - 1);
    }
    return density;
  }

  private Counters counters(Body body) {
    return new Counters(body.history(), probe, counterSurvives);
  }

  /** The body's own number; NaN for counters, which are weighed together. */
  private double expected(Told number, Body body) {
    BodyHistory.Probe own = at(body);
    return switch (number.channel()) {
      case VOLTS -> own.volts();
      case AMPS -> own.batteryAmps();
      case BATTERY_C -> own.batteryCelsius();
      case RESETS, UPTIME_S, BEACON_COUNTER -> Double.NaN;
    };
  }

  /** Spread around a body's own number: reading and model together. */
  private double spread(Told number, Body body) {
    double model =
        switch (number.channel()) {
          case VOLTS -> VOLTS_PER_CELL * body.model().battery().series();
          case AMPS -> ampsDiscrepancy(body);
          default -> KELVIN;
        };
    return Math.hypot(number.sd(), model);
  }

  private double ampsDiscrepancy(Body body) {
    BodyHistory.Probe own = at(body);
    double transmit = 0;
    for (PowerModel.Beacon beacon : body.model().beacons()) {
      transmit = Math.max(transmit, beacon.transmitWatts());
    }
    double byArrays = ARRAY_SHARE * own.arrayWatts();
    double byLoads = Math.hypot(LOAD_SHARE * own.loadWatts(), TRANSMIT_SHARE * transmit);
    return Math.hypot(byArrays, byLoads) / Math.max(1, own.volts());
  }

  @Override
  public boolean hasResidual() {
    return told.stream().anyMatch(number -> number.channel() == Channel.VOLTS);
  }

  /** By the voltage: it follows the charge smoothly, so that bodies near it can be drawn. */
  @Override
  public double residual(Body body) {
    for (Told number : told) {
      if (number.channel() == Channel.VOLTS) {
        return (at(body).volts() - number.value()) / spread(number, body);
      }
    }
    return Double.NaN;
  }

  @Override
  public int numbers() {
    return told.size();
  }

  @Override
  public double below(int number, Member member, Body body) {
    if (Double.isNaN(at(body).volts())) {
      return Double.NaN;
    }
    Told one = told.get(number);
    double expected = expected(one, body);
    return Double.isNaN(expected)
        ? counters(body).below(one)
        : NormalCurve.below((one.value() - expected) / spread(one, body));
  }
}
