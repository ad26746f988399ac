package hark.mission;

import hark.ensemble.Uncertain;
import hark.power.Face;
import hark.power.PowerModel.Arrays;
import hark.power.PowerModel.Charging;
import hark.power.PowerModel.Scheme;
import java.util.List;

/** Reads {@code spacecraft.solar}: cells, faces and the charger. */
final class SolarReader {
  /** Best cell of any kind is below one half (record cells, concentrated light). */
  private static final Span CELL_EFFICIENCY =
      Span.of(0.01, 0.5).usually(0.1, 0.36).orIn("percent", 0.01);

  private static final Span LOSSES = Span.of(0, 0.95).usually(0, 0.5).orIn("percent", 0.01);
  private static final Span CHARGER = Span.of(0.05, 1).usually(0.5, 1).orIn("percent", 0.01);
  private static final Span CELL_AREA_CM2 = Span.of(0, 50_000).usually(0, 8_000).orIn("mm²", 0.01);
  private static final Span CHARGE_AMPS =
      Span.of(0.001, 200).usually(0.05, 50).orIn("milliamperes", 1e-3);
  private static final double SQUARE_METERS_PER_CM2 = 1e-4;

  private SolarReader() {}

  /** Both halves of the section. */
  record Solar(Arrays arrays, Charging charging) {}

  static Solar read(Section solar, Reading reading) {
    double efficiency = solar.number("cell_efficiency", CELL_EFFICIENCY);
    double losses = solar.number("losses", LOSSES, new Uncertain.Normal(0.08, 0.03));
    List<Face> faces = solar.parts("faces", face -> face(face, reading));
    solar.requireDistinct("faces", faces.stream().map(Face::name).toList(), "face");
    Charging charging =
        solar.part("charging", SolarReader::charging).orElse(new Charging(Scheme.CC_CV, 1, 1, 4.2));
    return new Solar(new Arrays(efficiency, losses, faces), charging);
  }

  private static Face face(Section face, Reading reading) {
    String name = face.text("name");
    double[] normal =
        YamlValues.numbers(face.required("normal"), 3, reading.problems)
            .orElse(new double[] {1, 0, 0});
    if (Math.hypot(Math.hypot(normal[0], normal[1]), normal[2]) < 1e-9) {
      reading.problems.add(
          face.at("normal"),
          "the normal has no length, expected a direction",
          "write the outward direction in body axes, such as [0, 0, 1]");
    }
    double area = face.number("cell_area_cm2", CELL_AREA_CM2);
    YamlTree written = face.at("cell_area_cm2");
    if (area > 0 && area < 0.1) {
      reading.warn(
          written,
          Span.print(area) + " cm² of cells is very little",
          "written in m²? The key would then want " + Span.print(area * 1e4));
    }
    return new Face(
        name,
        normal,
        area * SQUARE_METERS_PER_CM2,
        face.bool("deployed", false),
        face.text("string", "A"));
  }

  private static Charging charging(Section charging) {
    return new Charging(
        charging.choice("scheme", Scheme.class),
        charging.number("efficiency", CHARGER, new Uncertain.Normal(0.8, 0.06)),
        charging.number("max_current_A", CHARGE_AMPS),
        charging.number("charge_V", Spans.VOLTS));
  }
}
