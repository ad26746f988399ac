package hark.signal;

import hark.problem.BadInput;
import hark.problem.NearestWord;
import hark.problem.Problem;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads curves as CSV. A first line names the columns; lines that begin with # are comments. */
final class CurveCsv {
  private static final List<String> COLUMNS = List.of("time", "frequencyHz", "sigmaHz", "station");
  private static final int MOST_POINTS = 100_000;
  private static final int MOST_PROBLEMS = 50;

  private final String fileName;
  private final CurveFiles.Setting setting;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, List<DopplerPoint>> byStation = new LinkedHashMap<>();
  private List<String> header = List.of();

  private CurveCsv(String fileName, CurveFiles.Setting setting) {
    this.fileName = fileName;
    this.setting = setting;
  }

  static List<DopplerCurve> parse(String fileName, String text, CurveFiles.Setting setting) {
    return new CurveCsv(fileName, setting).read(text.lines().toList());
  }

  private List<DopplerCurve> read(List<String> lines) {
    int count = 0;
    for (int i = 0; i < lines.size() && problems.size() < MOST_PROBLEMS; i++) {
      String line = lines.get(i).strip();
      if (i == 0 && line.startsWith("\uFEFF")) {
        line = line.substring(1);
      }
      if (line.isEmpty() || line.startsWith("#")) {
        continue;
      }
      List<String> cells = List.of(line.split("\\s*,\\s*", -1));
      if (header.isEmpty()) {
        readHeader(i + 1, cells);
      } else {
        readRow(i + 1, cells);
        count++;
      }
    }
    if (header.isEmpty() || count == 0) {
      problem(1, "the file has no points", "write time,frequencyHz and below it one point a line");
    }
    if (count > MOST_POINTS) {
      problem(1, count + " points, the limit is " + MOST_POINTS, "thin them out");
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    List<DopplerCurve> curves = new ArrayList<>();
    byStation.forEach(
        (station, points) -> {
          points.sort(Comparator.comparing(DopplerPoint::time));
          curves.add(new DopplerCurve(station, points, fileName));
        });
    return curves;
  }

  private void readHeader(int line, List<String> cells) {
    header = cells;
    for (String cell : cells) {
      if (!COLUMNS.contains(cell)) {
        problem(line, "column '" + cell + "' is not known", NearestWord.advice(cell, COLUMNS));
      }
    }
    for (String needed : COLUMNS.subList(0, 2)) {
      if (!cells.contains(needed)) {
        problem(line, "column " + needed + " is missing", "begin with the line time,frequencyHz");
      }
    }
    if (!cells.contains("station")) {
      CurveFiles.station("", setting, fileName, problems);
    }
  }

  private void readRow(int line, List<String> cells) {
    if (cells.size() != header.size()) {
      problem(
          line, cells.size() + " cells, the first line names " + header.size(), "mend the line");
      return;
    }
    int before = problems.size();
    Instant time = time(line, cell(cells, "time"));
    double frequency = number(line, "frequencyHz", cell(cells, "frequencyHz"));
    String sigmaText = cell(cells, "sigmaHz");
    double sigma = sigmaText.isEmpty() ? Double.NaN : number(line, "sigmaHz", sigmaText);
    String where = fileName + ":" + line;
    String station =
        header.contains("station")
            ? CurveFiles.station(cell(cells, "station"), setting, where, problems)
            : setting.station();
    if (problems.size() == before) {
      byStation
          .computeIfAbsent(station, name -> new ArrayList<>())
          .add(new DopplerPoint(time, frequency, sigma));
    }
  }

  private String cell(List<String> cells, String column) {
    int at = header.indexOf(column);
    return at < 0 ? "" : cells.get(at);
  }

  private Instant time(int line, String text) {
    try {
      return Instant.parse(text);
    } catch (DateTimeParseException e) {
      problem(line, "'" + text + "' is not a time", "write it as 2026-10-06T09:31:20.5Z, in UTC");
      return Instant.EPOCH;
    }
  }

  private double number(int line, String column, String text) {
    try {
      double value = Double.parseDouble(text);
      if (value > 0 && value < 1e12) {
        return value;
      }
    } catch (NumberFormatException e) {
      // told below
    }
    problem(line, column + " is '" + text + "', not a number above 0", "write it in Hz");
    return 1;
  }

  private void problem(int line, String what, String mend) {
    problems.add(new Problem(what, fileName + ":" + line, mend));
  }
}
