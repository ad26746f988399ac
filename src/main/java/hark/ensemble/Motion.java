package hark.ensemble;

import hark.evidence.MotionSeen.Decay;
import hark.link.NormalCurve;
import hark.power.OnboardChange;
import java.util.Optional;

/**
 * How it turns or sinks, as seen from outside. A spacecraft with its panels or its antenna stowed
 * shows less area to the air and sinks more slowly than its neighbours.
 *
 * @param seconds when, s since separation
 * @param turnSeconds time of one turn, s; NaN when it was not seen
 * @param turnSdSeconds give or take, s
 */
record Motion(
    int entry, double seconds, double turnSeconds, double turnSdSeconds, Optional<Decay> decay)
    implements BodyClue {
  /**
   * Rates of turn change by the air and by magnets between release and sighting: spread of the
   * logarithm beside that of the reading. Judged: a third up or down.
   */
  private static final double DISCREPANCY_LOG = 0.3;

  /** A light curve that flashes twice a turn is read as half the time. Judged. */
  private static final double READ_AS_HALF = 0.15;

  /** Sightings that mean something else altogether, spread over so many natural logarithms. */
  private static final double WRONG = 0.1;

  private static final double WRONG_SPREAD_LOG = 11;
  private static final double WRONG_FROM_LOG = Math.log(0.1);

  @Override
  public double likelihood(Member member, Body body) {
    double turn = Double.isNaN(turnSeconds) ? 1 : turn(body);
    return decay.isEmpty() ? turn : turn * decay(decay.get(), member, body);
  }

  /** Density of the logarithm of the time of a turn. */
  private double turn(Body body) {
    double wrong = WRONG / WRONG_SPREAD_LOG;
    if (!(body.tumbleDegPerSecond() > 0)) {
      return wrong;
    }
    double expected = Math.log(360 / body.tumbleDegPerSecond());
    double seen = Math.log(turnSeconds);
    double sd = spread();
    double fits =
        (1 - READ_AS_HALF) * Normal.density(seen, expected, sd)
            + READ_AS_HALF * Normal.density(seen, expected - Math.log(2), sd);
    return wrong + (1 - WRONG) * fits;
  }

  private double spread() {
    return Math.hypot(DISCREPANCY_LOG, turnSdSeconds / turnSeconds);
  }

  /** Chance of the comparison. Judged: drag follows area, which for a stowed body is smaller. */
  private double decay(Decay seen, Member member, Body body) {
    boolean panels =
        body.request().events().stream()
            .anyMatch(
                event ->
                    event.onsetSeconds() <= seconds
                        && event.change() instanceof OnboardChange.PanelsStowed);
    boolean antenna = member.radio().at(seconds).uplinkLossDb() > 0;
    double slower = panels ? 0.6 : antenna ? 0.25 : 0.1;
    double faster = panels ? 0.05 : 0.1;
    return switch (seen) {
      case SLOWER -> slower;
      case FASTER -> faster;
      case SAME -> 1 - slower - faster;
    };
  }

  @Override
  public int numbers() {
    return Double.isNaN(turnSeconds) ? 0 : 1;
  }

  @Override
  public double below(int number, Member member, Body body) {
    double seen = Math.log(turnSeconds);
    double even = Math.max(0, Math.min(1, (seen - WRONG_FROM_LOG) / WRONG_SPREAD_LOG));
    if (!(body.tumbleDegPerSecond() > 0)) {
      return even;
    }
    double z = (seen - Math.log(360 / body.tumbleDegPerSecond())) / spread();
    double half = Math.log(2) / spread();
    return WRONG * even
        + (1 - WRONG)
            * ((1 - READ_AS_HALF) * NormalCurve.below(z)
                + READ_AS_HALF * NormalCurve.below(z + half));
  }
}
