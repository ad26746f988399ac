package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.CauseView;
import hark.assessment.Assessment.EvidenceView;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What moved what: entries down, causes across, bits of odds in between. */
final class BriefEvidence {
  /** Columns at most; more do not fit a terminal. */
  private static final int MOST = 6;

  /** Movements smaller than this are not told, bits. */
  private static final double LEAST_BITS = 0.05;

  private static final int WHAT = 40;
  private static final int CELL = 6;

  private final Assessment assessment;
  private final Page page;
  private final List<Column> columns = new ArrayList<>();

  /** A cause, or a group by its first cause: those that cannot be told apart moved alike. */
  private record Column(String cause, String title) {}

  private BriefEvidence(Assessment assessment, Page page) {
    this.assessment = assessment;
    this.page = page;
  }

  static void add(Assessment assessment, Page page) {
    if (!assessment.evidence().isEmpty()) {
      new BriefEvidence(assessment, page).table();
    }
  }

  private void table() {
    BriefDetail.section(
        page, "What moved what, in bits of odds (+1 doubles the odds, −1 halves them)");
    choose();
    StringBuilder head = new StringBuilder("    " + Page.left("", 6 + 14 + WHAT));
    for (int c = 0; c < columns.size(); c++) {
      head.append(Page.right(letter(c), CELL));
    }
    page.line(head.toString());
    List<String> still = new ArrayList<>();
    double[] sums = new double[columns.size()];
    for (EvidenceView entry : assessment.evidence()) {
      double[] bits = bits(entry);
      boolean moved = false;
      for (int c = 0; c < bits.length; c++) {
        sums[c] += bits[c];
        moved |= Math.abs(bits[c]) >= LEAST_BITS;
      }
      if (moved) {
        row(entry, bits);
      } else {
        still.add(Integer.toString(entry.entry()));
      }
    }
    page.line("    " + Page.left("all together", 6 + 14 + WHAT) + cells(sums));
    if (!still.isEmpty()) {
      String which = still.size() == 1 ? "Entry " : "Entries ";
      page.prose(
          "    ",
          which
              + Words.list(still)
              + (still.size() == 1 ? " moves" : " move")
              + " none of these by as much as "
              + LEAST_BITS
              + ".");
    }
    key();
  }

  private void choose() {
    for (CauseView cause : heaviest()) {
      boolean grouped =
          cause.inseparableGroup().isPresent()
              && columns.stream().anyMatch(c -> sameGroup(c.cause(), cause));
      if (!grouped && columns.size() < MOST) {
        columns.add(new Column(cause.id(), title(cause)));
      }
    }
  }

  private List<CauseView> heaviest() {
    return assessment.causes().stream()
        .sorted((a, b) -> Double.compare(b.posterior(), a.posterior()))
        .toList();
  }

  private boolean sameGroup(String id, CauseView cause) {
    return assessment.causes().stream()
        .filter(other -> other.id().equals(id))
        .anyMatch(other -> other.inseparableGroup().equals(cause.inseparableGroup()));
  }

  private String title(CauseView cause) {
    return cause
        .inseparableGroup()
        .flatMap(id -> assessment.groups().stream().filter(g -> g.id().equals(id)).findFirst())
        .map(group -> Words.inSentence(cause.title()) + " and those not told apart from it")
        .orElse(Words.inSentence(cause.title()));
  }

  private double[] bits(EvidenceView entry) {
    return columns.stream().mapToDouble(c -> entry.bits().getOrDefault(c.cause(), 0.0)).toArray();
  }

  private void row(EvidenceView entry, double[] bits) {
    String odd =
        entry.tail().isPresent() && entry.tail().getAsDouble() < Doubts.MISFIT
            ? " (" + Doubts.chance(entry.tail().getAsDouble()) + ")"
            : "";
    page.line(
        "    "
            + Page.right("" + entry.entry(), 4)
            + "  "
            + Page.left(Words.dayAndMinute(entry.at()), 14)
            + Page.left(" " + Page.cut(entry.title(), WHAT - 1 - odd.length()) + odd, WHAT)
            + cells(bits));
  }

  private static String cells(double[] bits) {
    StringBuilder cells = new StringBuilder();
    for (double each : bits) {
      cells.append(Page.right(Math.abs(each) < LEAST_BITS ? "·" : Words.signed(each), CELL));
    }
    return cells.toString();
  }

  private void key() {
    List<String> keys = new ArrayList<>();
    for (int c = 0; c < columns.size(); c++) {
      keys.add(letter(c) + " " + columns.get(c).title());
    }
    page.prose("    ", String.join("; ", keys) + ".");
  }

  private static String letter(int column) {
    return Character.toString((char) ('A' + column));
  }

  /** The largest movements of an entry, in words; empty when it moved nothing. */
  static String moves(EvidenceView entry, Map<String, String> titles, int most) {
    return entry.bits().entrySet().stream()
        .filter(e -> Math.abs(e.getValue()) >= LEAST_BITS)
        .sorted(
            java.util.Comparator.comparingDouble(
                    (Map.Entry<String, Double> e) -> -Math.abs(e.getValue()))
                .thenComparing(Map.Entry::getKey))
        .limit(most)
        .map(
            e ->
                Words.inSentence(titles.getOrDefault(e.getKey(), e.getKey()))
                    + " "
                    + Words.signed(e.getValue()))
        .collect(Collectors.joining(", "));
  }
}
