package hark.assessment;

import hark.evidence.CommandSent;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.plan.RecordedHours;
import hark.station.Station;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** People's hours that the record says were spent in the running week. */
final class SpentHours {
  private SpentHours() {}

  /** Hours since Monday 00:00 UTC, by what each station costs. */
  static double of(List<Station> stations, List<Entry> evidence, Instant now) {
    double sum = 0;
    for (Station station : stations) {
      List<Instant> sat = new ArrayList<>();
      for (Entry entry : evidence) {
        satAt(entry.evidence(), station.name()).ifPresent(sat::add);
      }
      sum += RecordedHours.thisWeek(station, sat, now);
    }
    return sum;
  }

  private static Optional<Instant> satAt(Evidence evidence, String station) {
    if (evidence instanceof Evidence.NothingHeard silence && silence.station().equals(station)) {
      return Optional.of(silence.from());
    }
    if (evidence instanceof Evidence.Heard heard && heard.station().equals(station)) {
      return Optional.of(heard.from());
    }
    boolean here =
        (evidence instanceof CommandSent sent && sent.station().equals(station))
            || (evidence instanceof Evidence.StationCheck check && check.station().equals(station));
    return here ? Optional.of(evidence.at()) : Optional.empty();
  }
}
