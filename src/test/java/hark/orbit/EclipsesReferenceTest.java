package hark.orbit;

import static hark.orbit.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Shadow edges against tables, and the shadowed part of circular orbits against closed form. */
class EclipsesReferenceTest {
  private static final double HALF_A_SECOND = 0.5;
  private static final double SPAN_SECONDS = 3 * 86400.0;

  private static final EarthModel EARTH = EarthModel.bundled();
  private static final Map<String, ElementSet> SETS = sets();

  @Test
  void edgesOnTheEllipsoidAgreeWithTheTable() {
    check("oblate", new Shadow());
  }

  @Test
  void edgesOnTheSphereAgreeWithTheTable() {
    check("sphere", Shadow.ofSphere());
  }

  private static void check(String model, Shadow shadow) {
    Map<String, List<Map<String, String>>> groups = new TreeMap<>();
    for (Map<String, String> row : ReferenceTable.read("eclipses/eclipses.csv").rows()) {
      if (row.get("model").equals(model)) {
        groups.computeIfAbsent(row.get("tle"), none -> new ArrayList<>()).add(row);
      }
    }
    Map<String, Double> worst = new TreeMap<>();
    groups.forEach(
        (tle, rows) -> {
          Trajectory trajectory = Trajectory.of(SETS.get(tle), EARTH);
          List<Eclipse> found = new EclipseSearch(trajectory, shadow).find(0, SPAN_SECONDS);
          assertEquals(rows.size(), found.size(), tle + " number of eclipses");
          for (int i = 0; i < rows.size(); i++) {
            double off = compare(trajectory, rows.get(i), found.get(i), tle + " " + i);
            worst.merge(tle, off, Math::max);
          }
        });
    System.out.println("eclipses " + model + ", s: " + worst);
  }

  private static double compare(
      Trajectory trajectory, Map<String, String> row, Eclipse eclipse, String what) {
    String clip = row.get("clip");
    double worst = 0;
    if (!clip.contains("S")) {
      worst = edge(trajectory, row, "penumbra_in_s", Optional.of(eclipse.penumbraEntry()), what);
      worst = Math.max(worst, edge(trajectory, row, "umbra_in_s", eclipse.umbraEntry(), what));
    }
    if (!clip.contains("E") || row.get("tle").equals("T04")) {
      worst = Math.max(worst, edge(trajectory, row, "umbra_out_s", eclipse.umbraExit(), what));
      Optional<Instant> out = Optional.of(eclipse.penumbraExit());
      worst = Math.max(worst, edge(trajectory, row, "penumbra_out_s", out, what));
    }
    return worst;
  }

  private static double edge(
      Trajectory trajectory,
      Map<String, String> row,
      String column,
      Optional<Instant> found,
      String what) {
    assertEquals(row.get(column).isEmpty(), found.isEmpty(), what + " " + column + " missing");
    if (found.isEmpty()) {
      return 0;
    }
    double off = trajectory.secondsAt(found.get()) - number(row, column);
    assertEquals(0, off, HALF_A_SECOND, what + " " + column);
    return Math.abs(off);
  }

  private static Map<String, ElementSet> sets() {
    Map<String, ElementSet> sets = new HashMap<>();
    for (ElementSet set :
        ElementSets.parse("elements.tle", ReferenceTable.text("passes/elements.tle"))) {
      sets.put(set.name().orElseThrow().substring(0, 3), set);
    }
    return sets;
  }
}
