package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.GoingOn;
import hark.assessment.Assessment.Option;
import hark.assessment.Assessment.Silence;
import hark.assessment.Assessment.Window;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The brief as a terminal prints it: the answer first, then what it rests on. */
public final class Brief {
  /** Planned windows after the next one. */
  private static final int THEN = 3;

  /** Rows of what still fits, without {@code --all}. */
  private static final int FITS = 7;

  /** Rows under this weight are folded into one. */
  private static final double LEAST = 0.01;

  private static final String INDENT = "         ";
  private static final int MOST_TITLE = 40;
  private static final int MOST_CAUSE = 34;
  private static final int MOST_STATION = 22;

  private final Assessment assessment;
  private final Headline headline;
  private final Page page = new Page();

  private Brief(Assessment assessment, Map<String, List<String>> mayAuthorise) {
    this.assessment = assessment;
    this.headline = Headline.of(assessment, mayAuthorise);
  }

  /**
   * The brief.
   *
   * @param all adds every cause, group, station, object, entry and option
   */
  public static String of(Assessment assessment, boolean all) {
    return of(assessment, all, Map.of());
  }

  /**
   * The brief.
   *
   * @param mayAuthorise by station, who may authorise a transmission there
   */
  public static String of(
      Assessment assessment, boolean all, Map<String, List<String>> mayAuthorise) {
    Brief brief = new Brief(assessment, mayAuthorise);
    brief.head();
    brief.next();
    brief.then();
    brief.page.blank();
    brief.fits();
    brief.byItself();
    brief.goingOn();
    brief.doubts();
    if (all) {
      BriefDetail.add(assessment, brief.page);
    }
    return brief.page.toString();
  }

  private void head() {
    page.prose("", heading(assessment));
    page.blank();
  }

  /** Name, time and how long it has been silent. */
  static String heading(Assessment assessment) {
    String start = assessment.mission() + " · " + Words.yearAndMinute(assessment.now()) + " · ";
    return start + silence(assessment);
  }

  /** {@code silent for 6 d 4 h · 11 passes without a sound}. */
  static String silence(Assessment assessment) {
    Silence silence = assessment.silence();
    Instant now = assessment.now();
    if (now.isBefore(assessment.separation())) {
      Duration until = Duration.between(now, assessment.separation());
      return "separation in " + Words.span(until);
    }
    String since =
        silence
            .lastHeard()
            .map(t -> "silent for " + Words.span(Duration.between(t, now)))
            .orElse(
                "never heard in "
                    + Words.span(Duration.between(assessment.separation(), now))
                    + " since separation");
    int passes = silence.silentPasses();
    return passes == 0 ? since : since + " · " + Words.count(passes, "pass") + " without a sound";
  }

  private void next() {
    Optional<Window> window = headline.window();
    if (window.isEmpty()) {
      page.prose("  Next   ", headline.sentence());
      page.prose(INDENT, headline.why());
      return;
    }
    Window next = window.get();
    Option option = Options.planned(next).orElseThrow();
    String place =
        "  Next   "
            + time(next)
            + "  "
            + Page.cut(next.station(), MOST_TITLE)
            + "  "
            + Math.round(next.maxElevationDeg())
            + "°  "
            + Words.inSentence(headline.when());
    String numbers =
        "beacon on "
            + Words.percent(next.beaconOn(), next.beaconOnError())
            + "   we hear it "
            + Words.percent(option.heardThisPass(), option.heardThisPassError())
            + "   battery "
            + Words.hundredths(next.socP25())
            + "–"
            + Words.hundredths(next.socP75())
            + " %";
    if (place.length() + 3 + numbers.length() <= Page.WIDTH) {
      page.line(place + "   " + numbers);
    } else {
      page.line(place);
      page.line(INDENT + numbers);
    }
    String task = Words.sentenceCase(headline.task()) + ".";
    String caution = headline.caution().isEmpty() ? "" : " " + headline.caution();
    page.prose(INDENT, task + caution);
    page.prose(INDENT, headline.why());
  }

  private void then() {
    List<Window> planned = Options.planned(assessment);
    List<Window> later = planned.stream().skip(1).limit(THEN).toList();
    List<String> times = later.stream().map(this::time).toList();
    List<String> stations = later.stream().map(Window::station).toList();
    for (int i = 0; i < later.size(); i++) {
      Window window = later.get(i);
      Option option = Options.planned(window).orElseThrow();
      String line =
          (i == 0 ? "  Then   " : INDENT)
              + Page.right(times.get(i), Page.widest(times, Page.WIDTH))
              + "  "
              + Page.left(stations.get(i), Page.widest(stations, MOST_STATION))
              + "  "
              + Page.right(Math.round(window.maxElevationDeg()) + "°", 3)
              + "  "
              + Page.right(Words.percent(option.heardThisPass()), 9)
              + "  ";
      page.line(line + Page.cut(Words.brief(option.title()), Page.WIDTH - line.length()));
    }
    long more = planned.size() - 1L - later.size();
    if (more > 0) {
      page.line(INDENT + "and " + more + " more planned; see --all");
    }
  }

  /** The AOS; with the day when it is not today. */
  private String time(Window window) {
    String clock = Words.clock(window.aos());
    return date(window.aos()).equals(date(assessment.now()))
        ? clock
        : Words.day(window.aos()) + " " + clock;
  }

  private static LocalDate date(Instant time) {
    return LocalDate.ofInstant(time, ZoneOffset.UTC);
  }

  private void fits() {
    List<StillFits.Row> rows = StillFits.rows(assessment);
    List<StillFits.Row> shown = StillFits.shown(rows, FITS, LEAST);
    List<String> titles = new ArrayList<>(shown.stream().map(StillFits.Row::title).toList());
    titles.add("What still fits");
    int width = Page.widest(titles, MOST_CAUSE);
    page.line(
        "  " + Page.left("What still fits", width + 2) + "  at start     now      what would tell");
    for (StillFits.Row row : shown) {
      String label =
          "    "
              + Page.left(row.title(), width)
              + Page.right(Words.hundredths(row.start()), 6)
              + " %"
              + Page.right(Words.hundredths(row.now()), 8)
              + Page.left(spread(row.error()), 5)
              + "  ";
      page.prose(label, row.tell());
    }
    rest(rows.stream().filter(r -> !shown.contains(r)).toList());
    page.blank();
  }

  private static String spread(double error) {
    return Math.round(100 * error) >= 1 ? " ± " + Math.round(100 * error) : " %";
  }

  private void rest(List<StillFits.Row> hidden) {
    List<String> parts = new ArrayList<>();
    if (!hidden.isEmpty()) {
      String most = Words.percent(hidden.get(0).now());
      parts.add("and " + Words.count(hidden.size(), "other") + ", the likeliest " + most);
    }
    if (assessment.remainder() >= LEAST / 2) {
      parts.add(
          "three or more things at once are not worked out: "
              + Words.percent(assessment.remainderAtStart())
              + " at start, "
              + Words.percent(assessment.remainder())
              + " now if they fit as pairs do");
    }
    if (!parts.isEmpty()) {
      page.prose("    ", String.join("; ", parts));
    }
  }

  private void byItself() {
    String text = Recovery.sentences(assessment);
    if (!text.isEmpty()) {
      String label = "  By itself before " + Words.day(Options.end(assessment)) + ": ";
      page.hanging(label, text, INDENT.length());
    }
  }

  private void goingOn() {
    page.hanging("  Going on: ", goingOn(assessment), INDENT.length());
  }

  /** Two steps of effort and what each adds. */
  static String goingOn(Assessment assessment) {
    List<GoingOn> points =
        assessment.goingOn().stream().filter(p -> p.costHours() > 0).collect(Collectors.toList());
    if (points.isEmpty()) {
      return "no hours are planned in the next " + Words.days(assessment.horizonDays()) + ".";
    }
    GoingOn last = points.get(points.size() - 1);
    GoingOn middle = points.get(0);
    for (GoingOn point : points) {
      double distance = Math.abs(point.costHours() - last.costHours() / 2);
      if (distance < Math.abs(middle.costHours() - last.costHours() / 2)) {
        middle = point;
      }
    }
    String first =
        "the next "
            + Words.hours(middle.costHours())
            + " of people's time hear it with "
            + Words.percent(middle.heard());
    double more = last.costHours() - middle.costHours();
    if (more <= 0) {
      return first + ".";
    }
    return first
        + "; the "
        + Words.hours(more)
        + " after that add "
        + Words.percent(Math.max(0, last.heard() - middle.heard()))
        + ".";
  }

  private void doubts() {
    List<String> doubts = Doubts.of(assessment);
    if (!doubts.isEmpty()) {
      page.blank();
    }
    doubts.forEach(doubt -> page.prose("  Beware: ", doubt));
    assessment.warnings().forEach(w -> page.prose("  Warning: ", w));
  }
}
