package hark.document;

import java.util.ArrayList;
import java.util.List;

/**
 * A small table inside a page of prose: the first column is words, the others stand to the right.
 */
final class Columns {
  private static final String INDENT = "  ";
  private final List<String[]> rows = new ArrayList<>();

  Columns(String... heading) {
    rows.add(heading);
  }

  void row(String... cells) {
    rows.add(cells);
  }

  void print(Page page) {
    int[] widths = new int[rows.get(0).length];
    for (String[] row : rows) {
      for (int i = 0; i < row.length; i++) {
        widths[i] = Math.max(widths[i], row[i].length());
      }
    }
    for (String[] row : rows) {
      StringBuilder line = new StringBuilder(INDENT).append(Page.left(row[0], widths[0]));
      for (int i = 1; i < row.length; i++) {
        line.append("  ").append(Page.right(row[i], widths[i]));
      }
      page.line(line.toString());
    }
  }
}
