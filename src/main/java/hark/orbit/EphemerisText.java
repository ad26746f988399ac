package hark.orbit;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** Writes rows of states as CCSDS OEM in lines KEY = VALUE (CCSDS 502.0-B-3, section 5). */
public final class EphemerisText {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSSSS", Locale.ROOT);

  private EphemerisText() {}

  /** A state at a time. */
  public record Row(Instant time, State state) {}

  /**
   * The rows of one object.
   *
   * @param name for people
   * @param frame {@code TEME} or {@code ITRF2020}
   * @param rows in the order of time, at least one
   */
  public record Segment(String objectId, String name, String frame, List<Row> rows) {
    /** Refuses a segment without rows. */
    public Segment {
      rows = List.copyOf(rows);
      if (rows.isEmpty()) {
        throw new IllegalArgumentException("no rows for " + objectId);
      }
    }
  }

  /**
   * One message with a segment for each object.
   *
   * @param created when the message is written
   */
  public static String oem(List<Segment> segments, Instant created) {
    StringBuilder text = new StringBuilder();
    text.append("CCSDS_OEM_VERS = 2.0\n");
    text.append("CREATION_DATE = ").append(time(created)).append('\n');
    text.append("ORIGINATOR = HARK\n");
    segments.forEach(segment -> append(text, segment));
    return text.toString();
  }

  private static void append(StringBuilder text, Segment segment) {
    List<Row> rows = segment.rows();
    text.append("\nMETA_START\n");
    text.append("OBJECT_NAME = ").append(segment.name()).append('\n');
    text.append("OBJECT_ID = ").append(segment.objectId()).append('\n');
    text.append("CENTER_NAME = EARTH\n");
    text.append("REF_FRAME = ").append(segment.frame()).append('\n');
    text.append("TIME_SYSTEM = UTC\n");
    text.append("START_TIME = ").append(time(rows.get(0).time())).append('\n');
    text.append("STOP_TIME = ").append(time(rows.get(rows.size() - 1).time())).append('\n');
    text.append("META_STOP\n");
    for (Row row : rows) {
      State s = row.state();
      text.append(
          String.format(
              Locale.ROOT,
              "%s %.6f %.6f %.6f %.9f %.9f %.9f\n",
              time(row.time()),
              s.xMeters() / 1000,
              s.yMeters() / 1000,
              s.zMeters() / 1000,
              s.vxMetersPerSecond() / 1000,
              s.vyMetersPerSecond() / 1000,
              s.vzMetersPerSecond() / 1000));
    }
  }

  private static String time(Instant instant) {
    return TIME.format(LocalDateTime.ofInstant(instant, ZoneOffset.UTC));
  }
}
