package hark.signal;

import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.station.Site;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Makes the demo's Doppler curve of the first contact: what Saltmere's decoder would have written
 * had object 97312 been the one. A program, not a test; {@code DemoCurveTest} holds the files in
 * the demo to what it makes.
 *
 * <p>Run {@code java -cp target/test-classes:target/classes:… hark.signal.DemoCurve} after a change
 * of the demo's orbits.
 */
public final class DemoCurve {
  static final Path FOLDER = Path.of("src/main/resources/hark/demo");
  static final String TRUTH = "97312";

  /** The frames the log tells of: one each 90 s from the first sound on. */
  private static final Instant FIRST = Instant.parse("2026-10-06T09:40:10.600Z");

  private static final int FRAMES = 5;
  private static final int INTERVAL_SECONDS = 90;

  /** As the station stands in the demo's mission. */
  private static final Site SALTMERE = new Site("Saltmere", 51.42, 4.87, 8);

  /** Half a second later than its elements, a clock 0.15 s ahead, 240 Hz over the nominal. */
  static final CurveSimulator.Setting SETTING =
      new CurveSimulator.Setting(0.6, 0.15, 436.73e6 + 240, -0.2, 60, INTERVAL_SECONDS);

  private static final String NOTE =
      "Invented data: frequencies of the frames that Saltmere decoded in the first contact.";

  private DemoCurve() {}

  static List<DopplerPoint> points(long seed) throws IOException {
    String text = Files.readString(FOLDER.resolve("orbit/launch-731.tle"));
    ElementSet truth =
        ElementSets.inForce(ElementSets.parse("demo", text), FIRST).stream()
            .filter(set -> set.objectId().equals(TRUTH))
            .findFirst()
            .orElseThrow();
    CurveSimulator simulator = new CurveSimulator(truth);
    SplittableRandom random = new SplittableRandom(seed);
    double middle = INTERVAL_SECONDS * (FRAMES - 1) / 2.0;
    DopplerPoint[] points = new DopplerPoint[FRAMES];
    for (int i = 0; i < FRAMES; i++) {
      Instant sent = FIRST.plusSeconds((long) i * INTERVAL_SECONDS);
      double clean = simulator.frequencyHz(SALTMERE, sent, i * INTERVAL_SECONDS - middle, SETTING);
      double hertz = clean + SETTING.noiseHz() * CurveSimulator.gaussian(random);
      Instant written = sent.plusMillis(Math.round(1000 * SETTING.clockSeconds()));
      points[i] = new DopplerPoint(written, Math.rint(hertz), 60);
    }
    return List.of(points);
  }

  static String csv(List<DopplerPoint> points) {
    StringBuilder text = new StringBuilder("# " + NOTE + "\n# Times are of the station's clock.\n");
    text.append("time,frequencyHz,sigmaHz,station\n");
    for (DopplerPoint point : points) {
      text.append(
          String.format(
              Locale.ROOT,
              "%s,%.0f,%.0f,Saltmere%n",
              point.time(),
              point.frequencyHz(),
              point.sigmaHz()));
    }
    return text.toString();
  }

  static String tdm(List<DopplerPoint> points) {
    StringBuilder text = new StringBuilder();
    text.append("CCSDS_TDM_VERS = 2.0\n")
        .append("COMMENT ")
        .append(NOTE)
        .append('\n')
        .append("CREATION_DATE = 2026-10-06T10:05:00\n")
        .append("ORIGINATOR = SALTMERE\n")
        .append("META_START\n")
        .append("TIME_SYSTEM = UTC\n")
        .append("PARTICIPANT_1 = Corncrake\n")
        .append("PARTICIPANT_2 = Saltmere\n")
        .append("MODE = SEQUENTIAL\n")
        .append("PATH = 1,2\n")
        .append("META_STOP\n")
        .append("DATA_START\n");
    for (DopplerPoint point : points) {
      String time = point.time().truncatedTo(ChronoUnit.MILLIS).toString().replace("Z", "");
      text.append(
          String.format(Locale.ROOT, "RECEIVE_FREQ_2 = %s %.0f%n", time, point.frequencyHz()));
    }
    return text.append("DATA_STOP\n").toString();
  }

  /** The seed of the files. */
  static final long SEED = 97312;

  /** Writes both files into the demo. */
  public static void main(String[] args) throws IOException {
    List<DopplerPoint> points = points(SEED);
    Path folder = Files.createDirectories(FOLDER.resolve("recordings"));
    Files.writeString(folder.resolve("first-contact.csv"), csv(points));
    Files.writeString(folder.resolve("first-contact.tdm"), tdm(points));
  }
}
