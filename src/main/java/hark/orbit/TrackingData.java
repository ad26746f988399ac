package hark.orbit;

import hark.problem.BadInput;
import hark.problem.Problem;
import java.io.StringReader;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.orekit.data.DataSource;
import org.orekit.errors.OrekitException;
import org.orekit.files.ccsds.ndm.ParserBuilder;
import org.orekit.files.ccsds.ndm.tdm.Observation;
import org.orekit.files.ccsds.ndm.tdm.ObservationsBlock;
import org.orekit.files.ccsds.ndm.tdm.Tdm;
import org.orekit.files.ccsds.ndm.tdm.TdmMetadata;
import org.orekit.files.ccsds.section.Segment;

/**
 * Reads received frequencies from CCSDS tracking data messages, KVN or XML (CCSDS 503.0-B,
 * <i>Tracking Data Message</i>; observations {@code RECEIVE_FREQ}, in Hz, to which {@code
 * FREQ_OFFSET} is added).
 */
public final class TrackingData {
  private static final int MOST_POINTS = 100_000;

  private final String fileName;
  private final EarthModel earth;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Block> blocks = new ArrayList<>();

  private TrackingData(String fileName, EarthModel earth) {
    this.fileName = fileName;
    this.earth = earth;
  }

  /** One received frequency. */
  public record Received(Instant time, double frequencyHz) {}

  /**
   * One segment of a message.
   *
   * @param participants as the message names them
   * @param points in the order of time
   */
  public record Block(List<String> participants, List<Received> points) {}

  /** True when a text begins like a tracking data message. */
  public static boolean isIn(String text) {
    String start = text.substring(0, Math.min(4096, text.length()));
    return start.contains("CCSDS_TDM_VERS") || start.contains("<tdm");
  }

  /**
   * Reads all segments that hold received frequencies.
   *
   * @param fileName only for messages
   * @throws BadInput with every problem of the message
   */
  public static List<Block> parse(String fileName, String text, EarthModel earth) {
    MessageText.refuseDanger(fileName, text, "keep one pass a file");
    if (!text.contains("PARTICIPANT_1") || !text.contains("PARTICIPANT_2")) {
      throw BadInput.of(
          "the message does not name its participants",
          fileName,
          "name the spacecraft and the station as PARTICIPANT_1 and PARTICIPANT_2");
    }
    return new TrackingData(fileName, earth).read(text);
  }

  private List<Block> read(String text) {
    Tdm message;
    try {
      DataSource source = new DataSource(fileName, () -> new StringReader(text));
      message = new ParserBuilder(new MessageContext(earth)).buildTdmParser().parseMessage(source);
    } catch (OrekitException e) {
      throw BadInput.of(
          "this tracking data message cannot be read: " + e.getMessage(),
          fileName,
          "compare it with CCSDS 503.0-B or export it again");
    }
    refuseMixedTimes(message);
    int number = 1;
    for (Segment<TdmMetadata, ObservationsBlock> segment : message.getSegments()) {
      add(number++, segment);
    }
    if (blocks.isEmpty() && problems.isEmpty()) {
      problem("the message holds no RECEIVE_FREQ", "a Doppler curve is a row of RECEIVE_FREQ");
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    return List.copyOf(blocks);
  }

  private void refuseMixedTimes(Tdm message) {
    Set<String> systems = new TreeSet<>();
    for (Segment<TdmMetadata, ObservationsBlock> segment : message.getSegments()) {
      systems.add(String.valueOf(segment.getMetadata().getTimeSystem()));
    }
    if (systems.size() > 1) {
      problem(
          "the segments use different time systems: " + String.join(", ", systems),
          "write all of them in UTC");
    }
  }

  private void add(int number, Segment<TdmMetadata, ObservationsBlock> segment) {
    List<Received> points = new ArrayList<>();
    double offset = segment.getMetadata().getFreqOffset();
    for (Observation observation : segment.getData().getObservations()) {
      if (observation.getType().name().startsWith("RECEIVE_FREQ")) {
        double hertz = observation.getMeasurement() + (Double.isNaN(offset) ? 0 : offset);
        points.add(new Received(observation.getEpoch().toInstant(earth.scales()), hertz));
      }
    }
    if (points.isEmpty()) {
      return;
    }
    List<String> names = List.copyOf(segment.getMetadata().getParticipants().values());
    if (names.size() < 2) {
      problem(
          "segment " + number + " names " + names.size() + " participant(s), not two",
          "name the spacecraft and the station as PARTICIPANT_1 and PARTICIPANT_2");
    }
    if (points.size() > MOST_POINTS) {
      problem(
          "segment " + number + " has " + points.size() + " points, the limit is " + MOST_POINTS,
          "thin them out");
    }
    points.sort(java.util.Comparator.comparing(Received::time));
    blocks.add(new Block(names, points));
  }

  private void problem(String what, String mend) {
    problems.add(new Problem(what, fileName, mend));
  }
}
