package hark.mission;

import hark.problem.Problem;
import java.util.Optional;

/**
 * A Markdown file taken apart.
 *
 * @param yaml between the two lines {@code ---}, beginning in line 2 of the file
 * @param body everything after them
 * @param bodyLine line of the file in which the body begins
 */
record FrontMatter(String yaml, String body, int bodyLine) {
  private static final String RULE = "---";

  static Optional<FrontMatter> split(String fileName, String markdown, Problems problems) {
    if (markdown.length() > ProcedureFile.MAX_CHARACTERS) {
      problems.add(
          new Problem(
              markdown.length()
                  + " characters, at most "
                  + ProcedureFile.MAX_CHARACTERS
                  + " are read",
              fileName,
              "check that it is the file you meant"));
      return Optional.empty();
    }
    String plain = markdown.startsWith("\uFEFF") ? markdown.substring(1) : markdown;
    String[] lines = plain.split("\r?\n", -1);
    int end = lines[0].stripTrailing().equals(RULE) ? 1 : lines.length;
    while (end < lines.length && !lines[end].stripTrailing().equals(RULE)) {
      end++;
    }
    if (end >= lines.length) {
      problems.add(
          new Problem(
              "no front matter: keys between two lines '---' were expected first",
              fileName + ":1",
              "begin with a line '---', the keys, and another line '---'"));
      return Optional.empty();
    }
    return Optional.of(
        new FrontMatter(join(lines, 1, end), join(lines, end + 1, lines.length), end + 2));
  }

  private static String join(String[] lines, int from, int to) {
    StringBuilder text = new StringBuilder();
    for (int i = from; i < to; i++) {
      text.append(lines[i]).append('\n');
    }
    return text.toString();
  }
}
