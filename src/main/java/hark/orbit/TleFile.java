package hark.orbit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Walks the lines of a two-line element file: names, first lines, second lines, comments. */
final class TleFile {
  private static final int LONGEST_NAME = 80;

  private final String fileName;
  private final List<String> lines;
  private final ElementProblems problems;
  private final List<ElementSet> sets = new ArrayList<>();
  private Optional<String> pendingName = Optional.empty();
  private int pendingNameLine;

  private TleFile(String fileName, String text) {
    this.fileName = fileName;
    this.lines = text.lines().toList();
    this.problems = new ElementProblems(fileName);
  }

  static List<ElementSet> parse(String fileName, String text) {
    return new TleFile(fileName, text).read();
  }

  private List<ElementSet> read() {
    int i = 0;
    while (i < lines.size() && !problems.isFull()) {
      i += readAt(i);
    }
    nameWithoutLines();
    if (sets.isEmpty() && problems.count() == 0) {
      problems.add(
          1, "the file has no element set", "give two-line elements or OMM as KVN, XML or JSON");
    }
    problems.throwIfAny(i >= lines.size());
    return List.copyOf(sets);
  }

  /** Reads what begins at a line; returns how many lines that was. */
  private int readAt(int i) {
    String line = lines.get(i).stripTrailing();
    if (line.isBlank() || line.startsWith("#")) {
      return 1;
    }
    if (isNumbered(line, '1')) {
      return readPair(i, line);
    }
    if (isNumbered(line, '2')) {
      problems.add(
          i + 1, "TLE line 2 has no line 1 before it", "copy the two lines again from the source");
      pendingName = Optional.empty();
      return 1;
    }
    nameWithoutLines();
    if (line.length() > LONGEST_NAME) {
      problems.add(
          i + 1,
          "this is neither a TLE line nor a name: it has " + line.length() + " characters",
          "a name has at most " + LONGEST_NAME);
      return 1;
    }
    pendingName = Optional.of(line.startsWith("0 ") ? line.substring(2).strip() : line.strip());
    pendingNameLine = i + 1;
    return 1;
  }

  private int readPair(int i, String line1) {
    Optional<String> name = pendingName;
    pendingName = Optional.empty();
    String line2 = i + 1 < lines.size() ? lines.get(i + 1).stripTrailing() : "";
    if (!isNumbered(line2, '2')) {
      problems.add(
          i + 1, "TLE line 1 has no line 2 after it", "copy the two lines again from the source");
      return 1;
    }
    new TleLines(new TleLines.Source(fileName, i + 1), line1, line2, problems)
        .read(name)
        .ifPresent(sets::add);
    return 2;
  }

  private void nameWithoutLines() {
    if (pendingName.isPresent()) {
      problems.add(
          pendingNameLine,
          "'" + shorten(pendingName.get()) + "' is not followed by TLE line 1",
          "a name is followed by line 1 and line 2; a comment begins with #");
      pendingName = Optional.empty();
    }
  }

  private static String shorten(String text) {
    return text.length() <= 30 ? text : text.substring(0, 30) + "…";
  }

  private static boolean isNumbered(String line, char number) {
    return line.length() > 1 && line.charAt(0) == number && line.charAt(1) == ' ';
  }
}
