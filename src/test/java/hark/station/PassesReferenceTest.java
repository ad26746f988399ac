package hark.station;

import static hark.orbit.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.orbit.ReferenceTable;
import hark.orbit.Trajectory;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Passes and tracks against the tables of two independent libraries. */
class PassesReferenceTest {
  private static final double WINDOW_SECONDS = 7 * 86400.0;

  private static final EarthModel EARTH = EarthModel.bundled();
  private static final Map<String, ElementSet> SETS = sets();
  private static final Map<String, Site> SITES = sites();

  @Test
  void passesAgreeWithTheTable() {
    check(ReferenceTable.read("passes/passes.csv"));
  }

  private static void check(ReferenceTable table) {
    Map<String, List<Map<String, String>>> groups = new LinkedHashMap<>();
    for (Map<String, String> row : table.rows()) {
      String key = row.get("tle") + "," + row.get("station") + "," + row.get("thr_deg");
      groups.computeIfAbsent(key, none -> new java.util.ArrayList<>()).add(row);
    }
    Worst worst = new Worst();
    groups.forEach((key, rows) -> checkGroup(key, rows, worst));
    System.out.println("passes: " + table.rows().size() + " rows, " + worst);
  }

  private static void checkGroup(String key, List<Map<String, String>> rows, Worst worst) {
    String tle = rows.get(0).get("tle");
    Trajectory trajectory = Trajectory.of(SETS.get(tle), EARTH);
    List<Pass> passes =
        Passes.find(
            trajectory,
            SITES.get(rows.get(0).get("station")),
            HorizonMask.flat(number(rows.get(0), "thr_deg")),
            trajectory.instantAt(0),
            trajectory.instantAt(WINDOW_SECONDS));
    assertEquals(rows.size(), passes.size(), key + " number of passes");
    double edgeSeconds = tle.equals("T03") ? 0.3 : 0.02;
    for (int i = 0; i < rows.size(); i++) {
      Map<String, String> row = rows.get(i);
      Pass pass = passes.get(i);
      String what = key + " pass " + i;
      if (!row.get("clip").contains("S")) {
        double aos = trajectory.secondsAt(pass.aos()) - number(row, "t_rise_s");
        worst.edge(tle, aos);
        assertEquals(0, aos, edgeSeconds, what + " AOS");
        assertAzimuth(row, "az_rise_deg", pass.aosAzimuthDeg(), what);
      }
      if (!row.get("clip").contains("E")) {
        double los = trajectory.secondsAt(pass.los()) - number(row, "t_set_s");
        worst.edge(tle, los);
        assertEquals(0, los, edgeSeconds, what + " LOS");
        assertAzimuth(row, "az_set_deg", pass.losAzimuthDeg(), what);
      }
      if (row.get("clip").isEmpty()) {
        checkTop(row, pass, worst, what);
      }
    }
  }

  private static void checkTop(Map<String, String> row, Pass pass, Worst worst, String what) {
    double elevation = pass.maxElevationDeg() - number(row, "el_max_deg");
    worst.elevation(elevation);
    assertEquals(0, elevation, 0.001, what + " elevation");
    double rangeKm = number(row, "range_culm_km");
    if (row.get("tle").equals("T03")) {
      return; // its elevation hardly changes for minutes: the table's time of the top is coarse
    }
    assertEquals(rangeKm, pass.culminationRangeKm(), 0.2 + rangeKm * 1e-5, what + " range");
  }

  private static void assertAzimuth(
      Map<String, String> row, String column, double found, String what) {
    double difference = Math.IEEEremainder(found - number(row, column), 360);
    assertTrue(Math.abs(difference) < 0.01, what + " " + column + " off by " + difference);
  }

  @Test
  void tracksAgreeWithTheTable() {
    double elevation = 0;
    for (Map<String, String> row : ReferenceTable.read("passes/track.csv").rows()) {
      Trajectory trajectory = Trajectory.of(SETS.get(row.get("tle")), EARTH);
      Site site = SITES.get(row.get("station"));
      Look look = Looks.at(trajectory, site, trajectory.instantAt(number(row, "t_s")));
      String what = row.get("tle") + " " + row.get("station") + " at " + row.get("t_s");
      elevation = Math.max(elevation, Math.abs(look.elevationDeg() - number(row, "el_deg")));
      assertEquals(number(row, "el_deg"), look.elevationDeg(), 0.001, what);
      assertEquals(number(row, "range_km"), look.rangeMeters() / 1000, 0.02, what);
      assertEquals(
          number(row, "range_rate_kms"), look.rangeRateMetersPerSecond() / 1000, 2e-4, what);
      double azimuth = Math.IEEEremainder(look.azimuthDeg() - number(row, "az_deg"), 360);
      double acrossDeg = azimuth * Math.cos(Math.toRadians(look.elevationDeg()));
      assertEquals(0, acrossDeg, 0.001, what + " azimuth");
    }
    System.out.println("track: elevation within " + elevation + " deg");
  }

  private static Map<String, ElementSet> sets() {
    Map<String, ElementSet> sets = new HashMap<>();
    for (ElementSet set :
        ElementSets.parse("elements.tle", ReferenceTable.text("passes/elements.tle"))) {
      sets.put(set.name().orElseThrow().substring(0, 3), set);
    }
    return sets;
  }

  private static Map<String, Site> sites() {
    Map<String, Site> sites = new HashMap<>();
    for (String line : ReferenceTable.text("passes/stations.csv").lines().skip(4).toList()) {
      String[] part = line.split(",");
      int n = part.length;
      sites.put(
          part[0],
          new Site(
              part[0],
              Double.parseDouble(part[n - 3]),
              Double.parseDouble(part[n - 2]),
              Double.parseDouble(part[n - 1])));
    }
    return sites;
  }

  /** Largest differences, to be printed. */
  private static final class Worst {
    private final Map<String, Double> edge = new java.util.TreeMap<>();
    private double elevationDeg;

    void edge(String tle, double seconds) {
      edge.merge(tle, Math.abs(seconds), Math::max);
    }

    void elevation(double degrees) {
      elevationDeg = Math.max(elevationDeg, Math.abs(degrees));
    }

    @Override
    public String toString() {
      return "edges s " + edge + ", elevation deg " + elevationDeg;
    }
  }
}
