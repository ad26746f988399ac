package hark.ensemble;

import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.orbit.EarthModel;
import hark.station.Station;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Everything a diagnosis depends on.
 *
 * @param evidence entries in force, in the order of time
 * @param bodiesPerSet bodies for each event set of order ≤ 1, a multiple of six, at least 60
 */
public record DiagnosisInput(
    Instant separation,
    Instant now,
    Instant end,
    BodyPrior body,
    List<BeaconRadio> beacons,
    ReceiverRadio receiver,
    List<Candidate> candidates,
    List<Station> stations,
    List<Cause> causes,
    List<Entry> evidence,
    EarthModel earth,
    int bodiesPerSet,
    long seed) {
  /** Refuses times out of order and too few bodies. */
  public DiagnosisInput {
    if (!end.isAfter(now)) {
      throw new IllegalArgumentException("the horizon must lie after now");
    }
    if (bodiesPerSet < Draws.GROUPS || bodiesPerSet % Draws.GROUPS != 0) {
      throw new IllegalArgumentException(
          bodiesPerSet + " bodies a set is not a multiple of " + Draws.GROUPS);
    }
  }

  /** The same with another horizon. */
  DiagnosisInput until(Instant otherEnd) {
    return at(now, otherEnd, evidence);
  }

  /** The same mission at another time, with another horizon and another record. */
  public DiagnosisInput at(Instant otherNow, Instant otherEnd, List<Entry> record) {
    return new DiagnosisInput(
        separation,
        otherNow,
        otherEnd,
        body,
        beacons,
        receiver,
        candidates,
        stations,
        causes,
        record,
        earth,
        bodiesPerSet,
        seed);
  }

  /** Seconds since separation. */
  public double seconds(Instant time) {
    return Duration.between(separation, time).toNanos() / 1e9;
  }

  /** The instant so many seconds after separation, to the millisecond. */
  public Instant instant(double seconds) {
    return separation.plusMillis(Math.round(seconds * 1000));
  }

  /** Index of a station by name. */
  public int stationIndex(String name) {
    for (int s = 0; s < stations.size(); s++) {
      if (stations.get(s).name().equals(name)) {
        return s;
      }
    }
    throw new IllegalArgumentException("no station is called " + name);
  }

  /** Index of the heaviest candidate that has a catalogue number. */
  public int likeliestCandidate() {
    int best = 0;
    for (int k = 1; k < candidates.size(); k++) {
      boolean heavier = candidates.get(k).prior() > candidates.get(best).prior();
      if (heavier && !candidates.get(k).objectId().equals(Candidate.NONE)) {
        best = k;
      }
    }
    return best;
  }

  /** Index of a candidate by its catalogue number; the likeliest when it is not among them. */
  int candidateIndex(String objectId) {
    return findCandidate(objectId).orElse(likeliestCandidate());
  }

  /** Index of a candidate by its catalogue number. */
  OptionalInt findCandidate(String objectId) {
    return IntStream.range(0, candidates.size())
        .filter(k -> candidates.get(k).objectId().equals(objectId))
        .findFirst();
  }

  /**
   * True when a call sign was read that is none of our beacons'; unknown call signs of our own say
   * nothing.
   */
  boolean isForeign(Evidence.Heard heard) {
    List<String> ours =
        beacons.stream().flatMap(beacon -> beacon.telling().callSign().stream()).toList();
    return heard.callSign().isPresent()
        && !ours.isEmpty()
        && ours.stream().noneMatch(heard.callSign().get()::equalsIgnoreCase);
  }
}
