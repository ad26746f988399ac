package hark.mission;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.ensemble.Uncertain;
import hark.power.BeaconPace.Later;
import hark.power.BeaconPace.WhenLow;
import hark.power.CellBehaviour;
import hark.power.Face;
import hark.power.PowerModel;
import hark.power.PowerModel.AttitudeMode;
import hark.power.PowerModel.Beacon;
import hark.power.PowerModel.BusState;
import hark.power.PowerModel.Charging;
import hark.power.PowerModel.Inrush;
import hark.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Optional keys of the spacecraft, written and left out. */
class SpacecraftNumbersTest {
  private final TextFolder good = TextFolder.kittiwake();

  private static PowerModel typical(TextFolder folder) {
    return Missions.read(folder).body().typical();
  }

  private Beacon beaconWith(String interval) {
    return typical(good.replacing("interval_s: 30", "interval_s: " + interval)).beacons().get(0);
  }

  private TextFolder addedToSolar(String lines) {
    return good.replacing("cell_efficiency: 0.29", "cell_efficiency: 0.29\n    " + lines);
  }

  private TextFolder addedToCharger(String scheme, String lines) {
    return good.replacing("scheme: cc_cv", "scheme: " + scheme + "\n      " + lines);
  }

  @ParameterizedTest
  @EnumSource(AttitudeMode.class)
  void everyAttitudeIsReadAndOnlyTurningBodiesDrawWhereTheyLie(AttitudeMode mode) {
    TextFolder folder = good.replacing("mode: tumbling", "mode: " + Section.word(mode));
    Mission mission = Missions.read(folder);
    assertEquals(mode, mission.body().typical().attitude().mode());
    boolean turns = mode == AttitudeMode.TUMBLING || mode == AttitudeMode.SPINNING;
    assertEquals(turns, mission.body().keys().contains("spacecraft.attitude.turn"));
    long lying = mission.body().keys().stream().filter(k -> k.contains("spin_axis_sky")).count();
    assertEquals(turns ? 2 : 0, lying);
    assertEquals(
        mode != AttitudeMode.SPINNING,
        Missions.check(folder).notComputed().contains("spacecraft.attitude.spin_axis"));
  }

  @Test
  void anAxisIsAsLikelyInEveryPartOfTheSky() {
    Mission mission = Missions.read(good);
    int at = mission.body().keys().indexOf("spacecraft.attitude.spin_axis_sky.declination_sine");
    assertEquals(new Uncertain.Uniform(-1, 1), mission.body().numbers().get(at));
    assertEquals(new Uncertain.Uniform(0, 360), mission.body().numbers().get(at + 1));
    assertEquals(new Uncertain.Uniform(0, 1), mission.body().numbers().get(at + 2));
  }

  @Test
  void aKnownAxisIsNotDrawn() {
    TextFolder folder =
        good.replacing("mode: tumbling", "mode: spinning")
            .replacing(
                "spin_axis: [0, 0, 1]",
                "spin_axis: [0, 2, 0]\n    turn: 0.5\n    spin_axis_sky: { declination_sine: -1,"
                    + " right_ascension_deg: 20 }");
    Mission mission = Missions.read(folder);
    assertTrue(
        mission.body().keys().stream().noneMatch(AttitudeReader::isOrientation),
        mission.body().keys().toString());
    var orientation = mission.body().typical().attitude().orientation();
    assertArrayEquals(new double[] {0, 1, 0}, orientation.bodyAxis(), 1e-12);
    assertArrayEquals(new double[] {0, 0, -1}, orientation.skyAxis(), 1e-12);
    assertEquals(0.5, orientation.turn());
  }

  @Test
  void whatABodyThatPointsHasNoUseForIsCheckedAndSaid() {
    TextFolder nadir = good.replacing("mode: tumbling", "mode: nadir");
    MissionCheck check = Missions.check(nadir.replacing("spin_axis: [0, 0, 1]", "turn: 0.5"));
    assertEquals(List.of(), check.problems());
    assertTrue(check.notComputed().contains("spacecraft.attitude.turn"));
    assertEquals(
        1, Missions.check(nadir.replacing("spin_axis: [0, 0, 1]", "turn: 5")).problems().size());
  }

  @Test
  void bothLossesMultiply() {
    PowerModel.Arrays arrays = typical(addedToSolar("wiring_losses: 0.5")).arrays();
    // 1 − (1 − 0.08)(1 − 0.5), by hand
    assertEquals(0.54, arrays.losses(), 1e-12);
    assertEquals(-0.0022, arrays.nature().perKelvin());
    assertEquals(0.02, arrays.nature().lossPerYear());
    assertFalse(arrays.nature().albedo());
  }

  @Test
  void natureOfTheCellsIsRead() {
    String lines =
        "temperature_coefficient_per_K: -0.003\n    loss_per_year: { min: 0.25, max: 0.75 }\n"
            + "    albedo: true";
    Mission mission = Missions.read(addedToSolar(lines));
    assertEquals(
        new PowerModel.CellNature(-0.003, 0.5, true), mission.body().typical().arrays().nature());
    assertTrue(mission.body().keys().contains("spacecraft.solar.loss_per_year"));
  }

  @Test
  void aPanelIsStowedCoveredOrLooksSomewhere() {
    String face = "        deployed: false";
    List<Face> covered = typical(good.replacing(face, "        deployed: true")).arrays().faces();
    assertTrue(covered.get(0).deployed() && covered.get(0).stowedNormal().isEmpty());
    List<Face> looking =
        typical(good.replacing(face, "        deployed: true\n        stowed: [0, 3, 4]"))
            .arrays()
            .faces();
    assertArrayEquals(
        new double[] {0, 0.6, 0.8}, looking.get(0).stowedNormal().orElseThrow(), 1e-12);
    assertFalse(looking.get(1).deployed());
  }

  @Test
  void shadesNameTheirPanel() {
    String shaded = "        shaded_by: [ { panel: +Y, share: 0.3 }, { panel: -Z, share: 1 } ]";
    List<Face> faces = typical(good.replacing("        deployed: false", shaded)).arrays().faces();
    assertEquals(
        List.of(new Face.Shade("+Y", 0.3), new Face.Shade("-Z", 1)), faces.get(0).shades());
    assertEquals(List.of(), faces.get(1).shades());
  }

  @Test
  void aChargeEndsWhereThePackSaysUnlessItIsWritten() {
    // 0.02 C of one string of 2.6 Ah; 0.1 V below 8.4 V for each of two cells
    Charging taper = typical(good).charging();
    assertEquals(0.052, taper.endAmps(), 1e-12);
    assertEquals(8.2, taper.resumeVolts(), 1e-12);
    assertEquals(0, typical(addedToCharger("mppt", "")).charging().endAmps());
    assertEquals(0, typical(addedToCharger("direct", "")).charging().endAmps());
    Charging own = typical(addedToCharger("mppt", "end_A: 0.1\n      resume_V: 8")).charging();
    assertEquals(0.1, own.endAmps());
    assertEquals(8, own.resumeVolts());
  }

  @Test
  void aDrawnCapacityMovesTheEndOfTheCharge() {
    Mission mission =
        Missions.read(good.replacing("capacity_Ah: 2.6", "capacity_Ah: { mean: 2.6, sd: 0.2 }"));
    int at = mission.body().keys().indexOf("spacecraft.battery.cell.capacity_Ah");
    double[] values = mission.body().numbers().stream().mapToDouble(Uncertain::mean).toArray();
    values[at] = 3;
    assertEquals(0.06, mission.body().build().apply(values).charging().endAmps(), 1e-12);
  }

  @Test
  void cellsAreOrdinaryUnlessWritten() {
    PowerModel.Battery plain = typical(good).battery();
    assertEquals(CellBehaviour.LITHIUM_ION, plain.behaviour());
    assertEquals(0.02, plain.protection().toleranceVolts());
    String lines =
        """
        series: 2
            coulombic_efficiency: 0.97
            self_discharge_per_month: 0.05
            cold_lock_per_K: 0.01
            fade_per_year: 0.1
            resistance_growth_per_year: 0.2
            damage_V_per_cell: 1.5
            damage_per_day: 0.03
            age: { capacity_share: 0.5, resistance_factor: 3 }\
        """;
    TextFolder worn =
        good.replacing("series: 2", lines)
            .replacing("closes_on: charge", "closes_on: charge\n      tolerance_V: 0.05");
    PowerModel.Battery battery = typical(worn).battery();
    assertEquals(new CellBehaviour(0.97, 0.05, 0.01, 0.1, 0.2, 1.5, 0.03), battery.behaviour());
    assertEquals(1.3, battery.cellCapacityAh(), 1e-12);
    assertEquals(0.135, battery.cellResistanceOhm(), 1e-12);
    assertEquals(0.05, battery.protection().toleranceVolts());
    // the charger was set for the cells as they were bought
    assertEquals(0.052, typical(worn).charging().endAmps(), 1e-12);
  }

  @Test
  void inrushAndOrdersAreThereWhenWritten() {
    assertEquals(Optional.empty(), typical(good).bus().inrush());
    assertFalse(typical(good).bus().ordersSurviveReset());
    TextFolder more =
        good.replacing(
            "boot_seconds: 45", "inrush: { W: 6, seconds: 0.2 }\n    orders_survive_reset: true");
    assertEquals(Optional.of(new Inrush(6, 0.2)), typical(more).bus().inrush());
    assertTrue(typical(more).bus().ordersSurviveReset());
  }

  @Test
  void aBeaconKeepsOneIntervalOrSeveral() {
    assertEquals(30, beaconWith("30").intervalSeconds());
    assertEquals(45, beaconWith("{ min: 30, max: 60 }").intervalSeconds());
    Beacon paced =
        beaconWith(
            "{ usual: 60, safe: 120, nominal: 30, below_V: { volts: 7.0, interval_s: 300 },"
                + " after_days: { days: 3, interval_s: 600 } }");
    assertEquals(60, paced.intervalSeconds());
    assertEquals(Map.of(BusState.SAFE, 120.0, BusState.NOMINAL, 30.0), paced.pace().byState());
    assertEquals(Optional.of(new WhenLow(7, 300)), paced.pace().whenLow());
    assertEquals(Optional.of(new Later(3 * 86_400, 600)), paced.pace().later());
  }

  @Test
  void aBurstMustFitTheShortestInterval() {
    TextFolder hasty = good.replacing("interval_s: 30", "interval_s: { usual: 60, safe: 1 }");
    List<Problem> problems = Missions.check(hasty).problems();
    assertEquals(1, problems.size(), problems::toString);
    assertTrue(problems.get(0).what().contains("does not fit its interval of 1 s"));
  }

  @Test
  void everyIntervalMayBeUncertain() {
    String interval = "{ usual: { min: 50, max: 70 }, safe: { mean: 20, sd: 2 } }";
    Mission mission = Missions.read(good.replacing("interval_s: 30", "interval_s: " + interval));
    List<String> keys = mission.body().keys();
    assertTrue(keys.contains("spacecraft.beacons[0].interval_s.usual"), keys.toString());
    double[] values = mission.body().numbers().stream().mapToDouble(Uncertain::mean).toArray();
    values[keys.indexOf("spacecraft.beacons[0].interval_s.safe")] = 1;
    Beacon drawn = mission.body().build().apply(values).beacons().get(0);
    assertEquals(1, drawn.pace().byState().get(BusState.SAFE));
    // a drawn burst fits the shortest of its intervals
    assertEquals(1, drawn.durationSeconds());
  }

  @Test
  void aReceiverDrawsWhatIsWritten() {
    assertEquals(0, typical(good).receiver().watts());
    assertEquals(0.2, typical(good.replacing("duty: 1.0", "draw_W: 0.2")).receiver().watts());
  }
}
