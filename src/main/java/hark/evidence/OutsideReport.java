package hark.evidence;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Someone else listened, and told.
 *
 * @param station one of the mission's stations, or any name beside a place
 * @param place where; empty means at the station named
 * @param sensitivityDb better than the mission's first station, dB
 * @param clockSdSeconds standard deviation of the listener's clock, s
 * @param trust how far the report is believed, 0…1
 */
public record OutsideReport(
    Optional<String> station,
    Optional<Place> place,
    Instant from,
    Instant to,
    boolean heard,
    OptionalDouble sensitivityDb,
    OptionalDouble clockSdSeconds,
    OptionalDouble trust)
    implements Spanned {
  /** Refuses a report from nowhere and numbers out of their range. */
  public OutsideReport {
    if (station.isEmpty() && place.isEmpty()) {
      throw new IllegalArgumentException("a report from nowhere");
    }
    Refuse.backwards(from, to);
    Refuse.notFinite("sensitivity", sensitivityDb);
    Refuse.negative("spread of the clock", clockSdSeconds);
    trust.ifPresent(t -> Refuse.outside("trust", t, 0, 1));
  }

  /** A place on Earth, degrees north and east. */
  public record Place(double latitudeDeg, double longitudeDeg) {
    /** Refuses places that are not on Earth. */
    public Place {
      Refuse.outside("latitude", latitudeDeg, -90, 90);
      Refuse.outside("longitude", longitudeDeg, -180, 360);
    }
  }

  @Override
  public String kind() {
    return "outside-report";
  }
}
