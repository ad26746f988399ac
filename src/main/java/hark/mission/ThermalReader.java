package hark.mission;

import hark.power.PowerModel.Thermal;

/**
 * Reads {@code spacecraft.thermal}. All of it may be left out: the defaults follow from mass, mean
 * area and the number of cells.
 */
final class ThermalReader {
  private static final Span JOULE_PER_KELVIN = Span.of(1, 1e6);
  private static final Span AREA_M2 = Span.of(0.001, 50).usually(0.005, 10).orIn("cm²", 1e-4);
  private static final Span WATTS_PER_KELVIN = Span.of(0.0001, 100);

  /** Aluminium structure with boards, J/(kg·K); common practice. */
  private static final double SPECIFIC_HEAT = 800;

  /** A convex body's surface is four times its mean projected area (Cauchy). */
  private static final double SURFACE_PER_MEAN_AREA = 4;

  /** A cell of 18650 size: about 45 g at about 1 J/(g·K); common practice. */
  private static final double JOULE_PER_KELVIN_AND_CELL = 45;

  private ThermalReader() {}

  /** What the defaults follow from. */
  record Size(double massKg, double areaSquareMeters, int cells) {}

  static Thermal read(Section thermal, Size size) {
    Structure structure = thermal.partOrDefaults("structure", s -> structure(s, size));
    double[] battery =
        thermal.partOrDefaults(
            "battery",
            b ->
                new double[] {
                  b.number(
                      "heat_capacity_J_K",
                      JOULE_PER_KELVIN,
                      JOULE_PER_KELVIN_AND_CELL * size.cells()),
                  b.number("coupling_W_K", WATTS_PER_KELVIN, 0.15)
                });
    return new Thermal(
        structure.joulePerKelvin(),
        structure.areaSquareMeters(),
        structure.absorptivity(),
        structure.emissivity(),
        battery[0],
        battery[1]);
  }

  private record Structure(
      double joulePerKelvin, double areaSquareMeters, double absorptivity, double emissivity) {}

  private static Structure structure(Section structure, Size size) {
    return new Structure(
        structure.number("heat_capacity_J_K", JOULE_PER_KELVIN, SPECIFIC_HEAT * size.massKg()),
        structure.number("area_m2", AREA_M2, SURFACE_PER_MEAN_AREA * size.areaSquareMeters()),
        structure.number("absorptivity", Spans.FRACTION, 0.7),
        structure.number("emissivity", Span.of(0.01, 1).orIn("percent", 0.01), 0.8));
  }
}
