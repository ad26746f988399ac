package hark.mission;

import java.util.ArrayList;
import java.util.List;

/** Reads bands of frequency. */
final class Bands {
  private Bands() {}

  /** Rows of lowest and highest frequency, MHz. */
  static List<double[]> read(YamlTree node, Reading reading) {
    List<double[]> bands = new ArrayList<>();
    for (YamlTree row : YamlValues.list(node, reading.problems)) {
      YamlValues.numbers(row, 2, reading.problems).ifPresent(b -> addBand(row, b, bands, reading));
    }
    return bands;
  }

  private static void addBand(YamlTree row, double[] band, List<double[]> bands, Reading reading) {
    for (double edge : band) {
      if (!Spans.FREQUENCY_MHZ.holds(edge)) {
        reading.problems.add(
            row,
            YamlValues.outside(edge, Spans.FREQUENCY_MHZ),
            YamlValues.mend(edge, Spans.FREQUENCY_MHZ));
        return;
      }
    }
    if (!(band[0] < band[1])) {
      reading.problems.add(
          row, "the band's lower edge is not below the upper", "write [low, high]");
    }
    bands.add(band);
  }
}
