package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.CauseView;
import hark.assessment.Assessment.Explanation;
import hark.assessment.Assessment.Group;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What still fits, as rows: causes, those that listening cannot separate folded into one row, and
 * "nothing wrong". Rows of causes are marginals; two causes at once count in both.
 */
final class StillFits {
  /** One row; {@code tell} is what would tell it. */
  record Row(
      String title, double start, double now, double error, String tell, boolean nothingWrong) {}

  private StillFits() {}

  /** Heaviest first. */
  static List<Row> rows(Assessment assessment) {
    List<Row> rows = new ArrayList<>();
    for (Group group : assessment.groups()) {
      rows.add(
          new Row(
              title(assessment, group),
              group.prior(),
              group.posterior(),
              group.error(),
              "listening cannot separate these; see --all",
              false));
    }
    for (CauseView cause : assessment.causes()) {
      if (!inGroup(assessment, cause)) {
        rows.add(
            new Row(
                Words.inSentence(cause.title()),
                cause.prior(),
                cause.posterior(),
                cause.error(),
                cause.signature(),
                false));
      }
    }
    for (Explanation explanation : assessment.explanations()) {
      if (explanation.events().isEmpty()) {
        rows.add(nothingWrong(explanation));
      }
    }
    rows.sort(Comparator.comparingDouble(Row::now).reversed().thenComparing(Row::title));
    return rows;
  }

  /**
   * A short name for a group: its own, or, when that lists its causes after a colon, the likeliest
   * of them and how many are like it.
   */
  static String title(Assessment assessment, Group group) {
    int size = group.causes().size();
    if (!group.title().contains(":")) {
      return group.title() + " (" + Words.count(size, "cause") + ")";
    }
    String likeliest =
        assessment.causes().stream()
            .filter(c -> group.causes().contains(c.id()))
            .max(Comparator.comparingDouble(CauseView::posterior))
            .map(c -> Words.inSentence(c.title()))
            .orElse(group.title());
    return size < 2 ? likeliest : likeliest + ", or " + (size - 1) + " like it";
  }

  /** The heaviest, and "nothing wrong" always: how far it has moved says most. */
  static List<Row> shown(List<Row> rows, int most, double least) {
    List<Row> heavy =
        rows.stream().filter(r -> r.now() >= least && !r.nothingWrong()).limit(most).toList();
    return rows.stream().filter(r -> r.nothingWrong() || heavy.contains(r)).toList();
  }

  private static boolean inGroup(Assessment assessment, CauseView cause) {
    return assessment.groups().stream().anyMatch(g -> g.causes().contains(cause.id()));
  }

  private static Row nothingWrong(Explanation explanation) {
    return new Row(
        Words.inSentence(explanation.title()),
        explanation.prior(),
        explanation.posterior(),
        explanation.error(),
        "any reception",
        true);
  }
}
