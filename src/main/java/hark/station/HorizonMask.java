package hark.station;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A skyline: elevation by azimuth, linear between points, wrapping at north, floored by a least
 * elevation.
 */
public final class HorizonMask {
  private static final double FULL_CIRCLE = 360;

  private final double floorDeg;
  private final double[] azimuthDeg;
  private final double[] elevationDeg;

  private HorizonMask(double floorDeg, double[] azimuthDeg, double[] elevationDeg) {
    this.floorDeg = floorDeg;
    this.azimuthDeg = azimuthDeg;
    this.elevationDeg = elevationDeg;
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
    double[][] sorted = points.stream().map(double[]::clone).toArray(double[][]::new);
    for (double[] point : sorted) {
      if (!(point[0] >= 0 && point[0] <= FULL_CIRCLE)) {
        throw new IllegalArgumentException("azimuth " + point[0] + " is outside [0, 360]");
      }
      requireElevation(point[1]);
    }
    Arrays.sort(sorted, Comparator.comparingDouble(point -> point[0]));
    return new HorizonMask(
        floorDeg,
        Arrays.stream(sorted).mapToDouble(point -> point[0]).toArray(),
        Arrays.stream(sorted).mapToDouble(point -> point[1]).toArray());
  }

  private static void requireElevation(double elevationDeg) {
    if (!(elevationDeg >= -90 && elevationDeg <= 90)) {
      throw new IllegalArgumentException("elevation " + elevationDeg + " is outside [-90, 90]");
    }
  }

  /** Lowest elevation seen towards an azimuth, degrees. */
  public double elevationDegAt(double azimuthDegrees) {
    int count = azimuthDeg.length;
    if (count == 0) {
      return floorDeg;
    }
    double azimuth = azimuthDegrees - FULL_CIRCLE * Math.floor(azimuthDegrees / FULL_CIRCLE);
    int after = 0;
    while (after < count && azimuthDeg[after] <= azimuth) {
      after++;
    }
    int low = (after + count - 1) % count;
    int high = after % count;
    double span = azimuthDeg[high] - azimuthDeg[low];
    double run = azimuth - azimuthDeg[low];
    span = span <= 0 ? span + FULL_CIRCLE : span;
    run = run < 0 ? run + FULL_CIRCLE : run;
    double value = elevationDeg[low] + (elevationDeg[high] - elevationDeg[low]) * run / span;
    return Math.max(floorDeg, value);
  }

  /** The lowest and the highest elevation anywhere on the skyline, degrees. */
  public double[] rangeDeg() {
    double low = floorDeg;
    double high = floorDeg;
    if (elevationDeg.length > 0) {
      low = Math.max(floorDeg, Arrays.stream(elevationDeg).min().orElseThrow());
      high = Math.max(floorDeg, Arrays.stream(elevationDeg).max().orElseThrow());
    }
    return new double[] {low, high};
  }

  /** True when the skyline is the same all round. */
  public boolean isFlat() {
    double[] range = rangeDeg();
    return range[0] == range[1];
  }
}
