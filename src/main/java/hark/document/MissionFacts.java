package hark.document;

import hark.ensemble.BeaconRadio;
import hark.ensemble.OrbitSource;
import hark.ensemble.ReceiverRadio;
import hark.mission.Mission;
import hark.orbit.ElementSet;
import hark.station.Station;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What documents say of a mission beside its assessment. */
public record MissionFacts(
    List<BeaconRadio> beacons,
    ReceiverRadio receiver,
    List<Station> stations,
    List<OrbitSource> sources) {

  /** Those of a mission. */
  public static MissionFacts of(Mission mission) {
    return new MissionFacts(
        mission.beacons(), mission.receiver(), mission.stations(), mission.sources());
  }

  /** By station, who may authorise a transmission under its licence; for {@link Headline}. */
  public Map<String, List<String>> mayAuthorise() {
    return stations.stream()
        .filter(s -> s.transmit().isPresent())
        .collect(
            Collectors.toMap(
                Station::name, s -> s.transmit().orElseThrow().licence().mayAuthorise()));
  }

  Optional<Station> station(String name) {
    return stations.stream().filter(s -> s.name().equals(name)).findFirst();
  }

  /**
   * The newest element set of an object.
   *
   * @param ageDays at the time asked for; negative when the epoch lies after it
   * @param alongTrackSdSeconds how far the object may be early or late then
   */
  record Elements(ElementSet set, double ageDays, double alongTrackSdSeconds) {}

  Optional<Elements> elements(String object, Instant at) {
    return sources.stream()
        .flatMap(s -> s.sets().stream().map(set -> elements(s, set, at)))
        .filter(e -> e.set().objectId().equals(object))
        .max(Comparator.comparing(e -> e.set().epoch()));
  }

  private static Elements elements(OrbitSource source, ElementSet set, Instant at) {
    double days = Duration.between(set.epoch(), at).toMillis() / 86_400_000.0;
    return new Elements(set, days, source.alongTrack().of(set).sdSeconds(Math.max(0, days)));
  }
}
