package hark.orbit;

/**
 * What the air acts on, for states that are propagated numerically.
 *
 * @param massKg mass
 * @param areaSquareMeters mean cross section
 * @param dragCoefficient 2.2 is usual in free molecular flow
 * @param factor one standard deviation of the air's pull (density, area and coefficient together),
 *     as a factor
 */
public record DragBody(
    double massKg, double areaSquareMeters, double dragCoefficient, double factor) {
  /** Common practice for compact bodies in free molecular flow. */
  public static final double USUAL_COEFFICIENT = 2.2;

  /**
   * Density by a table for mean activity of the Sun is off by half in ordinary times, and a
   * tumbling body's area is a guess. Judged.
   */
  public static final double USUAL_FACTOR = 1.5;

  /** A small satellite of which nothing is said: 100 kg on a square metre. Judged. */
  public static final DragBody USUAL = of(1, 0.01);

  /** Refuses what is not a body. */
  public DragBody {
    if (!(massKg > 0 && areaSquareMeters >= 0 && dragCoefficient >= 0 && factor >= 1)) {
      throw new IllegalArgumentException(
          massKg + " kg, " + areaSquareMeters + " m², " + dragCoefficient + ", factor " + factor);
    }
  }

  /** With the usual coefficient and factor. */
  public static DragBody of(double massKg, double areaSquareMeters) {
    return new DragBody(massKg, areaSquareMeters, USUAL_COEFFICIENT, USUAL_FACTOR);
  }

  /** The same body pulled more. */
  DragBody pulled(double times) {
    return new DragBody(massKg, areaSquareMeters, dragCoefficient * times, factor);
  }

  /** Drag term as element sets have it, 1 / Earth radii (Spacetrack Report No. 3: ρ₀ C A / 2m). */
  double bstar() {
    double kilogramsOnSquareMeter = massKg / Math.max(1e-9, dragCoefficient * areaSquareMeters);
    return 1 / (12.741621 * kilogramsOnSquareMeter);
  }
}
