package hark.power;

import hark.power.PowerModel.Attitude;
import hark.power.PowerModel.AttitudeMode;
import java.util.List;

/**
 * Cell area towards the Sun against time for one body: its attitude, its geometry in the present
 * configuration and the Sun's path.
 */
final class SunView {
  /** A tumble slower than this is followed; a faster one counts by its mean, degrees a second. */
  static final double SLOW_DEG_PER_SECOND = 0.6;

  /** Steps in a round of a slow tumble. */
  private static final double STEPS_A_ROUND = 36;

  /** Steps in a round where a moment of little power counts: without a battery. */
  private static final double DIP_STEPS_A_ROUND = 180;

  /** The Sun moves by a quarter of a degree in this time; a spin mean holds for so long, s. */
  private static final double SPIN_SECONDS = 6 * 3600;

  /** A tumble is looked at each time it has turned so far, degrees: its mean is then within 1 %. */
  private static final double LOOK_DEGREES = 40;

  /** A nadir body turns by a twentieth of a round in a step. */
  private static final int NADIR_LOOKS = 2;

  /** The azimuth of a tumble turns so many times as fast as its polar angle: never in step. */
  private static final double AZIMUTH_RATIO = Math.sqrt(2);

  private final List<Face> faces;
  private final Attitude attitude;
  private final AttitudeMode mode;
  private final boolean followed;
  private final SunPath path;
  private final double firstAzimuth;

  private double meanArea;
  private double swingArea;
  private long lost = -1;
  private boolean unfolded;
  private ArrayGeometry geometry;
  private double steady;
  private double total;
  private long spinBlock = Long.MIN_VALUE;

  SunView(PowerModel model, Illumination light) {
    faces = model.arrays().faces();
    attitude = model.attitude();
    mode = attitude.mode();
    path = light.path().orElse(null);
    double[] start = attitude.orientation().skyAxis();
    firstAzimuth = Math.atan2(start[1], start[0]);
    boolean slow = attitude.rateDegPerSecond() < SLOW_DEG_PER_SECOND;
    boolean tumblesSlowly = mode == AttitudeMode.TUMBLING && slow;
    boolean needsPath = mode == AttitudeMode.NADIR || mode == AttitudeMode.SPINNING;
    followed = tumblesSlowly || (needsPath && path != null);
  }

  /** Longest step that follows the turning body, s. */
  double longestStepSeconds() {
    return Math.max(10, stepSeconds(STEPS_A_ROUND));
  }

  /** Longest step that meets each dip of its array power, s. */
  double dipSeconds() {
    return Math.max(2, stepSeconds(DIP_STEPS_A_ROUND));
  }

  private double stepSeconds(double stepsRound) {
    return mode == AttitudeMode.TUMBLING && followed
        ? 360 / Math.max(attitude.rateDegPerSecond(), 1e-3) / stepsRound
        : Double.POSITIVE_INFINITY;
  }

  /** Whether the area changes with time. */
  boolean follows() {
    return followed;
  }

  /** Whether it changes within minutes: a spin mean does not. */
  boolean dips() {
    return followed && mode != AttitudeMode.SPINNING;
  }

  /** Takes on a configuration; cheap when it has not changed. */
  void configure(long lostFaces, boolean panelsUnfolded) {
    if (geometry != null && lostFaces == lost && panelsUnfolded == unfolded) {
      return;
    }
    lost = lostFaces;
    unfolded = panelsUnfolded;
    geometry = new ArrayGeometry(faces, lost, unfolded);
    total = geometry.total();
    spinBlock = Long.MIN_VALUE;
    steady = mode == AttitudeMode.SUN_POINTING ? geometry.bestArea() : geometry.meanArea();
  }

  /** All cell area that gives power, m². */
  double totalArea() {
    return total;
  }

  /** Cell area towards the Sun at a time, m². */
  double areaAt(double seconds) {
    if (!followed) {
      return steady;
    }
    return switch (mode) {
      case TUMBLING -> tumbling(seconds);
      case NADIR -> nadir(seconds);
      default -> spinning(seconds);
    };
  }

  /**
   * Looks at a stretch of time: {@link #meanArea} and {@link #swingArea} then tell of it.
   *
   * @param from s
   * @param to s, after it
   */
  void sweep(double from, double to) {
    int looks = 1;
    if (mode == AttitudeMode.TUMBLING) {
      double degrees = (to - from) * attitude.rateDegPerSecond() * AZIMUTH_RATIO;
      looks = Math.max(2, (int) Math.ceil(degrees / LOOK_DEGREES));
    } else if (mode == AttitudeMode.NADIR) {
      looks = NADIR_LOOKS;
    }
    double sum = 0;
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int k = 0; k < looks; k++) {
      double area = areaAt(from + (k + 0.5) * (to - from) / looks);
      sum += area;
      least = Math.min(least, area);
      most = Math.max(most, area);
    }
    meanArea = sum / looks;
    swingArea = most - least;
  }

  /** Mean over the stretch, m². */
  double meanArea() {
    return meanArea;
  }

  /** How far the area strays from its mean within the stretch, at most and about, m². */
  double swingArea() {
    return swingArea;
  }

  private double spinning(double seconds) {
    long block = (long) (seconds / SPIN_SECONDS);
    if (block != spinBlock) {
      spinBlock = block;
      Orientation axes = attitude.orientation();
      double cosine = path.cosineTo(axes.skyAxis(), (block + 0.5) * SPIN_SECONDS);
      steady = geometry.spinMean(axes.bodyAxis(), cosine);
    }
    return steady;
  }

  private double nadir(double seconds) {
    // body axes: +Z to the Earth, +X along the flight, +Y = Z × X against the orbit normal
    return geometry.seenFrom(path.along(seconds), -path.across(seconds), -path.zenith(seconds));
  }

  private double tumbling(double seconds) {
    double rounds = seconds * attitude.rateDegPerSecond() / 360;
    double height = triangle(rounds + attitude.orientation().turn());
    double azimuth = firstAzimuth + 2 * Math.PI * AZIMUTH_RATIO * rounds;
    double flat = Math.sqrt(1 - height * height);
    return geometry.seenFrom(flat * Math.cos(azimuth), flat * Math.sin(azimuth), height);
  }

  /** A wave of period 1 between −1 and 1 that takes every value for equally long. */
  private static double triangle(double rounds) {
    double part = rounds - Math.floor(rounds);
    return 1 - 4 * Math.abs(part - 0.5);
  }
}
