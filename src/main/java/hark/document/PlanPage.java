package hark.document;

import hark.assessment.Assessment;
import hark.assessment.PlanView;
import hark.plan.PlanBook;
import hark.plan.PlanFigures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** The plan as a terminal prints it: what it comes to, then window by window, then what if. */
public final class PlanPage {
  /** Windows left out that are named, the best of them. */
  private static final int LEFT_OUT = 4;

  private static final int MOST_STATION = 16;
  private static final String INDENT = "         ";

  private final Assessment assessment;
  private final PlanView view;
  private final Page page = new Page();

  private PlanPage(Assessment assessment, PlanView view) {
    this.assessment = assessment;
    this.view = view;
  }

  /** The page. */
  public static String of(Assessment assessment, PlanView view) {
    PlanPage plan = new PlanPage(assessment, view);
    plan.head();
    plan.windows();
    plan.leftOut();
    plan.afterwards();
    return plan.page.toString();
  }

  private void head() {
    page.prose("", Brief.heading(assessment));
    page.blank();
    PlanFigures figures = view.figures();
    String until = Words.day(view.until());
    page.hanging(
        "  Plan   ",
        "finds it by "
            + until
            + " with "
            + Words.percent(figures.found(), figures.foundError())
            + ", after "
            + Words.decimal(figures.meanDays(), 1)
            + " days in the mean when "
            + until
            + " stands for never. It takes "
            + hours(figures.hours())
            + " of people's time if nothing is ever heard, "
            + hours(figures.meanHours())
            + " in the mean. "
            + commands(figures)
            + " No plan of these procedures finds it with more than "
            + Words.percent(view.upperBound())
            + ".",
        INDENT.length());
    List<String> weeks = view.weeks().stream().map(PlanPage::week).toList();
    page.hanging("  Hours  ", String.join("; ", weeks) + ".", INDENT.length());
    page.blank();
  }

  private static String commands(PlanFigures figures) {
    if (figures.commands() == 0) {
      return "It sends nothing.";
    }
    return "It sends "
        + Words.count(figures.commands(), "command")
        + ", which "
        + (figures.hazard() < 0.005
            ? "hardly ever delays the first sound."
            : "delays the first sound in at most " + Words.percent(figures.hazard()) + ".");
  }

  private static String week(PlanBook.WeekHours week) {
    return "week from "
        + Words.day(week.from())
        + " "
        + hours(week.planned())
        + " of "
        + hours(week.granted())
        + (week.spent() > 0 ? " left, " + hours(week.spent()) + " spent" : "");
  }

  private static String hours(double hours) {
    return String.format(Locale.ROOT, "%.1f h", hours);
  }

  private void windows() {
    List<PlanView.Row> taken =
        view.windows().stream().filter(row -> row.taken().isPresent()).toList();
    if (taken.isEmpty()) {
      page.line("  Nothing is planned: no window is worth its time.");
    } else {
      page.line("  " + columns(taken) + "height  heard    costs   adds  what");
    }
    for (PlanView.Row row : taken) {
      row(row, taken);
    }
    page.blank();
  }

  private static String columns(List<PlanView.Row> rows) {
    return Page.left("time", 16) + Page.left("station", station(rows) + 2);
  }

  private static int station(List<PlanView.Row> rows) {
    List<String> names = new ArrayList<>(List.of("station"));
    rows.forEach(row -> names.add(row.window().station()));
    return Page.widest(names, MOST_STATION);
  }

  private void row(PlanView.Row row, List<PlanView.Row> all) {
    String line =
        "  "
            + Page.left(Words.dayAndMinute(row.window().aos()), 16)
            + Page.left(row.window().station(), station(all) + 2)
            + Page.right(Math.round(row.window().maxElevationDeg()) + "°", 6)
            + Page.right(Words.percent(row.heard()), 7)
            + Page.right(hours(row.costHours()), 9)
            + Page.right(points(row.adds()), 7)
            + "  ";
    page.line(line + Page.cut(Words.brief(row.title()), Page.WIDTH - line.length()));
    page.prose("      ", row.why());
    row.cautions().forEach(caution -> page.prose("      Caution: ", caution));
  }

  private static String points(double share) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * Math.max(0, share));
  }

  private void leftOut() {
    List<PlanView.Row> skipped =
        view.windows().stream()
            .filter(row -> row.taken().isEmpty() && row.best().isPresent())
            .sorted(Comparator.comparingDouble(PlanView.Row::adds).reversed())
            .toList();
    if (!skipped.isEmpty()) {
      page.line("  Left out, those that would add most");
    }
    for (PlanView.Row row : skipped.stream().limit(LEFT_OUT).toList()) {
      row(row, skipped);
    }
    long closed = view.windows().stream().filter(row -> row.notAvailable().isPresent()).count();
    if (closed > 0) {
      page.prose(
          "  ",
          Words.count(closed, "window")
              + (closed == 1 ? " is" : " are")
              + " outside of the times in which their station may be used.");
    }
    page.blank();
  }

  private void afterwards() {
    page.prose("  Then   ", view.afterNothing().sentence());
    moved();
    page.prose(INDENT, view.afterHeard().sentence());
    page.prose("  Hours  ", view.oneMoreHour().sentence());
  }

  private void moved() {
    List<String> parts =
        view.afterNothing().causes().stream()
            .filter(cause -> Math.abs(cause.after() - cause.before()) >= 0.005)
            .map(
                cause ->
                    cause.title()
                        + " "
                        + Words.percent(cause.before())
                        + " to "
                        + Words.percent(cause.after()))
            .toList();
    if (!parts.isEmpty()) {
      page.prose(INDENT, "It moves " + Words.list(parts) + ".");
    }
  }
}
