package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.CauseView;
import hark.assessment.Assessment.EvidenceView;
import hark.assessment.Assessment.Explanation;
import hark.assessment.Assessment.Group;
import hark.assessment.Assessment.Option;
import hark.assessment.Assessment.Window;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What {@code --all} adds to a brief. */
final class BriefDetail {
  /** Movements told for one entry. */
  private static final int MOVES = 3;

  /** Movements smaller than this are not told, bits. */
  private static final double LEAST_BITS = 0.05;

  /** Options told for a window, best first; what is planned is told besides. */
  private static final int OPTIONS = 5;

  private static final int CAUTION = 6;
  private static final int TITLE = 34;
  private static final int OPTION = 38;

  private final Assessment assessment;
  private final Page page;

  private BriefDetail(Assessment assessment, Page page) {
    this.assessment = assessment;
    this.page = page;
  }

  static void add(Assessment assessment, Page page) {
    BriefDetail detail = new BriefDetail(assessment, page);
    detail.causes();
    detail.groups();
    detail.explanations();
    detail.whoAndWhere();
    detail.evidence();
    detail.windows();
    detail.plan();
    detail.numbers();
  }

  private void section(String title) {
    page.blank();
    page.line("  " + title);
  }

  private void causes() {
    section("Every cause (two at once count in both), %");
    page.line(
        "    "
            + Page.left("", TITLE)
            + Page.right("at start", 9)
            + Page.right("now", 10)
            + Page.right("later", 7)
            + Page.right("prior ½", 9)
            + Page.right("prior ×2", 10)
            + "  branch");
    for (CauseView cause : heaviest(assessment.causes())) {
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
      page.prose("      would tell: ", cause.signature());
      page.prose("      by itself:  ", Recovery.of(cause.selfRecovery()));
    }
  }

  private static List<CauseView> heaviest(List<CauseView> causes) {
    return causes.stream()
        .sorted(Comparator.comparingDouble(CauseView::posterior).reversed())
        .toList();
  }

  private void groups() {
    for (Group group : assessment.groups()) {
      section(Words.sentenceCase(group.title()));
      Map<String, String> titles =
          assessment.causes().stream().collect(Collectors.toMap(CauseView::id, CauseView::title));
      List<String> names =
          group.causes().stream().map(c -> Words.inSentence(titles.getOrDefault(c, c))).toList();
      String weight = Words.percent(group.posterior(), group.error());
      page.prose("    ", weight + ": " + Words.list(names) + ".");
      String tell = group.wouldSeparate().replaceAll("[.\\s]+$", "");
      page.prose("    ", "Listening cannot separate them. What would: " + tell + ".");
    }
  }

  private void explanations() {
    section("Explanations, each alone (with the rest they make 100 %), %");
    List<Explanation> sorted =
        assessment.explanations().stream()
            .sorted(Comparator.comparingDouble(Explanation::posterior).reversed())
            .filter(e -> e.posterior() >= 0.005)
            .toList();
    for (Explanation each : sorted) {
      String label =
          "    "
              + Page.right(Words.hundredths(each.prior()), 4)
              + " →"
              + Page.right(Words.hundredths(each.posterior(), each.error()), 9)
              + "  ";
      page.prose(label, each.title());
    }
    double shown = sorted.stream().mapToDouble(Explanation::posterior).sum();
    double lighter = Math.max(0, 1 - shown - assessment.remainder());
    page.line("    lighter ones together " + Words.percent(lighter));
    page.prose(
        "    ",
        "three or more things at once "
            + Words.percent(assessment.remainder())
            + " (at most "
            + Words.percent(assessment.remainderBound())
            + ")");
  }

  private void whoAndWhere() {
    section("Whose it is, and whether we can hear");
    for (Assessment.ObjectView object : assessment.objects()) {
      String name =
          object.name().isBlank() ? object.object() : object.object() + " " + object.name();
      moved(
          object.object().equals("none") ? "none of these" : name,
          object.prior(),
          object.posterior());
    }
    for (Assessment.StationView station : assessment.stations()) {
      moved(station.station() + " works as believed", station.prior(), station.works());
    }
  }

  private void moved(String what, double before, double after) {
    page.line(
        "    "
            + Page.left(what, TITLE)
            + Page.right(Words.percent(before), 11)
            + "  →"
            + Page.right(Words.percent(after), 11));
  }

  private void evidence() {
    if (assessment.evidence().isEmpty()) {
      return;
    }
    section("What each entry moved, in bits of odds");
    Map<String, String> titles =
        assessment.causes().stream().collect(Collectors.toMap(CauseView::id, CauseView::title));
    for (EvidenceView entry : assessment.evidence()) {
      String label =
          "    " + Page.right("" + entry.entry(), 4) + "  " + Words.dayAndMinute(entry.at()) + "  ";
      String moves = moves(entry, titles);
      String what = entry.title().replaceAll("[.\\s]+$", "");
      page.prose(label, what + ": " + (moves.isEmpty() ? "moves nothing" : moves) + ".");
    }
  }

  /** The largest movements of an entry, in words; empty when it moved nothing. */
  static String moves(EvidenceView entry, Map<String, String> titles) {
    return entry.bits().entrySet().stream()
        .filter(e -> Math.abs(e.getValue()) >= LEAST_BITS)
        .sorted(
            Comparator.comparingDouble((Map.Entry<String, Double> e) -> -Math.abs(e.getValue()))
                .thenComparing(Map.Entry::getKey))
        .limit(MOVES)
        .map(
            e ->
                Words.inSentence(titles.getOrDefault(e.getKey(), e.getKey()))
                    + " "
                    + Words.signed(e.getValue()))
        .collect(Collectors.joining(", "));
  }

  private void windows() {
    section("Windows and what can be done in each, %");
    page.line(
        "            "
            + Page.left("", OPTION)
            + Page.right("heard here", 11)
            + Page.right("by " + Words.day(Options.end(assessment)), 10)
            + Page.right("spoiled", 9)
            + Page.right("time", 8));
    for (Window window : Options.ahead(assessment)) {
      page.prose(
          "    ",
          Words.day(window.aos())
              + " "
              + Words.clock(window.aos())
              + "–"
              + Words.clock(window.los())
              + "  "
              + Page.cut(window.station(), TITLE)
              + "  "
              + Math.round(window.maxElevationDeg())
              + "°  beacon on "
              + Words.percent(window.beaconOn(), window.beaconOnError())
              + (window.unattended() ? "  records by itself" : ""));
      options(window);
    }
  }

  private void options(Window window) {
    List<Option> ranked = Options.byRank(window);
    List<Option> shown =
        ranked.stream().filter(o -> o.rank() <= OPTIONS || isPlanned(window, o)).toList();
    shown.forEach(o -> option(window, o));
    if (ranked.size() > shown.size()) {
      int hidden = ranked.size() - shown.size();
      page.line("            and " + Words.count(hidden, "other") + "; see hark assess");
    }
  }

  private static boolean isPlanned(Window window, Option option) {
    return window.planned().filter(option.procedure()::equals).isPresent();
  }

  private void option(Window window, Option option) {
    boolean planned = isPlanned(window, option);
    String label =
        "      "
            + Page.right(option.rank() + ".", 3)
            + (planned ? " * " : "   ")
            + Page.left(Words.inSentence(option.title()), OPTION)
            + Page.right(Words.hundredths(option.heardThisPass(), option.heardThisPassError()), 11)
            + Page.right(Words.hundredths(option.heardByHorizon()), 10)
            + Page.right(Words.hundredths(option.hazard()), 9)
            + Page.right(Words.hours(option.costHours()), 8);
    page.line(label);
    if (planned) {
      page.prose("            ", option.why());
    }
  }

  private void plan() {
    Assessment.Plan plan = assessment.plan();
    section("The plan (* above)");
    page.prose(
        "    ",
        String.format(
            "%s of people's time of %s a week; heard by %s with %s%s; on average after %s.",
            Words.hours(plan.costHours()),
            Words.hours(assessment.crewHoursPerWeek()),
            Words.day(Options.end(assessment)),
            Words.percent(plan.heardByHorizon()),
            plan.upperBound() >= plan.heardByHorizon()
                ? " (no plan could exceed " + Words.percent(plan.upperBound()) + ")"
                : "",
            Words.days(plan.meanDaysToHear())));
    Cautions.planned(assessment).forEach(c -> page.hanging("    Caution: ", c, CAUTION));
  }

  private void numbers() {
    section("How it was worked out");
    page.prose(
        "    ",
        Words.count(assessment.members(), "simulated body")
            + ", seed "
            + assessment.seed()
            + ", "
            + Words.days(assessment.horizonDays())
            + " ahead; predictive tail probability "
            + Words.decimal(assessment.misfit(), 3)
            + ". Errors are standard errors between replicates, shown from 1 % on.");
  }
}
