package hark.document;

import hark.assessment.Assessment.GoingOn;
import hark.assessment.ReviewCase;
import hark.assessment.ReviewCase.Dated;
import hark.assessment.ReviewCase.Effort;
import hark.assessment.ReviewCase.LastDate;
import hark.assessment.ReviewCase.Shift;
import hark.assessment.ReviewCase.Step;
import hark.assessment.ReviewCase.Unheard;
import hark.assessment.ReviewCase.Watch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The case for going on in words, part by part, whatever it is printed on. Words follow the
 * numbers; none of them decides.
 */
final class CaseText {
  /** Where the curve is printed, people's hours. */
  private static final double[] MARKS_HOURS = {0.5, 1, 2, 5, 10, 20, 40};

  /** A part of the page: prose, then a table if there is one, then points. */
  record Part(
      String title,
      List<String> prose,
      List<String> columns,
      List<List<String>> rows,
      List<String> points) {}

  private final ReviewCase made;

  CaseText(ReviewCase made) {
    this.made = made;
  }

  /** The name of the page. */
  String title() {
    return "The case for going on: " + made.mission();
  }

  /** The sentence on top. */
  String headline() {
    return "Until "
        + Words.day(made.until())
        + ", "
        + Words.hours(made.hours())
        + " of people's time hear it with "
        + Words.percent(made.found(), made.foundError())
        + (made.found() - made.byListening() > 0.005
            ? ", by listening alone with " + Words.percent(made.byListening()) + "."
            : ".")
        + " "
        + made.arguments().defensible();
  }

  List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    parts.add(effort());
    parts.add(dates());
    parts.add(unheard());
    made.watch().ifPresent(kept -> parts.add(watch(kept)));
    parts.add(shifts());
    parts.add(points("What speaks for going on", made.arguments().goingOn()));
    parts.add(points("What speaks for stopping", made.arguments().stopping()));
    parts.add(points("What this rests on", made.assumptions()));
    return parts;
  }

  /** Last line: who decides. */
  String close() {
    return "This states a case; people decide. Computed for "
        + Words.yearAndMinute(made.now())
        + "; weights are shares of everything that still fits the record, and beliefs, not"
        + " measurements.";
  }

  private static Part points(String title, List<String> points) {
    List<String> said = points.isEmpty() ? List.of("Nothing in these numbers.") : points;
    return new Part(title, List.of(), List.of(), List.of(), said);
  }

  private Part effort() {
    List<List<String>> rows = new ArrayList<>();
    for (GoingOn mark : marks()) {
      rows.add(List.of(Words.hours(mark.costHours()), Words.percent(mark.heard())));
    }
    return new Part("What effort finds", effortProse(), List.of("hours", "found"), rows, List.of());
  }

  private List<String> effortProse() {
    List<String> prose = new ArrayList<>();
    List<String> steps = new ArrayList<>();
    for (Step step : made.steps()) {
      String what = Words.hours(step.toHours() - step.fromHours());
      steps.add(
          (steps.isEmpty() ? "The next " : "the ")
              + what
              + (steps.isEmpty() ? " of people's time find " : " after that add ")
              + Words.percent(step.adds()));
    }
    if (!steps.isEmpty()) {
      prose.add(String.join("; ", steps) + ".");
    }
    Effort effort = made.effort();
    String little = Words.hours(effort.perHours()) + " more add less than " + gain(effort);
    effort
        .fromHours()
        .ifPresent(
            from ->
                prose.add(
                    "From "
                        + Words.hours(from)
                        + " on, "
                        + little
                        + " before "
                        + Words.day(made.until())
                        + "."));
    prose.add(
        "A month after this look ahead, at the same pace ("
            + Words.hours(effort.monthHours())
            + "), could add at most "
            + Words.percent(effort.monthAtMost())
            + ": all that sends by then and that the plan does not find.");
    return prose;
  }

  private static String gain(Effort effort) {
    return Words.decimal(100 * effort.gain(), 1) + " %";
  }

  /** The first point of the curve at or after each mark, and its end. */
  private List<GoingOn> marks() {
    List<GoingOn> curve = made.curve();
    List<GoingOn> marks = new ArrayList<>();
    for (double hours : MARKS_HOURS) {
      curve.stream()
          .filter(point -> point.costHours() >= hours)
          .findFirst()
          .filter(point -> !marks.contains(point))
          .ifPresent(marks::add);
    }
    if (!curve.isEmpty() && !marks.contains(curve.get(curve.size() - 1))) {
      marks.add(curve.get(curve.size() - 1));
    }
    return marks;
  }

  private Part dates() {
    List<List<String>> rows = new ArrayList<>();
    for (Dated each : made.dates()) {
      rows.add(
          List.of(
              when(each),
              each.what(),
              Double.isNaN(each.weight()) ? "not known" : Words.percent(each.weight()),
              each.basis() + each.procedure().map(id -> "; see " + id).orElse("")));
    }
    List<String> prose = new ArrayList<>();
    if (rows.isEmpty()) {
      prose.add("No date within a year makes anything more reachable.");
    }
    made.orbit().ifPresent(orbit -> prose.add(orbit(orbit)));
    return new Part(
        "What time brings", prose, List.of("date", "what", "weight", "rests on"), rows, List.of());
  }

  private static String when(Dated each) {
    String spread = each.spreadDays() >= 1 ? " ± " + Math.round(each.spreadDays()) + " d" : "";
    String from = Words.dayAndYear(each.from()) + spread;
    return each.until()
        .map(Words::dayAndYear)
        .filter(until -> !until.equals(Words.dayAndYear(each.from())))
        .map(until -> from + " to " + until)
        .orElse(from);
  }

  private static String orbit(LastDate orbit) {
    String from =
        "The last date is the orbit's: from "
            + Math.round(orbit.heightKm())
            + " km it ends between "
            + Words.monthAndYear(orbit.early())
            + " (active Sun, more drag than believed) and ";
    String to =
        orbit
            .late()
            .map(late -> Words.monthAndYear(late) + " (quiet Sun, less drag)")
            .orElse("more than a century from now (quiet Sun)");
    return from
        + to
        + orbit
            .middle()
            .map(middle -> ", in the mean of solar cycles " + Words.monthAndYear(middle))
            .orElse("")
        + ".";
  }

  private Part unheard() {
    List<List<String>> rows = new ArrayList<>();
    for (Unheard group : made.unheard()) {
      rows.add(
          List.of(
              Words.percent(group.weight()),
              group.sentence(),
              String.join(", ", group.parts().stream().map(CaseText::part).toList())));
    }
    if (made.notWorkedOut() > 0) {
      rows.add(
          List.of(
              Words.percent(made.notWorkedOut()),
              "Three or more things are wrong at once; that is not worked out",
              ""));
    }
    return new Part(
        "What would have to be true",
        List.of("Every possibility that still fits, by what would show it."),
        List.of("weight", "what is true then", "mostly"),
        rows,
        List.of());
  }

  private static String part(ReviewCase.Part part) {
    return Words.inSentence(part.title()) + " " + Words.percent(part.weight());
  }

  private Part watch(Watch kept) {
    String how =
        kept.unattended()
            ? "Let " + kept.station() + " record by itself in all its "
            : "Attend at " + kept.station() + " the best pass of each day, ";
    String catches =
        kept.catches().isEmpty()
            ? ""
            : " It would find " + Words.list(kept.catches().stream().map(CaseText::part).toList());
    return new Part(
        "The cheapest watch to keep",
        List.of(
            how
                + Words.count(kept.windows(), "window")
                + " until "
                + Words.day(made.until())
                + ": "
                + Words.hours(kept.hoursPerWeek())
                + " of people's time a week, and "
                + Words.percent(kept.found())
                + " to hear it by then, where the plan has "
                + Words.percent(made.found())
                + "."
                + (catches.isEmpty() ? "" : catches + ".")),
        List.of(),
        List.of(),
        List.of());
  }

  private Part shifts() {
    List<List<String>> rows = new ArrayList<>();
    for (Shift shift : made.shifts()) {
      rows.add(
          List.of(
              Words.sentenceCase(shift.assumption()),
              shift.lowWords() + ": " + Words.percent(shift.low()),
              shift.highWords() + ": " + Words.percent(shift.high())));
    }
    return new Part(
        "How far it hangs on what was assumed",
        List.of("The " + Words.percent(made.found()) + " above would be, all else equal:"),
        List.of("assumption", "one way", "the other way"),
        rows,
        List.of());
  }

  /** How long it has been silent. */
  Optional<String> silence() {
    return made.silence()
        .lastHeard()
        .map(
            heard ->
                "Last heard "
                    + Words.yearAndMinute(heard)
                    + "; "
                    + Words.count(made.silence().silentPasses(), "pass")
                    + " without a sound since.");
  }
}
