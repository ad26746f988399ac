package hark.mission;

import hark.ensemble.Uncertain;
import hark.power.Orientation;
import hark.power.PowerModel.Attitude;
import hark.power.PowerModel.AttitudeMode;

/**
 * Reads {@code spacecraft.attitude}. Where the axis of a turning body points and at which phase it
 * was let go nobody knows, so each body draws them; bodies that point have no use for them.
 */
final class AttitudeReader {
  private static final Span RATE_DEG_S = Span.of(0, 720).usually(0, 180);
  private static final Span SINE = Span.of(-1, 1);
  private static final Span RIGHT_ASCENSION_DEG = Span.of(-360, 360);
  private static final String DECLINATION = "declination_sine";
  private static final String RIGHT_ASCENSION = "right_ascension_deg";

  /** Keys whose draws turn the body and change nothing of it. */
  private static final String PREFIX = "spacecraft.attitude.";

  private AttitudeReader() {}

  static Attitude read(Section attitude, Reading reading) {
    AttitudeMode mode = attitude.choice("mode", AttitudeMode.TUMBLING);
    double rate = attitude.number("rate_deg_s", RATE_DEG_S, new Uncertain.LogNormal(3, 2));
    boolean turning = mode == AttitudeMode.TUMBLING || mode == AttitudeMode.SPINNING;
    double[] body = bodyAxis(attitude, mode, reading);
    if (!turning) {
      unused(attitude);
      return new Attitude(mode, rate, new Orientation(body, new double[] {0, 0, 1}, 0));
    }
    double[] sky = attitude.partOrDefaults("spin_axis_sky", AttitudeReader::skyAxis);
    double turn = attitude.number("turn", Spans.FRACTION, new Uncertain.Uniform(0, 1));
    return new Attitude(mode, rate, new Orientation(body, sky, turn));
  }

  /** True for the numbers that say only how a body lies among the stars when it is let go. */
  static boolean isOrientation(String key) {
    return key.startsWith(PREFIX + "spin_axis_sky.") || key.equals(PREFIX + "turn");
  }

  private static double[] bodyAxis(Section attitude, AttitudeMode mode, Reading reading) {
    YamlTree node = attitude.at("spin_axis");
    double[] plain = {0, 0, 1};
    if (node.isNothing()) {
      if (mode == AttitudeMode.SPINNING) {
        attitude.noteDefault(node, "[0, 0, 1]");
      }
      return plain;
    }
    double[] axis = YamlValues.numbers(node, 3, reading.problems).orElse(plain);
    if (Math.hypot(Math.hypot(axis[0], axis[1]), axis[2]) < 1e-9) {
      reading.problems.add(node, "the axis has no length", "write a direction in body axes");
      return plain;
    }
    if (mode != AttitudeMode.SPINNING) {
      reading.notComputed.add(node.path());
    }
    return axis;
  }

  /**
   * A direction evenly spread over the sky is one even in right ascension and sine of declination.
   */
  private static double[] skyAxis(Section sky) {
    double sine = sky.number(DECLINATION, SINE, new Uncertain.Uniform(-1, 1));
    double degrees =
        sky.number(RIGHT_ASCENSION, RIGHT_ASCENSION_DEG, new Uncertain.Uniform(0, 360));
    double flat = Math.sqrt(1 - sine * sine);
    double around = Math.toRadians(degrees);
    return new double[] {flat * Math.cos(around), flat * Math.sin(around), sine};
  }

  private static void unused(Section attitude) {
    attitude.partIfWritten(
        "spin_axis_sky",
        sky -> {
          sky.unusedNumber(DECLINATION, SINE);
          sky.unusedNumber(RIGHT_ASCENSION, RIGHT_ASCENSION_DEG);
          return sky;
        });
    attitude.unusedNumber("turn", Spans.FRACTION);
  }
}
