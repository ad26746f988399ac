package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.CauseView;
import hark.assessment.Assessment.Explanation;
import hark.assessment.Assessment.Group;
import hark.assessment.Assessment.Separator;
import hark.assessment.LongReturn;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What {@code --all} says of causes: explanations, marginals, groups. */
final class BriefCauses {
  /** Lighter causes have their numbers told and no more. */
  private static final double TOLD = 0.005;

  private static final int TITLE = 34;

  private final Assessment assessment;
  private final Page page;

  private BriefCauses(Assessment assessment, Page page) {
    this.assessment = assessment;
    this.page = page;
  }

  static void add(Assessment assessment, Page page) {
    BriefCauses causes = new BriefCauses(assessment, page);
    causes.explanations();
    causes.causes();
    causes.longLook();
    causes.groups();
  }

  private void explanations() {
    BriefDetail.section(page, "Explanations, each alone (with the rest they make 100 %), %");
    List<Explanation> sorted =
        assessment.explanations().stream()
            .sorted(Comparator.comparingDouble(Explanation::posterior).reversed())
            .filter(e -> e.posterior() >= TOLD || e.events().isEmpty())
            .toList();
    for (Explanation each : sorted) {
      row(each.prior(), Words.hundredths(each.posterior(), each.error()), each.title());
    }
    double shown = sorted.stream().mapToDouble(Explanation::posterior).sum();
    double shownAtStart = sorted.stream().mapToDouble(Explanation::prior).sum();
    long lighter = assessment.explanations().size() - (long) sorted.size();
    if (lighter > 0) {
      double now = Math.max(0, 1 - shown - assessment.remainder());
      double start = Math.max(0, 1 - shownAtStart - assessment.remainderAtStart());
      row(start, Words.hundredths(now), Words.count(lighter, "other") + ", each under 0.5 %");
    }
    row(
        assessment.remainderAtStart(),
        Words.hundredths(assessment.remainder()),
        "three or more things at once");
    page.prose("    ", Doubts.remainder(assessment));
  }

  private void row(double start, String now, String title) {
    String label =
        "    " + Page.right(Words.hundredths(start), 4) + " →" + Page.right(now, 9) + "  ";
    page.prose(label, title);
  }

  private void causes() {
    BriefDetail.section(page, "Every cause (two at once count in both), %");
    page.line(
        "    "
            + Page.left("", TITLE)
            + Page.right("at start", 9)
            + Page.right("now", 10)
            + Page.right("later", 7)
            + Page.right("prior ½", 9)
            + Page.right("prior ×2", 10)
            + "  branch");
    List<CauseView> heaviest =
        assessment.causes().stream()
            .sorted(Comparator.comparingDouble(CauseView::posterior).reversed())
            .toList();
    for (CauseView cause : heaviest) {
      page.line(
          "    "
              + Page.left(Words.inSentence(cause.title()), TITLE)
              + Page.right(Words.hundredths(cause.prior()), 9)
              + Page.right(Words.hundredths(cause.posterior(), cause.error()), 10)
              + Page.right(Words.hundredths(cause.later()), 7)
              + Page.right(Words.hundredths(cause.ifPriorHalved()), 9)
              + Page.right(Words.hundredths(cause.ifPriorDoubled()), 10)
              + "  "
              + Page.left(cause.branch(), 14));
      if (cause.posterior() >= TOLD) {
        particulars(cause);
      }
    }
    page.prose(
        "    ",
        "later: has not begun by now and still comes within its 30 days. prior ½, ×2: where it"
            + " would stand now had it begun with half or twice the odds; what moves much with that"
            + " rests on judgement more than on the record.");
  }

  private void particulars(CauseView cause) {
    line("for it:     ", cause.detail().confirms());
    line("against it: ", cause.detail().refutes());
    line("ended by:   ", Words.choice(cause.detail().endedBy()));
    line("by itself:  ", Recovery.of(cause.selfRecovery()));
    longReturn(cause).ifPresent(each -> line("far ahead:  ", Recovery.of(each)));
    line("procedures: ", Words.list(cause.detail().procedures()));
  }

  private void line(String label, String words) {
    if (!words.isBlank()) {
      page.prose("      " + label, words);
    }
  }

  private Optional<LongReturn> longReturn(CauseView cause) {
    return assessment
        .longLook()
        .flatMap(
            look -> look.returns().stream().filter(r -> r.cause().equals(cause.id())).findFirst());
  }

  private void groups() {
    Map<String, String> titles =
        assessment.causes().stream().collect(Collectors.toMap(CauseView::id, CauseView::title));
    for (Group group : assessment.groups()) {
      BriefDetail.section(page, Words.sentenceCase(group.title()));
      List<String> names =
          group.causes().stream().map(c -> Words.inSentence(titles.getOrDefault(c, c))).toList();
      String weight =
          Words.percent(group.prior())
              + " at start, now "
              + Words.percent(group.posterior(), group.error());
      page.prose("    ", weight + ": " + Words.list(names) + ".");
      page.prose(
          "    ",
          "Listening cannot separate them: what was heard and not heard is as likely under each, so"
              + " their odds stay those of the start. What would:");
      if (group.separators().isEmpty()) {
        page.prose("      ", group.wouldSeparate().replaceAll("[.\\s]+$", "") + ".");
      } else {
        sentences(group);
      }
    }
  }

  private void sentences(Group group) {
    for (Separator each : group.separators()) {
      String rest = each.doesNot().isEmpty() ? "" : "; " + each.doesNot();
      page.prose("      - ", each.means() + ": " + each.shows() + rest + ".");
    }
  }

  private void longLook() {
    assessment
        .longLook()
        .ifPresent(
            look ->
                page.prose(
                    "    ",
                    "Far ahead: a few cases of each cause from 1 % on were followed without any"
                        + " command until "
                        + Words.day(look.until())
                        + " of "
                        + Words.year(look.until())
                        + ", and the first burst noted; whether somebody hears it is not asked. The"
                        + " orbit is foretold from one element set: in a year its seasons may be off"
                        + " by some days."));
  }
}
