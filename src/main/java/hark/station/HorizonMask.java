package hark.station;

import java.util.Comparator;
import java.util.List;

/**
 * A skyline: elevation by azimuth, linear between points, wrapping at north, floored by a least
 * elevation.
 */
public final class HorizonMask {
  private static final double FULL_CIRCLE = 360;

  private final double floorDeg;
  private final List<double[]> points;

  private HorizonMask(double floorDeg, List<double[]> points) {
    this.floorDeg = floorDeg;
    this.points = points;
  }

  /** The same elevation all round, degrees. */
  public static HorizonMask flat(double elevationDeg) {
    return of(elevationDeg, List.of());
  }

  /**
   * A skyline over a floor.
   *
   * @param floorDeg least elevation used anywhere, −90…90 degrees
   * @param points rows of (azimuth 0…360, elevation −90…90), degrees, in any order
   */
  public static HorizonMask of(double floorDeg, List<double[]> points) {
    requireElevation(floorDeg);
    List<double[]> sorted =
        points.stream()
            .map(double[]::clone)
            .sorted(Comparator.comparingDouble(point -> point[0]))
            .toList();
    for (double[] point : sorted) {
      if (!(point[0] >= 0 && point[0] <= FULL_CIRCLE)) {
        throw new IllegalArgumentException("azimuth " + point[0] + " is outside [0, 360]");
      }
      requireElevation(point[1]);
    }
    return new HorizonMask(floorDeg, sorted);
  }

  private static void requireElevation(double elevationDeg) {
    if (!(elevationDeg >= -90 && elevationDeg <= 90)) {
      throw new IllegalArgumentException("elevation " + elevationDeg + " is outside [-90, 90]");
    }
  }

  /** Lowest elevation seen towards an azimuth, degrees. */
  public double elevationDegAt(double azimuthDegrees) {
    return points.isEmpty()
        ? floorDeg
        : Math.max(floorDeg, AzimuthTable.at(points, azimuthDegrees));
  }

  /** The lowest and the highest elevation anywhere on the skyline, degrees. */
  public double[] rangeDeg() {
    double low = points.stream().mapToDouble(point -> point[1]).min().orElse(floorDeg);
    double high = points.stream().mapToDouble(point -> point[1]).max().orElse(floorDeg);
    return new double[] {Math.max(floorDeg, low), Math.max(floorDeg, high)};
  }

  /** True when the skyline is the same all round. */
  public boolean isFlat() {
    double[] range = rangeDeg();
    return range[0] == range[1];
  }
}
