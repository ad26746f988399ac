package hark.mission;

import hark.ensemble.Uncertain;
import hark.power.Face;
import hark.power.PowerModel.Arrays;
import hark.power.PowerModel.CellNature;
import java.util.List;

/** Reads {@code spacecraft.solar}: cells and faces; the charger's part is {@link ChargerReader}. */
final class SolarReader {
  /** Best cell of any kind is below one half (record cells, concentrated light). */
  private static final Span CELL_EFFICIENCY =
      Span.of(0.01, 0.5).usually(0.1, 0.36).orIn("percent", 0.01);

  private static final Span LOSSES = Span.of(0, 0.95).usually(0, 0.5).orIn("percent", 0.01);
  private static final Span PER_KELVIN =
      Span.of(-0.02, 0.005).usually(-0.006, 0).orIn("percent per kelvin", 0.01);
  private static final Span LOSS_PER_YEAR = Span.of(0, 1).usually(0, 0.2).orIn("percent", 0.01);

  /** Triple-junction cells between 28 and 80 °C, share of their power, 1/K. Common practice. */
  private static final double TRIPLE_JUNCTION_PER_KELVIN = -0.0022;

  /** Radiation and darkened cover glass in a low orbit, share of power a year. Common practice. */
  private static final double USUAL_LOSS_PER_YEAR = 0.02;

  private SolarReader() {}

  /** Both halves of the section; the charger waits for the battery. */
  record Solar(Arrays arrays, ChargerReader.Draft charger) {}

  static Solar read(Section solar, Reading reading) {
    double efficiency = solar.number("cell_efficiency", CELL_EFFICIENCY);
    double losses = solar.number("losses", LOSSES, new Uncertain.Normal(0.08, 0.03));
    double wiring = solar.number("wiring_losses", LOSSES, 0);
    CellNature nature =
        new CellNature(
            solar.number("temperature_coefficient_per_K", PER_KELVIN, TRIPLE_JUNCTION_PER_KELVIN),
            solar.number("loss_per_year", LOSS_PER_YEAR, USUAL_LOSS_PER_YEAR),
            solar.bool("albedo", false));
    List<Face> faces = solar.parts("faces", face -> FaceReader.read(face, reading));
    solar.requireDistinct("faces", faces.stream().map(Face::name).toList(), "face");
    List<Face> lit = FaceReader.shadesAmong(solar, faces, reading);
    ChargerReader.Draft charger =
        solar
            .part("charging", c -> ChargerReader.read(c, reading))
            .orElse(ChargerReader.Draft.NONE);
    return new Solar(new Arrays(efficiency, losses + (1 - losses) * wiring, lit, nature), charger);
  }
}
