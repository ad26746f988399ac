package hark.document;

import hark.assessment.ReviewCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The case for going on, one page for a review board: as plain text or as Markdown. */
public final class CasePage {
  private static final int GAP = 2;
  private static final int INDENT = 4;
  private static final int LEAST_LAST = 30;

  /** The last column takes what the others leave. */
  private static final int MOST_CELL = 44;

  private CasePage() {}

  /** For a terminal. */
  public static String text(ReviewCase made) {
    CaseText words = new CaseText(made);
    Page page = new Page();
    page.prose("", words.title() + " · " + Words.yearAndMinute(made.now()));
    words.silence().ifPresent(silence -> page.prose("", silence));
    page.blank();
    page.prose("  ", words.headline());
    for (CaseText.Part part : words.parts()) {
      page.blank();
      page.line("  " + part.title());
      part.prose().forEach(prose -> page.prose("    ", prose));
      table(page, part);
      part.points().forEach(point -> page.prose("    – ", point));
    }
    page.blank();
    page.prose("  ", words.close());
    return page.toString();
  }

  private static void table(Page page, CaseText.Part part) {
    int last = part.columns().size() - 1;
    int[] widths = new int[Math.max(0, last)];
    for (int c = 0; c < last; c++) {
      int column = c;
      List<String> cells = new ArrayList<>(part.rows().stream().map(r -> r.get(column)).toList());
      widths[c] = Page.widest(cells, MOST_CELL);
    }
    narrow(widths);
    for (List<String> row : part.rows()) {
      row(page, row, widths);
    }
  }

  /** Takes from the widest column until the last one has its room. */
  private static void narrow(int[] widths) {
    int room = Page.WIDTH - INDENT - LEAST_LAST - GAP * widths.length;
    while (Arrays.stream(widths).sum() > room) {
      int widest = 0;
      for (int c = 1; c < widths.length; c++) {
        widest = widths[c] > widths[widest] ? c : widest;
      }
      widths[widest]--;
    }
  }

  /** Cells side by side; one that is too long goes on below itself. */
  private static void row(Page page, List<String> cells, int[] widths) {
    List<List<String>> wrapped = new ArrayList<>();
    int taken = INDENT;
    for (int c = 0; c < cells.size(); c++) {
      boolean last = c == cells.size() - 1;
      int width = last ? Page.WIDTH - taken : widths[c];
      wrapped.add(Page.wrap(cells.get(c), Math.max(1, width)));
      taken += last ? 0 : width + GAP;
    }
    int lines = wrapped.stream().mapToInt(List::size).max().orElse(0);
    for (int l = 0; l < lines; l++) {
      StringBuilder line = new StringBuilder(" ".repeat(INDENT));
      for (int c = 0; c < cells.size(); c++) {
        String cell = l < wrapped.get(c).size() ? wrapped.get(c).get(l) : "";
        line.append(c == cells.size() - 1 ? cell : Page.left(cell, widths[c]) + " ".repeat(GAP));
      }
      page.line(line.toString());
    }
  }

  /** A name for it, fit for a file: {@code sandpiper-case-20261114T093000Z.md}. */
  public static String fileName(ReviewCase made) {
    return RunbookEntry.slug(made.mission()) + "-case-" + RunbookEntry.stamp(made.now()) + ".md";
  }

  /** As Markdown. */
  public static String markdown(ReviewCase made) {
    CaseText words = new CaseText(made);
    Markdown out = new Markdown();
    out.heading(1, Markdown.plain(words.title()));
    out.paragraph("**" + Markdown.plain(words.headline()) + "**");
    words.silence().ifPresent(silence -> out.paragraph(Markdown.plain(silence)));
    for (CaseText.Part part : words.parts()) {
      out.heading(2, part.title());
      part.prose().forEach(prose -> out.paragraph(Markdown.plain(prose)));
      if (!part.rows().isEmpty()) {
        out.header(part.columns().toArray(new String[0]));
        part.rows().forEach(row -> out.row(row.stream().map(Markdown::plain).toList()));
        out.end();
      }
      if (!part.points().isEmpty()) {
        part.points().forEach(point -> out.item(Markdown.plain(point)));
        out.end();
      }
    }
    out.paragraph(Markdown.plain(words.close()));
    return out.toString();
  }
}
