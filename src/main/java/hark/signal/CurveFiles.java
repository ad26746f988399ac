package hark.signal;

import hark.orbit.EarthModel;
import hark.orbit.TrackingData;
import hark.problem.BadInput;
import hark.problem.NearestWord;
import hark.problem.Problem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads Doppler curves: CCSDS tracking data messages (KVN, XML) and CSV with the columns {@code
 * time, frequencyHz} and, if wanted, {@code sigmaHz} and {@code station}. The form is recognised by
 * content.
 */
public final class CurveFiles {
  private CurveFiles() {}

  /**
   * What the reader must know.
   *
   * @param stations of the mission, by name
   * @param station of a file that names none; empty when nobody said
   * @param nominalHz of the beacon; curves far from it are refused
   */
  public record Setting(
      List<String> stations, String station, double nominalHz, EarthModel earth) {}

  /**
   * All curves of a file, one for each pass and station.
   *
   * @param fileName only for messages
   * @throws BadInput with every problem of the file
   */
  public static List<DopplerCurve> parse(String fileName, String text, Setting setting) {
    List<DopplerCurve> curves =
        TrackingData.isIn(text)
            ? tracked(fileName, text, setting)
            : CurveCsv.parse(fileName, text, setting);
    List<DopplerCurve> passes = curves.stream().flatMap(curve -> curve.passes().stream()).toList();
    passes.forEach(pass -> refuseStrange(pass, setting.nominalHz()));
    return passes;
  }

  private static List<DopplerCurve> tracked(String fileName, String text, Setting setting) {
    List<DopplerCurve> curves = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (TrackingData.Block block : TrackingData.parse(fileName, text, setting.earth())) {
      String station =
          block.participants().stream()
              .filter(name -> setting.stations().contains(name))
              .findFirst()
              .orElse(setting.station());
      if (station.isEmpty()) {
        problems.add(
            new Problem(
                "none of "
                    + String.join(", ", block.participants())
                    + " is a station of the mission",
                fileName,
                "name one of "
                    + String.join(", ", setting.stations())
                    + " as a participant, or give --station"));
        continue;
      }
      List<DopplerPoint> points =
          block.points().stream()
              .map(point -> new DopplerPoint(point.time(), point.frequencyHz(), Double.NaN))
              .toList();
      curves.add(new DopplerCurve(station, points, fileName));
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    return curves;
  }

  /** The station a curve belongs to, or a problem that says how to name it. */
  static String station(String named, Setting setting, String where, List<Problem> problems) {
    String station = named.isEmpty() ? setting.station() : named;
    if (station.isEmpty()) {
      problems.add(
          new Problem(
              "the file does not say which station measured it",
              where,
              "give --station NAME or a column station"));
    } else if (!setting.stations().contains(station)) {
      problems.add(
          new Problem(
              "no station is called " + station,
              where,
              NearestWord.advice(station, setting.stations())));
    }
    return station;
  }

  /** Without an exponent: people compare digits. */
  private static String plain(double hertz) {
    return BigDecimal.valueOf(hertz).stripTrailingZeros().toPlainString();
  }

  private static void refuseStrange(DopplerCurve curve, double nominalHz) {
    double[] sorted =
        curve.points().stream().mapToDouble(DopplerPoint::frequencyHz).sorted().toArray();
    double middle = sorted[sorted.length / 2];
    double ratio = middle / nominalHz;
    if (Math.abs(ratio - 1) < 1e-3) {
      return;
    }
    String mend = "give the received frequency in Hz, Doppler included";
    if (Math.abs(ratio * 1e3 - 1) < 1e-2) {
      mend = "this looks like kHz: multiply by 1000";
    } else if (Math.abs(ratio * 1e6 - 1) < 1e-2) {
      mend = "this looks like MHz: multiply by 1000000";
    } else if (middle < 1e5) {
      mend = "this looks like an offset: add the frequency the receiver was tuned to";
    }
    throw BadInput.of(
        "its middle frequency is "
            + plain(middle)
            + " Hz, the beacon sends at "
            + plain(nominalHz)
            + " Hz",
        curve.origin(),
        mend);
  }
}
