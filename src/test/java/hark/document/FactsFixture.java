package hark.document;

import hark.ensemble.BeaconRadio;
import hark.ensemble.OrbitSource;
import hark.ensemble.ReceiverRadio;
import hark.ensemble.Uncertain;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.station.HorizonMask;
import hark.station.Site;
import hark.station.Station;
import hark.station.Station.Cost;
import hark.station.Station.Licence;
import hark.station.Station.Polarisation;
import hark.station.Station.Receive;
import hark.station.Station.Transmit;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the invented mission of the assessment fixture has on the ground and in its files. */
final class FactsFixture {
  private static final String ELEMENTS =
      """
      [{"OBJECT_NAME":"OBJECT A","NORAD_CAT_ID":98101,"EPOCH":"2026-11-12T10:42:20",
      "MEAN_MOTION":15.2,"ECCENTRICITY":0.001,"INCLINATION":97.4,"RA_OF_ASC_NODE":180,
      "ARG_OF_PERICENTER":70,"MEAN_ANOMALY":290,"BSTAR":0.0001,"MEAN_MOTION_DOT":0,
      "MEAN_MOTION_DDOT":0,"EPHEMERIS_TYPE":0,"CLASSIFICATION_TYPE":"U","ELEMENT_SET_NO":1,
      "REV_AT_EPOCH":1}]
      """;

  private FactsFixture() {}

  static MissionFacts facts() {
    List<ElementSet> sets = ElementSets.parse("elements.json", ELEMENTS);
    OrbitSource.AlongTrack drift = new OrbitSource.AlongTrack(3, 2, 0);
    return new MissionFacts(
        List.of(beacon()),
        new ReceiverRadio(437.2e6, -110, 0, true, ReceiverRadio.Authentication.NONE, false),
        List.of(fenHill(), quay()),
        List.of(new OrbitSource(sets, drift, Map.of("98101", 0.5))));
  }

  private static BeaconRadio beacon() {
    return new BeaconRadio(
        "main",
        437.2e6,
        Uncertain.of(10),
        Uncertain.of(0),
        Polarisation.LINEAR,
        1200,
        BeaconRadio.Form.FRAMES,
        10,
        4);
  }

  private static Station fenHill() {
    Licence licence =
        new Licence(
            "the club",
            List.of(new double[] {435, 438}),
            Optional.of(Instant.parse("2027-01-01T00:00:00Z")),
            List.of("lead", "deputy"));
    return station("Fen Hill", Optional.of(new Transmit(50, 12, licence)), false);
  }

  private static Station quay() {
    return station("Quay", Optional.empty(), true);
  }

  private static Station station(String name, Optional<Transmit> transmit, boolean unattended) {
    return new Station(
        new Site(name, 52, 0, 10),
        HorizonMask.flat(5),
        new Receive(12, 1500, List.of(), 40, Polarisation.RHCP, 5000, unattended),
        transmit,
        0.2,
        0.95,
        new Cost(0.3, 0.4, 1.5));
  }
}
