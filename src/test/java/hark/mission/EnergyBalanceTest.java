package hark.mission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.orbit.EarthModel;
import hark.orbit.Eclipse;
import hark.orbit.Eclipses;
import hark.orbit.ElementSet;
import hark.orbit.Trajectory;
import hark.power.PowerModel;
import hark.problem.Problem;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class EnergyBalanceTest {
  private final TextFolder good = TextFolder.kittiwake();

  @Test
  void theMeanIsThatOfTheFormula() {
    // Cauchy: a tumbling convex body shows a quarter of its surface. Six faces of 60.4 cm² cells:
    // 1361 · 6 · 60.4e-4 / 4 · 0.29 · (1 − 0.08) · 0.80 · 0.62 W, computed apart from the program.
    PowerModel model = Missions.read(good).body().typical();
    EnergyBalance balance = EnergyBalance.of(model, 0.62);
    assertEquals(1.6317508, balance.arrayWatts(), 1e-6);
    // 0.8 W for 1.5 s in 30 s is 0.04 W.
    assertEquals(0.7 + 0.04, balance.safeWatts(), 1e-12);
  }

  @Test
  void loadsAboveTheArraysAreAWarningThatNamesBoth() {
    List<Problem> found =
        Missions.check(good.replacing("nominal: { median: 1.1, factor: 1.12 }", "nominal: 3"))
            .warnings();
    assertEquals(1, found.size(), found::toString);
    assertEquals("mission.yaml:64 spacecraft.bus.loads_W", found.get(0).where());
    assertTrue(found.get(0).what().contains("nominal mode takes 3.04"), found::toString);
  }

  @Test
  void anArrayThatCannotFeedSafeModeIsSaidInOtherWords() {
    TextFolder weak = good.replacing("cell_efficiency: 0.29", "cell_efficiency: 0.11");
    List<Problem> found = Missions.check(weak).warnings();
    assertTrue(found.get(0).what().contains("safe mode takes 0.74"), found::toString);
  }

  @Test
  void aReceiverAndTheRhythmOfAStateAreLoadsToo() {
    TextFolder more =
        good.replacing("interval_s: 30", "interval_s: { usual: 30, safe: 60 }")
            .replacing("duty: 1.0", "duty: 0.5\n    draw_W: 0.2");
    EnergyBalance balance = EnergyBalance.of(Missions.read(more).body().typical(), 1);
    // 0.7 W; 0.8 W for 1.5 s in 60 s; 0.2 W half of the time
    assertEquals(0.7 + 0.02 + 0.1, balance.safeWatts(), 1e-12);
  }

  @Test
  void loadsThatNoSeasonCanFeedAreSaidToBeSo() {
    List<Problem> found = safeModeOf("2.7");
    assertEquals(1, found.size(), found::toString);
    // 1361 · 6 · 60.4e-4 / 4 · 0.29 · 0.92 · 0.80 W, by hand
    assertTrue(found.get(0).what().startsWith("even in full sun the arrays give 2.632 W"));
    assertTrue(found.get(0).what().contains("safe mode takes 2.74"), found::toString);
  }

  @Test
  void loadsThatOnlyEclipseSeasonCannotFeedAreSaidToBeSo() {
    double share = EnergyBalance.leastSunlit(Missions.read(good).sources().get(0).sets().get(0));
    double least = EnergyBalance.of(Missions.read(good).body().typical(), share).arrayWatts();
    // with its beacon of 0.04 W just above what that season gives
    List<Problem> found = safeModeOf(Span.print(least - 0.04 + 0.002));
    assertEquals(1, found.size(), found::toString);
    assertTrue(found.get(0).what().startsWith("in eclipse season, though not now"));
    assertEquals(List.of(), safeModeOf(Span.print(least - 0.04 - 0.002)));
  }

  private List<Problem> safeModeOf(String watts) {
    Map<String, String> loads = new TreeMap<>();
    loads.put("spacecraft.bus.loads_W.safe", watts);
    loads.put("spacecraft.bus.loads_W.nominal", watts);
    MissionCheck check = Missions.check(good, loads);
    assertEquals(List.of(), check.problems());
    return check.warnings();
  }

  @Test
  void theLeastShareOfTheYearIsThatOfItsEclipses() {
    // against every shadow of fifteen revolutions, found by another way, each half month of the
    // year
    ElementSet set = Missions.read(good).sources().get(0).sets().get(0);
    double least = 1;
    Trajectory trajectory = Trajectory.of(set, EarthModel.bundled());
    for (int day = 0; day < 365; day += 15) {
      Instant from = set.epoch().plus(Duration.ofDays(day));
      Duration whole = Duration.ofMillis((long) (15 * 86_400_000 / set.meanMotionRevPerDay()));
      Instant to = from.plus(whole);
      double dark = 0;
      for (Eclipse e : Eclipses.find(trajectory, from, to)) {
        Instant start = e.penumbraEntry().isBefore(from) ? from : e.penumbraEntry();
        Instant end = e.penumbraExit().isAfter(to) ? to : e.penumbraExit();
        dark += (double) Duration.between(start, end).toMillis() / whole.toMillis();
      }
      least = Math.min(least, 1 - dark);
    }
    double halfOfPenumbra = 0.004; // counted as dark here, and half a month between samples
    assertEquals(least, EnergyBalance.leastSunlit(set), halfOfPenumbra);
  }
}
