package hark.mission;

import hark.power.Face;
import hark.power.Face.Shade;
import hark.problem.NearestWord;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code spacecraft.solar.faces}: where cells look, stowed too, and what shades them. */
final class FaceReader {
  private static final Span CELL_AREA_CM2 = Span.of(0, 50_000).usually(0, 8_000).orIn("mm²", 0.01);
  private static final double SQUARE_METERS_PER_CM2 = 1e-4;
  private static final String COVERED = "covered";

  private FaceReader() {}

  static Face read(Section face, Reading reading) {
    String name = face.text("name");
    double[] normal =
        direction(face.required("normal"), reading.problems).orElse(new double[] {1, 0, 0});
    double area = area(face, reading);
    boolean deployed = face.bool("deployed", false);
    Optional<double[]> stowed = stowed(face, deployed, reading);
    String string = face.text("string", "A");
    List<Shade> shades = face.partsIfWritten("shaded_by", FaceReader::shade);
    return new Face(name, normal, area * SQUARE_METERS_PER_CM2, deployed, string, stowed, shades);
  }

  private static double area(Section face, Reading reading) {
    double area = face.number("cell_area_cm2", CELL_AREA_CM2);
    if (area > 0 && area < 0.1) {
      reading.warn(
          face.at("cell_area_cm2"),
          Span.print(area) + " cm² of cells is very little",
          "written in m²? The key would then want " + Span.print(area * 1e4));
    }
    return area;
  }

  private static Optional<double[]> direction(YamlTree node, Problems problems) {
    Optional<double[]> read = YamlValues.numbers(node, 3, problems);
    if (read.filter(n -> Math.hypot(Math.hypot(n[0], n[1]), n[2]) < 1e-9).isPresent()) {
      problems.add(
          node,
          "the normal has no length, expected a direction",
          "write the outward direction in body axes, such as [0, 0, 1]");
      return Optional.empty();
    }
    return read;
  }

  /** Where a folded panel's cells look; empty when they are covered. */
  private static Optional<double[]> stowed(Section face, boolean deployed, Reading reading) {
    YamlTree node = face.at("stowed");
    if (!deployed) {
      if (!node.isNothing()) {
        reading.problems.add(
            node,
            "a face that is not deployed is never stowed",
            "write deployed: true for a panel that unfolds, or take stowed away");
      }
      return Optional.empty();
    }
    if (node.isNothing()) {
      face.noteDefault(node, COVERED);
      return Optional.empty();
    }
    if (node.kind() == YamlTree.Kind.TEXT) {
      if (!node.text().equals(COVERED)) {
        reading.problems.add(
            node,
            "found " + node.found() + ", expected covered or a direction",
            "write covered, or where the folded panel's cells look, such as [1, 0, 0]");
      }
      return Optional.empty();
    }
    return direction(node, reading.problems);
  }

  private static Shade shade(Section shade) {
    return new Shade(shade.text("panel"), shade.number("share", Spans.FRACTION));
  }

  /** The faces without shades by faces that are not there, each of which is a problem. */
  static List<Face> shadesAmong(Section solar, List<Face> faces, Reading reading) {
    List<String> names = faces.stream().map(Face::name).toList();
    List<YamlTree> nodes = solar.at("faces").items();
    List<Face> fitting = new ArrayList<>();
    for (int i = 0; i < faces.size(); i++) {
      Face face = faces.get(i);
      List<Shade> known = face.shades().stream().filter(s -> mayShade(s, face, names)).toList();
      if (reading.isFirst() && i < nodes.size() && known.size() < face.shades().size()) {
        tellStrangers(nodes.get(i), face, names, reading.problems);
      }
      fitting.add(
          new Face(
              face.name(),
              face.normal(),
              face.cellAreaSquareMeters(),
              face.deployed(),
              face.string(),
              face.stowedNormal(),
              known));
    }
    return fitting;
  }

  private static boolean mayShade(Shade shade, Face face, List<String> names) {
    return names.contains(shade.panel()) && !shade.panel().equals(face.name());
  }

  private static void tellStrangers(
      YamlTree node, Face face, List<String> names, Problems problems) {
    for (YamlTree item : MissionSense.deep(node, "shaded_by").items()) {
      YamlTree panel = MissionSense.deep(item, "panel");
      if (panel.text().equals(face.name())) {
        problems.add(panel, "a face does not stand in its own light", "name the panel that does");
      } else if (!panel.text().isEmpty() && !names.contains(panel.text())) {
        problems.add(
            panel,
            "'" + panel.text() + "' is no face of this spacecraft",
            NearestWord.advice(panel.text(), names));
      }
    }
  }
}
