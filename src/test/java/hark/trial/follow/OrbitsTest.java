package hark.trial.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.mission.Mission;
import hark.mission.Missions;
import hark.mission.ResourceFolder;
import hark.orbit.ElementSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class OrbitsTest {
  private static final Mission DEMO = Missions.read(ResourceFolder.of("hark/demo"), Map.of());

  /** 97.4° at 500 km and 98.6° at 800 km: handbook values, from memory. */
  @Test
  void sunSynchronousOrbitsHaveTheKnownInclination() {
    double aTenthOfADegree = 0.1;
    assertEquals(97.4, inclination(500), aTenthOfADegree);
    assertEquals(98.6, inclination(800), aTenthOfADegree);
  }

  private static double inclination(double heightKm) {
    double axis = 6_378_135 + 1000 * heightKm;
    return Orbits.sunSynchronousDeg(axis, Math.sqrt(3.986008e14 / (axis * axis * axis)));
  }

  @Test
  void thereAreAtLeastTwentyAndTheyDiffer() {
    List<Orbits.Orbit> all = Orbits.all();
    assertTrue(all.size() >= 20);
    assertEquals(all.size(), new HashSet<>(all.stream().map(Orbits.Orbit::name).toList()).size());
    for (Orbits.Stations stations : Orbits.Stations.values()) {
      assertTrue(all.stream().filter(o -> o.stations() == stations).count() >= 6);
    }
  }

  @Test
  void neighboursFollowOnTheSameOrbit() {
    Mission mission = Orbits.of(DEMO, Orbits.all().get(1));
    List<ElementSet> sets = mission.sources().get(0).sets();
    assertEquals(3, sets.size());
    double late = (sets.get(0).meanAnomalyDeg() - sets.get(1).meanAnomalyDeg()) / 360;
    double aTenth = 0.1;
    assertEquals(45, late * sets.get(0).periodSeconds(), aTenth);
    assertEquals(-51.42, mission.stations().get(1).site().latitudeDeg(), 1e-9);
  }
}
