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

  /** Causes of a group that are named; the rest are counted. */
  private static final int MOST_NAMES = 4;

  private StillFits() {}

  /** Heaviest first. */
  static List<Row> rows(Assessment assessment) {
    List<Row> rows = new ArrayList<>();
    for (Group group : assessment.groups()) {
      rows.add(
          new Row(
              group.title(),
              group.prior(),
              group.posterior(),
              group.error(),
              names(assessment, group) + apart(group),
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

  /** The cheapest means that would tell them apart. */
  private static String apart(Group group) {
    return group.separators().isEmpty()
        ? "; what would tell them apart: --all"
        : "; first apart by " + group.separators().get(0).means() + ", see --all";
  }

  /** {@code boot loop, transmitter dead or spacecraft lost}; the likeliest few of many. */
  static String names(Assessment assessment, Group group) {
    List<String> titles =
        assessment.causes().stream()
            .filter(c -> group.causes().contains(c.id()))
            .sorted(Comparator.comparingDouble(CauseView::posterior).reversed())
            .map(c -> Words.inSentence(c.title()))
            .toList();
    int more = titles.size() - MOST_NAMES;
    if (more <= 1) {
      return Words.choice(titles);
    }
    return String.join(", ", titles.subList(0, MOST_NAMES)) + " or one of " + more + " more";
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
