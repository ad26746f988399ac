package hark.document;

import hark.assessment.Assessment.FaultView;
import hark.assessment.Assessment.StationView;
import java.util.Optional;

/** What would be wrong with a station that does not work as believed, in one sentence. */
final class StationWords {
  /** A fault this much likelier than the next is named alone. Judged. */
  private static final double CLEAR = 1.25;

  private StationWords() {}

  /** {@code if not, most likely wrong frequency}; empty when there is no fault to name. */
  static Optional<String> ifNot(StationView station) {
    if (station.faults().isEmpty() || !(station.works() < 1)) {
      return Optional.empty();
    }
    FaultView first = station.faults().get(0);
    boolean clear =
        station.faults().size() == 1
            || first.posterior() > CLEAR * station.faults().get(1).posterior();
    String likeliest =
        clear ? first.title() : first.title() + " or " + station.faults().get(1).title();
    return Optional.of("if not, most likely: " + likeliest);
  }
}
