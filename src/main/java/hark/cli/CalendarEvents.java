package hark.cli;

import hark.document.PassCalendar;
import hark.station.Pass;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Turns passes into entries of a calendar. */
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
}
