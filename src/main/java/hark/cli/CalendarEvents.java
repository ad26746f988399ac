package hark.cli;

import hark.assessment.Assessment;
import hark.document.PassCalendar;
import hark.plan.Procedure;
import hark.station.Pass;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Turns passes, or the windows of an assessment, into entries of a calendar. */
final class CalendarEvents {
  private static final Comparator<Pass> BY_STATION =
      Comparator.comparing(Pass::site).thenComparing(Pass::aos);

  private CalendarEvents() {}

  /** One entry for passes of several objects over one station that overlap. */
  static List<PassCalendar.Event> ofPasses(List<Pass> passes) {
    List<List<Pass>> groups = new ArrayList<>();
    for (Pass pass : passes.stream().sorted(BY_STATION).toList()) {
      List<Pass> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
      boolean together =
          !last.isEmpty()
              && last.get(0).site().equals(pass.site())
              && last.stream().anyMatch(other -> pass.aos().isBefore(other.los()));
      if (!together) {
        last = new ArrayList<>();
        groups.add(last);
      }
      last.add(pass);
    }
    return groups.stream()
        .map(CalendarEvents::event)
        .sorted(Comparator.comparing(PassCalendar.Event::from))
        .toList();
  }

  private static PassCalendar.Event event(List<Pass> together) {
    Pass highest =
        together.stream().max(Comparator.comparingDouble(Pass::maxElevationDeg)).orElseThrow();
    Pass first = together.get(0);
    return new PassCalendar.Event(
        first.site() + "-" + first.aos().truncatedTo(ChronoUnit.SECONDS),
        first.site(),
        first.aos(),
        together.stream().map(Pass::los).max(Comparator.naturalOrder()).orElseThrow(),
        String.format(Locale.ROOT, "%s, pass up to %.0f°", first.site(), highest.maxElevationDeg()),
        together.stream().map(CalendarEvents::line).collect(Collectors.joining("\n")),
        false);
  }

  private static String line(Pass pass) {
    return pass.objectId()
        + ": "
        + pass.aos().truncatedTo(ChronoUnit.SECONDS)
        + " to "
        + pass.los().truncatedTo(ChronoUnit.SECONDS);
  }

  /** The windows in which the plan does something. */
  static List<PassCalendar.Event> ofPlan(Assessment assessment, List<Procedure> procedures) {
    return assessment.windows().stream()
        .filter(window -> window.planned().isPresent())
        .map(window -> event(window, procedures))
        .toList();
  }

  private static PassCalendar.Event event(Assessment.Window window, List<Procedure> procedures) {
    String id = window.planned().orElseThrow();
    String title =
        procedures.stream()
            .filter(procedure -> procedure.id().equals(id))
            .map(Procedure::title)
            .findFirst()
            .orElse(id);
    String why =
        window.options().stream()
            .filter(option -> option.procedure().equals(id))
            .map(Assessment.Option::why)
            .findFirst()
            .orElse("");
    return new PassCalendar.Event(
        window.id(),
        window.station(),
        window.geometry().stream()
            .map(Assessment.Geometry::aos)
            .min(Comparator.naturalOrder())
            .orElse(window.aos()),
        window.geometry().stream()
            .map(Assessment.Geometry::los)
            .max(Comparator.naturalOrder())
            .orElse(window.los()),
        String.format(
            Locale.ROOT,
            "%s: %s (pass up to %.0f°)",
            window.station(),
            title,
            window.maxElevationDeg()),
        why,
        true);
  }
}
