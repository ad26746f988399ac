package hark.trial.follow;

import hark.ensemble.OrbitSource;
import hark.mission.Mission;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.orbit.Sun;
import hark.station.Site;
import hark.station.Station;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Orbits and places of stations for a mission's own spacecraft: sun-synchronous ones by local time,
 * inclined ones by height, over one station, two near each other, or two on opposite sides of the
 * Earth, whose windows alternate.
 */
final class Orbits {
  /** WGS-72, as SGP4 has it: m³/s² and m. */
  private static final double MU = 3.986008e14;

  private static final double EARTH_METERS = 6_378_135;
  private static final double J2 = 1.082616e-3;
  private static final double DAY = 86_400;

  /** Turn of the node that keeps pace with the Sun, rad/s. */
  private static final double SUN_PACE = 2 * Math.PI / (365.2422 * DAY);

  /** Set by the newest elements of a launch: neighbours come so much later, s. */
  private static final double[] NEIGHBOURS = {0, 45, -120};

  private static final double[] PRIORS = {0.60, 0.22, 0.13};

  /** New element sets come every day: the error stays as it is from the first on, s. */
  private static final double ALONG_TRACK_SECONDS = 4;

  private Orbits() {}

  /** Where a mission's stations stand. */
  enum Stations {
    /** The first alone. */
    ONE,
    /** As the mission has them. */
    AS_THEY_ARE,
    /** The second one on the other side of the Earth. */
    OPPOSITE
  }

  /**
   * One of them.
   *
   * @param inclinationDeg NaN for sun-synchronous
   * @param localHours of the ascending node
   */
  record Orbit(double heightKm, double inclinationDeg, double localHours, Stations stations) {
    String name() {
      String way =
          Double.isNaN(inclinationDeg)
              ? String.format(Locale.ROOT, "sun-synchronous %.1f h", localHours)
              : String.format(Locale.ROOT, "%.1f°, node at %.0f h", inclinationDeg, localHours);
      String where =
          stations.name().toLowerCase(Locale.ROOT).replace('_', ' ').replace("one", "one station");
      return String.format(Locale.ROOT, "%.0f km, %s, stations %s", heightKm, way, where)
          .replace("stations one station", "one station");
    }
  }

  /** All of them; neighbours in the list differ, so that a few campaigns see a mixture. */
  static List<Orbit> all() {
    double sun = Double.NaN;
    return List.of(
        new Orbit(520, sun, 22.5, Stations.AS_THEY_ARE),
        new Orbit(420, 51.6, 3, Stations.OPPOSITE),
        new Orbit(550, sun, 6, Stations.ONE),
        new Orbit(600, 97.8, 13, Stations.OPPOSITE),
        new Orbit(480, 65, 17, Stations.AS_THEY_ARE),
        new Orbit(500, sun, 10.5, Stations.OPPOSITE),
        new Orbit(420, 51.6, 15, Stations.ONE),
        new Orbit(700, sun, 18, Stations.AS_THEY_ARE),
        new Orbit(540, 82, 8, Stations.OPPOSITE),
        new Orbit(450, sun, 13.5, Stations.ONE),
        new Orbit(560, 60, 21, Stations.OPPOSITE),
        new Orbit(500, sun, 9.5, Stations.AS_THEY_ARE),
        new Orbit(620, 74, 5, Stations.ONE),
        new Orbit(530, sun, 12, Stations.OPPOSITE),
        new Orbit(400, 51.6, 9, Stations.AS_THEY_ARE),
        new Orbit(580, sun, 16, Stations.ONE),
        new Orbit(500, 45, 1, Stations.OPPOSITE),
        new Orbit(480, sun, 7.5, Stations.AS_THEY_ARE),
        new Orbit(650, 98.5, 20, Stations.ONE),
        new Orbit(510, sun, 0, Stations.OPPOSITE),
        new Orbit(440, 55, 12, Stations.AS_THEY_ARE),
        new Orbit(600, sun, 4.5, Stations.OPPOSITE));
  }

  /** The mission on another orbit, over stations elsewhere. */
  static Mission of(Mission mission, Orbit orbit) {
    return mission.elsewhere(
        mission.name() + ", " + orbit.name(),
        List.of(source(mission, orbit)),
        stations(mission.stations(), orbit.stations()));
  }

  private static List<Station> stations(List<Station> all, Stations where) {
    if (where == Stations.AS_THEY_ARE) {
      return all;
    }
    List<Station> stations = new ArrayList<>(List.of(all.get(0)));
    if (where == Stations.OPPOSITE && all.size() > 1) {
      stations.add(opposite(all.get(1), all.get(0).site()));
    }
    return List.copyOf(stations);
  }

  /** Half a turn round and as far south as the first is north. */
  private static Station opposite(Station station, Site first) {
    double longitude = first.longitudeDeg() > 0 ? -180 : 180;
    Site there =
        new Site(
            station.name(),
            -first.latitudeDeg(),
            first.longitudeDeg() + longitude,
            station.site().altitudeMeters());
    return new Station(
        there,
        station.mask(),
        station.receive(),
        station.transmit(),
        station.rotator(),
        station.doubts(),
        station.cost(),
        station.use());
  }

  private static OrbitSource source(Mission mission, Orbit orbit) {
    List<ElementSet> sets = new ArrayList<>();
    Map<String, Double> weights = new LinkedHashMap<>();
    for (int k = 0; k < NEIGHBOURS.length; k++) {
      String id = String.valueOf(90001 + k);
      weights.put(id, PRIORS[k]);
      sets.add(elements(mission, orbit, id, NEIGHBOURS[k]));
    }
    return new OrbitSource(sets, new OrbitSource.AlongTrack(ALONG_TRACK_SECONDS, 0, 0), weights);
  }

  /** A circular orbit whose object comes so much later. */
  private static ElementSet elements(Mission mission, Orbit orbit, String id, double lateSeconds) {
    double axis = EARTH_METERS + 1000 * orbit.heightKm();
    double pace = Math.sqrt(MU / (axis * axis * axis));
    double inclination =
        Double.isNaN(orbit.inclinationDeg())
            ? sunSynchronousDeg(axis, pace)
            : orbit.inclinationDeg();
    Sun.Place sun = Sun.at(mission.separation());
    double noon = Math.toDegrees(Math.atan2(sun.y(), sun.x()));
    double node = turned(noon + 15 * (orbit.localHours() - 12));
    double anomaly = turned(80 - Math.toDegrees(pace * lateSeconds));
    String omm =
        String.format(
            Locale.ROOT,
            "{\"NORAD_CAT_ID\":\"%s\",\"CENTER_NAME\":\"EARTH\",\"REF_FRAME\":\"TEME\","
                + "\"TIME_SYSTEM\":\"UTC\",\"MEAN_ELEMENT_THEORY\":\"SGP4\",\"EPOCH\":\"%s\","
                + "\"MEAN_MOTION\":%.8f,\"ECCENTRICITY\":0.001,\"INCLINATION\":%.4f,"
                + "\"RA_OF_ASC_NODE\":%.4f,\"ARG_OF_PERICENTER\":90,\"MEAN_ANOMALY\":%.4f,"
                + "\"BSTAR\":0.00003}",
            id,
            mission.separation().toString().replace("Z", ""),
            pace * DAY / (2 * Math.PI),
            inclination,
            node,
            anomaly);
    return ElementSets.parse("orbit", omm).get(0);
  }

  /** By the turn of the node that the Earth's oblateness gives (Vallado, 4th ed., section 9.6). */
  static double sunSynchronousDeg(double axis, double pace) {
    double ratio = EARTH_METERS / axis;
    return Math.toDegrees(Math.acos(-SUN_PACE / (1.5 * J2 * pace * ratio * ratio)));
  }

  private static double turned(double degrees) {
    double within = degrees % 360;
    return within < 0 ? within + 360 : within;
  }
}
