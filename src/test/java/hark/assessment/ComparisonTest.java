package hark.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.Assessment.EnergyPoint;
import hark.assessment.EnergyReport.OrbitBalance;
import hark.power.PowerModel;
import java.time.Duration;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Other numbers move the battery the way physics says, and the books of every orbit close. */
class ComparisonTest {
  private static final EnergyCase CASE = new EnergyCase();

  private static double mean(List<EnergyPoint> fan, ToDoubleFunction<EnergyPoint> number) {
    return fan.stream().mapToDouble(number).average().orElseThrow();
  }

  @Test
  void theSameNumbersChangeNothing() {
    WhatIf same = CASE.whatIf(bodies -> {}, 1);
    assertEquals(same.before(), same.after());
    assertEquals(same.balanceBefore(), same.balanceAfter());
    assertTrue(same.sentence().contains("nothing changes"), same.sentence());
  }

  @Test
  void moreCellsOnTheFacesMeanMoreCharge() {
    WhatIf less = CASE.whatIf(bodies -> {}, 0.7);
    WhatIf least = CASE.whatIf(bodies -> {}, 0.5);
    double asItIs = mean(less.before(), EnergyPoint::socP50);
    double some = mean(less.after(), EnergyPoint::socP50);
    double few = mean(least.after(), EnergyPoint::socP50);
    assertTrue(few < some - 0.01 && some < asItIs - 0.01, few + " " + some + " " + asItIs);
    assertTrue(least.change().after().states().off() > least.change().before().states().off());
    assertFalse(less.sentence().contains("nothing changes"), less.sentence());
  }

  @Test
  void heavierLoadsDrainTheBattery() {
    WhatIf heavy =
        CASE.whatIf(bodies -> bodies.loads = new PowerModel.Loads(0.005, 0.6, 1.4, 2.4), 1);
    assertTrue(
        mean(heavy.after(), EnergyPoint::socP50)
            < mean(heavy.before(), EnergyPoint::socP50) - 0.01);
    assertTrue(
        heavy.change().after().states().nominal() < heavy.change().before().states().nominal());
  }

  @Test
  void aSmallerBatterySwingsMore() {
    WhatIf small = CASE.whatIf(bodies -> bodies.cellCapacityAh = 0.8, 1);
    assertTrue(swing(small.after()) > 2 * swing(small.before()));
  }

  /** How far the median moves from one grid point to the next, on average. */
  private static double swing(List<EnergyPoint> fan) {
    double sum = 0;
    for (int g = 1; g < fan.size(); g++) {
      sum += Math.abs(fan.get(g).socP50() - fan.get(g - 1).socP50());
    }
    return sum / (fan.size() - 1);
  }

  @Test
  void theBooksOfEveryOrbitClose() {
    List<OrbitBalance> balance = CASE.flown.balance();
    assertTrue(balance.size() > 20, "two days have some thirty orbits: " + balance.size());
    double aThousandth = 1e-3;
    for (OrbitBalance orbit : balance) {
      double spent = orbit.loadsWh() + orbit.lossesWh() + orbit.storedWh() + orbit.removedWh();
      assertEquals(orbit.arrayWh(), spent, aThousandth * orbit.arrayWh(), orbit.toString());
      assertTrue(orbit.arrayWh() > 0.1 && orbit.loadsWh() > 0.1, orbit.toString());
      assertTrue(orbit.offeredWh() >= orbit.arrayWh() * (1 - aThousandth), orbit.toString());
      double margin = orbit.offeredWh() - orbit.loadsWh() - orbit.lossesWh();
      assertEquals(margin, orbit.marginWh(), 1e-12);
    }
  }

  /** By hand: load and bursts of a state over the charger's efficiency, for the orbit's length. */
  @Test
  void whatAStateWouldTakeIsItsLoadsThroughTheCharger() {
    OrbitBalance orbit = CASE.flown.balance().get(0);
    double seconds = Duration.between(orbit.orbitStart(), orbit.orbitEnd()).toMillis() / 1e3;
    double safeWatts = 0.7 + 2.0 * 1.5 / 30;
    double nominalWatts = 1.5 + 2.0 * 1.5 / 30;
    double efficiency = 0.85;
    assertEquals(safeWatts / efficiency * seconds / 3600, orbit.safeWh(), 0.3 * orbit.safeWh());
    double gap = (nominalWatts - safeWatts) / efficiency * seconds / 3600;
    assertEquals(gap, orbit.nominalWh() - orbit.safeWh(), 1e-6, "extra loads are in both");
    assertTrue(orbit.safeWh() >= safeWatts / efficiency * seconds / 3600 - 1e-6);
  }

  @Test
  void orbitsFollowEachOtherFromSunriseToSunrise() {
    List<OrbitBalance> balance = CASE.flown.balance();
    double period = CASE.small.candidates().get(0).sets().get(0).periodSeconds();
    double aMinute = 60;
    for (int n = 0; n < balance.size(); n++) {
      OrbitBalance orbit = balance.get(n);
      double start = CASE.list.input().seconds(orbit.orbitStart());
      double end = CASE.list.input().seconds(orbit.orbitEnd());
      assertEquals(period, end - start, aMinute);
      assertTrue(CASE.list.light().fractionAt(start + 1) > 0.99);
      assertTrue(CASE.list.light().fractionAt(start - aMinute) < 0.01);
      assertTrue(n == 0 || orbit.orbitStart().equals(balance.get(n - 1).orbitEnd()));
    }
  }
}
