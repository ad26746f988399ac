package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.Option;
import hark.assessment.Assessment.Window;
import java.util.List;

/** What {@code --all} adds to a brief. */
final class BriefDetail {
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
    BriefCauses.add(assessment, page);
    detail.whoAndWhere();
    BriefEvidence.add(assessment, page);
    detail.windows();
    detail.plan();
    detail.numbers();
  }

  private void section(String title) {
    section(page, title);
  }

  static void section(Page page, String title) {
    page.blank();
    page.line("  " + title);
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
      StationWords.ifNot(station).ifPresent(words -> page.line("      " + words));
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
            + ". Behind ± stands the standard error between replicates of the sampling, where it is"
            + " half a point or more; a figure without it moves by less than that with the seed.");
    String tree = Doubts.tree(assessment);
    if (!tree.isEmpty()) {
      page.prose("    ", tree);
    }
  }
}
