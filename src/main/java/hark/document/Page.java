package hark.document;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Lines of text of a fixed greatest width, for a terminal. */
final class Page {
  /** Greatest width of a line, columns. */
  static final int WIDTH = 100;

  private static final String HARD_BLANK = "\u00a0";
  private static final String MONTH = "(Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)";

  /** Blanks that a line must not be broken at. */
  private static final Pattern TOGETHER =
      Pattern.compile(
          "(?<=\\d) (?=(%|±|[hmds]|dB|V|°)(\\W|$))|(?<=±) |(?<=\\d) (?="
              + MONTH
              + "\\b)|(?<="
              + MONTH
              + ") (?=\\d)");

  private final StringBuilder text = new StringBuilder();

  /** A line as it is; nothing but trailing blanks is changed. */
  void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  void blank() {
    text.append('\n');
  }

  /** Prose after a label; further lines stand under the first word. */
  void prose(String label, String prose) {
    hanging(label, prose, label.length());
  }

  /** Prose whose further lines are indented by so many columns, at most the label's. */
  void hanging(String label, String prose, int indent) {
    String filler = "x".repeat(Math.max(0, label.length() - indent));
    List<String> lines = wrap(filler + prose, WIDTH - indent);
    for (int i = 0; i < lines.size(); i++) {
      boolean first = i == 0;
      line(
          first
              ? label + lines.get(0).substring(filler.length())
              : " ".repeat(indent) + lines.get(i));
    }
  }

  /**
   * Breaks at blanks, but never between a number and its unit or inside a date; a single word
   * longer than the width is broken inside.
   */
  static List<String> wrap(String prose, int width) {
    return brokenAtBlanks(TOGETHER.matcher(prose).replaceAll(HARD_BLANK), width).stream()
        .map(line -> line.replace(HARD_BLANK, " "))
        .toList();
  }

  private static List<String> brokenAtBlanks(String prose, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : prose.strip().split("[ \\n]+", -1)) {
      String rest = word;
      if (line.length() > 0 && line.length() + 1 + rest.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (rest.length() > width) {
        lines.add(rest.substring(0, width));
        rest = rest.substring(width);
      }
      line.append(line.length() > 0 ? " " : "").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }

  /** Padded on the right, or cut with an ellipsis. */
  static String left(String text, int width) {
    String cut = cut(text, width);
    return cut + " ".repeat(width - cut.length());
  }

  /** As it is, or cut with an ellipsis. */
  static String cut(String text, int width) {
    return text.length() > width ? text.substring(0, width - 1) + "…" : text;
  }

  /** Padded on the left. */
  static String right(String text, int width) {
    return " ".repeat(Math.max(0, width - text.length())) + text;
  }

  /** Width of the longest text, at most {@code most}. */
  static int widest(List<String> texts, int most) {
    return Math.min(most, texts.stream().mapToInt(String::length).max().orElse(0));
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
