package hark.orbit;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads one pair of TLE lines by their columns and says everything that is wrong with them. Columns
 * are counted from 1, as in the format's description (CelesTrak, <i>NORAD Two-Line Element Set
 * Format</i>).
 */
final class TleLines {
  /** Characters of a line, checksum included; what follows is ignored. */
  static final int LENGTH = 69;

  private static final String COPY = "copy the two lines again from the source";
  private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)");
  private static final Pattern ID = Pattern.compile("[0-9A-HJ-NP-Z]?\\d{1,4}");
  private static final Pattern EXPONENT = Pattern.compile("([+-]?)(\\d{1,5})([+-]\\d)");
  private static final long NANOS_A_DAY = 86_400_000_000_000L;

  private final Source source;
  private final String line1;
  private final String line2;
  private final ElementProblems problems;

  /** Where the first line stands. */
  record Source(String fileName, int line) {}

  TleLines(Source source, String line1, String line2, ElementProblems problems) {
    this.source = source;
    this.line1 = line1;
    this.line2 = line2;
    this.problems = problems;
  }

  Optional<ElementSet> read(Optional<String> name) {
    int before = problems.count();
    boolean firstWhole = isWhole(1, line1);
    boolean secondWhole = isWhole(2, line2);
    if (!firstWhole || !secondWhole) {
      return Optional.empty();
    }
    String id = objectId(1, line1);
    if (!id.equals(objectId(2, line2))) {
      problem(2, "the object is " + objectId(2, line2) + " in TLE line 2 and " + id + " in line 1");
    }
    Instant epoch = epoch();
    ElementSet.Mean mean = mean();
    return problems.count() > before
        ? Optional.empty()
        : Optional.of(
            new ElementSet(id, name, epoch, mean, source.fileName() + ":" + source.line()));
  }

  private boolean isWhole(int number, String line) {
    if (line.length() < LENGTH) {
      problem(
          number, "TLE line " + number + " has " + line.length() + " characters, not " + LENGTH);
      return false;
    }
    int sum = 0;
    for (int i = 0; i < LENGTH - 1; i++) {
      char c = line.charAt(i);
      sum += c >= '0' && c <= '9' ? c - '0' : c == '-' ? 1 : 0;
    }
    char found = line.charAt(LENGTH - 1);
    if (found != '0' + sum % 10) {
      problem(number, "TLE line " + number + " checksum is " + found + ", computed " + sum % 10);
    }
    return true;
  }

  private String objectId(int number, String line) {
    String id = line.substring(2, 7).strip();
    if (!ID.matcher(id).matches()) {
      problem(number, "the object number '" + id + "' in TLE line " + number + " is not a number");
    }
    return "0".repeat(Math.max(0, 5 - id.length())) + id;
  }

  private Instant epoch() {
    String year = line1.substring(18, 20).strip();
    String day = line1.substring(20, 32).strip();
    if (!year.matches("\\d{1,2}") || !NUMBER.matcher(day).matches()) {
      problem(1, "the epoch '" + line1.substring(18, 32) + "' is not a date");
      return Instant.EPOCH;
    }
    int twoDigits = Integer.parseInt(year);
    LocalDate newYear = LocalDate.of(twoDigits < 57 ? 2000 + twoDigits : 1900 + twoDigits, 1, 1);
    double days = Double.parseDouble(day);
    if (!(days >= 1 && days < newYear.lengthOfYear() + 1)) {
      problem(1, "day " + day + " of the epoch is not in the year " + newYear.getYear());
      return Instant.EPOCH;
    }
    long whole = (long) days;
    // eight decimals of a day are whole numbers of nanoseconds
    long nanos = Math.round((days - whole) * 1e8) * (NANOS_A_DAY / 100_000_000L);
    return newYear.plusDays(whole - 1).atStartOfDay(ZoneOffset.UTC).toInstant().plusNanos(nanos);
  }

  private ElementSet.Mean mean() {
    return new ElementSet.Mean(
        number(2, 53, 63, "mean motion", new double[] {1e-9, 20}),
        eccentricity(),
        number(2, 9, 16, "inclination", new double[] {0, 180}),
        number(2, 18, 25, "node", new double[] {0, 360}),
        number(2, 35, 42, "argument of perigee", new double[] {0, 360}),
        number(2, 44, 51, "mean anomaly", new double[] {0, 360}),
        exponent(54, 61, "drag term"),
        number(1, 34, 43, "mean motion derivative", new double[] {-1, 1}),
        exponent(45, 52, "second mean motion derivative"));
  }

  private double eccentricity() {
    String text = line2.substring(26, 33).replace(' ', '0');
    if (!text.matches("\\d{7}")) {
      problem(2, "the eccentricity '" + line2.substring(26, 33) + "' is not a number");
      return 0;
    }
    return Integer.parseInt(text) * 1e-7;
  }

  private double number(int line, int firstColumn, int lastColumn, String what, double[] range) {
    String text = (line == 1 ? line1 : line2).substring(firstColumn - 1, lastColumn).strip();
    if (!NUMBER.matcher(text).matches()) {
      problem(line, "the " + what + " '" + text + "' is not a number");
      return 0;
    }
    double value = Double.parseDouble(text);
    if (!(value >= range[0] && value <= range[1])) {
      problem(line, "the " + what + " " + text + " is outside " + range[0] + "…" + range[1]);
    }
    return value;
  }

  /** Fields written like {@code -11606-4}, with the point before the digits understood. */
  private double exponent(int firstColumn, int lastColumn, String what) {
    String text = line1.substring(firstColumn - 1, lastColumn).strip();
    if (text.isEmpty()) {
      return 0;
    }
    var parts = EXPONENT.matcher(text);
    if (!parts.matches()) {
      problem(1, "the " + what + " '" + text + "' is not a number");
      return 0;
    }
    return Double.parseDouble(parts.group(1) + "." + parts.group(2) + "e" + parts.group(3));
  }

  private void problem(int lineNumber, String what) {
    problems.add(source.line() + lineNumber - 1, what, COPY);
  }
}
