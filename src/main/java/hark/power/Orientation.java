package hark.power;

/**
 * Axes and phases of a turning body. A spinning body turns about {@code bodyAxis}, which points to
 * {@code skyAxis} for good. A tumbling body takes from {@code skyAxis} and {@code turn} only where
 * on its way round all directions it begins.
 *
 * @param bodyAxis direction in body axes, any length but zero
 * @param skyAxis direction among the stars (TEME), any length but zero
 * @param turn phase of the turn at separation, 0…1
 */
public record Orientation(double[] bodyAxis, double[] skyAxis, double turn) {
  /** Spin about +Z, pointing north, from phase 0. */
  public static final Orientation PLAIN =
      new Orientation(new double[] {0, 0, 1}, new double[] {0, 0, 1}, 0);

  /** Refuses axes without direction and a phase outside 0…1. */
  public Orientation {
    bodyAxis = Check.direction("spin axis", bodyAxis);
    skyAxis = Check.direction("spin axis in the sky", skyAxis);
    Check.share("phase of the turn", turn);
  }
}
