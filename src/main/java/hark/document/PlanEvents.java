package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.Geometry;
import hark.assessment.Assessment.Option;
import hark.assessment.Assessment.Window;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The windows in which the plan does something, as entries of a calendar. */
public final class PlanEvents {
  private PlanEvents() {}

  /** One for each planned window, from the first candidate's rise to the last one's set. */
  public static List<PassCalendar.Event> of(Assessment assessment) {
    return assessment.windows().stream()
        .filter(window -> window.planned().isPresent())
        .map(PlanEvents::event)
        .toList();
  }

  private static PassCalendar.Event event(Window window) {
    String id = window.planned().orElseThrow();
    Optional<Option> option =
        window.options().stream().filter(each -> each.procedure().equals(id)).findFirst();
    return new PassCalendar.Event(
        window.id(),
        window.station(),
        window.geometry().stream()
            .map(Geometry::aos)
            .min(Comparator.naturalOrder())
            .orElse(window.aos()),
        window.geometry().stream()
            .map(Geometry::los)
            .max(Comparator.naturalOrder())
            .orElse(window.los()),
        String.format(
            Locale.ROOT,
            "%s: %s (pass up to %.0f°)",
            window.station(),
            option.map(Option::title).orElse(id),
            window.maxElevationDeg()),
        option.map(Option::why).orElse(""),
        true);
  }
}
