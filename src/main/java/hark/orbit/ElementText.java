package hark.orbit;

import hark.problem.BadInput;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/**
 * Writes element sets: two lines (format of Spacetrack Report No. 3) and OMM as KVN (CCSDS
 * 502.0-B-3, section 4).
 */
public final class ElementText {
  private static final DateTimeFormatter EPOCH =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSSSS", Locale.ROOT);

  private ElementText() {}

  /**
   * Two lines, each ended by a line feed. Numbers are rounded to the places the format has: the
   * epoch to 0.9 ms, angles to 0.0001°.
   *
   * @throws BadInput when the catalogue number has more than the five places of the format
   */
  public static String twoLines(ElementSet set) {
    if (set.objectId().length() > 5) {
      throw BadInput.of(
          "catalogue number " + set.objectId() + " does not fit the two-line format",
          set.origin(),
          "write an OMM instead");
    }
    String first =
        String.format(
            Locale.ROOT,
            "1 %5sU          %s %s %s %s 0  999",
            set.objectId(),
            epoch(set.epoch()),
            dot(set.halfMeanMotionDot()),
            exponent(set.sixthMeanMotionDotDot()),
            exponent(set.bstar()));
    String second =
        String.format(
            Locale.ROOT,
            "2 %5s %8.4f %8.4f %07d %8.4f %8.4f %11.8f    1",
            set.objectId(),
            set.inclinationDeg(),
            set.raanDeg(),
            Math.round(set.eccentricity() * 1e7),
            set.perigeeArgumentDeg(),
            set.meanAnomalyDeg(),
            set.meanMotionRevPerDay());
    return first + checksum(first) + "\n" + second + checksum(second) + "\n";
  }

  private static String epoch(Instant time) {
    LocalDateTime utc = LocalDateTime.ofInstant(time, ZoneOffset.UTC);
    long nanos = ChronoUnit.NANOS.between(utc.toLocalDate().atStartOfDay(), utc);
    double day = utc.getDayOfYear() + nanos / 86400e9;
    return String.format(Locale.ROOT, "%02d%012.8f", utc.getYear() % 100, day);
  }

  private static String dot(double value) {
    String digits = String.format(Locale.ROOT, "%.8f", Math.abs(value)).substring(1);
    return (value < 0 ? "-" : " ") + digits;
  }

  /** Five digits after an understood point and a power of ten, such as {@code " 30000-4"}. */
  private static String exponent(double value) {
    if (value == 0) {
      return " 00000-0";
    }
    int power = (int) Math.floor(Math.log10(Math.abs(value))) + 1;
    long digits = Math.round(Math.abs(value) / Math.pow(10, power) * 1e5);
    if (digits >= 100_000) {
      digits /= 10;
      power++;
    }
    char sign = value < 0 ? '-' : ' ';
    return String.format(
        Locale.ROOT, "%c%05d%c%d", sign, digits, power > 0 ? '+' : '-', Math.abs(power));
  }

  private static int checksum(String line) {
    int sum = 0;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      sum += Character.isDigit(c) ? c - '0' : c == '-' ? 1 : 0;
    }
    return sum % 10;
  }

  /**
   * An OMM.
   *
   * @param created when the message is written
   * @param remark one line for people; empty for none
   */
  public static String omm(ElementSet set, Instant created, String remark) {
    StringBuilder text = new StringBuilder();
    line(text, "CCSDS_OMM_VERS", "3.0");
    if (!remark.isEmpty()) {
      text.append("COMMENT ").append(remark).append('\n');
    }
    line(text, "CREATION_DATE", time(created));
    line(text, "ORIGINATOR", "HARK");
    OmmText.fields(set).forEach((key, value) -> line(text, key, value));
    return text.toString();
  }

  private static String time(Instant instant) {
    return EPOCH.format(LocalDateTime.ofInstant(instant, ZoneOffset.UTC));
  }

  private static void line(StringBuilder text, String key, String value) {
    text.append(String.format(Locale.ROOT, "%-20s= %s%n", key, value).replace("\r\n", "\n"));
  }
}
