package hark.document;

import java.util.List;

/** Builds a Markdown text; words from outside are made harmless. */
final class Markdown {
  private final StringBuilder text = new StringBuilder();

  void heading(int level, String title) {
    text.append("#".repeat(level)).append(' ').append(title).append("\n\n");
  }

  void paragraph(String prose) {
    text.append(prose.strip()).append("\n\n");
  }

  void item(String prose) {
    text.append("- ").append(prose.strip()).append('\n');
  }

  void step(int number, String prose) {
    text.append(number).append(". ").append(prose.strip()).append('\n');
  }

  void end() {
    text.append('\n');
  }

  void header(String... cells) {
    row(List.of(cells));
    row(List.of(cells).stream().map(c -> "---").toList());
  }

  void row(List<String> cells) {
    text.append("| ").append(String.join(" | ", cells)).append(" |\n");
  }

  void field(String name, String value) {
    row(List.of(name, value));
  }

  /** Markdown from a procedure, its headings pushed below {@code level}. */
  void embed(String markdown, int level) {
    for (String line : markdown.strip().split("\n", -1)) {
      text.append(line.startsWith("#") ? "#".repeat(level) + line : line).append('\n');
    }
    text.append('\n');
  }

  /** Text that people typed, on one line, without any power to mark up. */
  static String plain(String typed) {
    return typed
        .replaceAll("\\s+", " ")
        .strip()
        .replace("\\", "\\\\")
        .replaceAll("([|*_`\\[\\]#])", "\\\\$1")
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;");
  }

  @Override
  public String toString() {
    return text.toString().stripTrailing() + "\n";
  }
}
