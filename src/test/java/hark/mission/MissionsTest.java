package hark.mission;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.ensemble.Uncertain;
import hark.power.PowerModel;
import hark.problem.Problem;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MissionsTest {
  private final TextFolder good = TextFolder.kittiwake();

  private static Problem onlyProblem(FolderSource folder) {
    List<Problem> problems = Missions.check(folder).problems();
    assertEquals(1, problems.size(), problems::toString);
    return problems.get(0);
  }

  private static List<Problem> warnings(FolderSource folder) {
    MissionCheck check = Missions.check(folder);
    assertEquals(List.of(), check.problems());
    return check.warnings();
  }

  @Test
  void theValidMissionIsReadWithoutProblemOrWarning() {
    MissionCheck check = Missions.check(good);
    assertEquals(List.of(), check.problems());
    assertEquals(List.of(), check.warnings());
    Mission mission = check.orThrow();
    assertEquals("Kittiwake", mission.name());
    assertEquals(Instant.parse("2026-03-07T02:00:00Z"), mission.separation());
    assertEquals(new Uncertain.LogNormal(3, 2), mission.tumbleDegPerSecond());
    assertEquals(437.2e6, mission.beacons().get(0).frequencyHz(), 1e-3);
    assertEquals(0.25, mission.hazardLimit());
    assertEquals(
        Instant.parse("2027-02-01T00:00:00Z"),
        mission.stations().get(0).transmit().orElseThrow().licence().until().orElseThrow());
    assertEquals(5, mission.stations().get(1).mask().elevationDegAt(10));
  }

  @Test
  void setsStandNewestFirstForEachObject() {
    var sets = Missions.read(good).sources().get(0).sets();
    assertEquals(List.of("91001", "91001", "91002"), sets.stream().map(s -> s.objectId()).toList());
    assertTrue(sets.get(0).epoch().isAfter(sets.get(1).epoch()));
  }

  @Test
  void everyUncertainNumberOfTheBodyIsFoundAndReachesTheModel() {
    Mission mission = Missions.read(good);
    assertEquals(
        List.of(
            "spacecraft.attitude.rate_deg_s",
            "spacecraft.solar.losses",
            "spacecraft.solar.charging.efficiency",
            "spacecraft.battery.soc_at_separation",
            "spacecraft.bus.loads_W.nominal",
            "spacecraft.attitude.spin_axis_sky.declination_sine",
            "spacecraft.attitude.spin_axis_sky.right_ascension_deg",
            "spacecraft.attitude.turn"),
        mission.body().keys());
    PowerModel model =
        mission.body().build().apply(new double[] {7, 0.2, 0.7, 0.4, 1.9, 0.6, 90, 0.25});
    assertArrayEquals(new double[] {0, 0.8, 0.6}, model.attitude().orientation().skyAxis(), 1e-12);
    assertEquals(0.25, model.attitude().orientation().turn());
    assertEquals(7, model.attitude().rateDegPerSecond());
    assertEquals(0.2, model.arrays().losses());
    assertEquals(0.7, model.charging().efficiency());
    assertEquals(0.4, model.battery().socAtSeparation());
    assertEquals(1.9, model.bus().loads().nominalWatts());
    assertEquals(60.4e-4, model.arrays().faces().get(0).cellAreaSquareMeters(), 1e-12);
    assertEquals(12 * 3600, model.bus().watchdogSeconds().orElseThrow());
  }

  @Test
  void anyNumberOfTheBodyMayBeMadeUncertain() {
    Mission mission =
        Missions.read(
            good.replacing("cutoff: 6.2", "cutoff: { min: 6.0, max: 6.4 }")
                .replacing("area_m2: 0.06", "area_m2: { mean: 0.06, sd: 0.01 }"));
    int at = mission.body().keys().indexOf("spacecraft.bus.thresholds_V.cutoff");
    double[] values = mission.body().numbers().stream().mapToDouble(Uncertain::mean).toArray();
    values[at] = 6.05;
    assertEquals(6.05, mission.body().build().apply(values).bus().thresholds().cutoffVolts());
    assertTrue(mission.body().keys().contains("spacecraft.thermal.structure.area_m2"));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(ints = {1, 2, 3})
  void wildDrawsAreClampedToWhatIsPhysical(int seed) {
    Mission mission = Missions.read(good.replacing("cutoff: 6.2", "cutoff: { mean: 6.2, sd: 2 }"));
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 200; i++) {
      double[] values =
          mission.body().numbers().stream()
              .mapToDouble(n -> 20 * random.nextDouble(-1, 1))
              .toArray();
      PowerModel model = mission.body().build().apply(values);
      assertTrue(Spans.FRACTION.holds(model.battery().socAtSeparation()));
      assertTrue(model.arrays().losses() >= 0 && model.arrays().losses() < 1);
      assertTrue(model.charging().efficiency() > 0 && model.charging().efficiency() <= 1);
      assertTrue(model.bus().loads().nominalWatts() >= 0);
      PowerModel.Thresholds volts = model.bus().thresholds();
      assertTrue(volts.cutoffVolts() < volts.recoveryVolts());
      assertTrue(volts.cutoffVolts() < volts.safeBelowVolts());
      assertTrue(volts.safeBelowVolts() < volts.nominalAboveVolts());
    }
  }

  @Test
  void theTypicalBodyIsThatOfTheMeans() {
    PowerModel typical = Missions.read(good).body().typical();
    assertEquals(0.75, typical.battery().socAtSeparation());
    assertEquals(0.08, typical.arrays().losses());
  }

  @Test
  void theStockOpenCircuitTableIsThatOfTheExample() {
    // Modelica Standard Library, battery example: OCV/4.2 V 0.835 at half charge.
    List<double[]> table = Missions.read(good).body().typical().battery().openCircuit();
    assertArrayEquals(new double[] {0.5, 4.2 * 0.835}, table.get(6), 1e-12);
    assertArrayEquals(new double[] {1, 4.2}, table.get(table.size() - 1), 1e-12);
  }

  /** Each line: what is replaced, by what, a word of the problem or its mend. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "hark: 1|hark: 2|expected 1",
        "mass_kg: 1.3|mass_kg: 1300000|0.01 to 2000",
        "mass_kg: 1.3|mass_kg: 2600|this looks like grams",
        "mass_kg: 1.3|mas_kg: 1.3|mass_kg",
        "separation: 2026|separation: 2026-13|UTC",
        "07T02:00:00Z|07T02:00:00+02:00|UTC",
        "mode: tumbling|mode: tumblin|'tumbling'",
        "cell_efficiency: 0.29|cell_efficiency: 29|looks like percent",
        "      mean: 0.08|      mean: .nan|a number",
        "normal: [1, 0, 0]|normal: [0, 0, 0]|no length",
        "spin_axis: [0, 0, 1]|spin_axis: [0, 0, 0]|no length",
        "spin_axis: [0, 0, 1]|spin_axis: [0, 1]|expected a list of 3",
        "spin_axis: [0, 0, 1]|spin_axis_sky: { declination_sine: 1.2 }|-1 to 1",
        "spin_axis: [0, 0, 1]|turn: 90|looks like percent",
        "cell_area_cm2: 60.4\\n|cell_area_cm2: -60.4\\n|0 to 50000",
        "deployed: false\\n|stowed: covered\\n|deployed: true",
        "deployed: false\\n|stowed: up\\n        deployed: true\\n|covered or a direction",
        "deployed: false\\n|stowed: [0, 0, 0]\\n        deployed: true\\n|no length",
        "string: A\\n|shaded_by: [ { panel: +y, share: 0.2 } ]\\n|'+Y'",
        "string: A\\n|shaded_by: [ { panel: +X, share: 0.2 } ]\\n|own light",
        "string: A\\n|shaded_by: [ { panel: +Y, share: 20 } ]\\n|percent",
        "cell_efficiency: 0.29|cell_efficiency: 1.2|0.01 to 0.5",
        "cell_efficiency: 0.29|wiring_losses: 8\\n    cell_efficiency: 0.29|percent",
        "cell_efficiency: 0.29|albedo: 0.3\\n    cell_efficiency: 0.29|true or false",
        "efficiency: { mean: 0.80, sd: 0.06 }|efficiency: 1.1|0.05 to 1",
        "charge_V: 8.4|end_A: 1.2\\n      charge_V: 8.4|less than max_current_A",
        "charge_V: 8.4|resume_V: 8.5\\n      charge_V: 8.4|at most charge_V",
        "series: 2|coulombic_efficiency: 1.02\\n    series: 2|0.5 to 1",
        "series: 2|age: { capacity_share: 80 }\\n    series: 2|percent",
        "closes_on: charge|tolerance_V: 20|millivolts",
        "boot_seconds: 45|inrush: { W: 3 }|missing",
        "interval_s: 30|interval_s: { safe: 60 }|missing",
        "interval_s: 30|interval_s: { usual: 60, of: 3 }|not a key here",
        "interval_s: 30|interval_s: { usual: 60, below_V: { volts: 7 } }|missing",
        "duty: 1.0|draw_W: -0.1|0 to 500",
        "name: -X|name: +x|a second face",
        "capacity_Ah: 2.6|capacity_Ah: 2600|milliampere-hours",
        "resistance_ohm: 0.045|resistance_ohm: 45|milliohms",
        "chemistry: li_ion_nca|chemistry: lead|li_ion_nca",
        "close_V_per_cell: 3.0|close_V_per_cell: 2.4|open_V_per_cell",
        "charge_temperature_C: [0, 45]|charge_temperature_C: [45, 0]|not below",
        "charge_temperature_C: [0, 45]|charge_temperature_C: [273, 318]|kelvin",
        "off_above_C: 6|off_above_C: 1|on_below_C",
        "cutoff: 6.2|cutoff: 3.1|empty cells",
        "recovery: 7.0|recovery: 6.0|more than cutoff",
        "nominal_above: 7.4|nominal_above: 7.0|more than safe_below",
        "nominal_above: 7.4|nominal_above: 8.5|never reaches",
        "charge_V: 8.4|charge_V: 4.2|nominal_above",
        "states: [safe, nominal]\\n      freq|states: [off]\\n      freq|state off",
        "frequency_MHz: 437.2\\n      int|frequency_MHz: 437200000\\n      int|looks like Hz",
        "frequency_MHz: 437.2\\n      int|frequency_MHz: 437200\\n      int|looks like kHz",
        "frequency_MHz: 437.2\\n      int|frequency_Hz: 437200000\\n      int|frequency_MHz",
        "duration_s: 1.5|duration_s: 40|does not fit",
        "file: orbit/shared.tle|file: orbit/sharde.tle|'orbit/shared.tle'",
        "file: orbit/shared.tle|file: ../shared.tle|out of the mission folder",
        "\"91002\": 0.3|\"91003\": 0.3|no element set",
        "candidates:\\n        \"91001\": 0.6|candidates:\\n        \"91001\": 0.8|sum to 1.1",
        "\"91002\": 0.3|\"91002\": 30|percent",
        "latitude_deg: 55.1|latitude_deg: 155.1|-90 to 90",
        "name: Quay|name: headland|a second station",
        "available: always|available: RRULE:FREQ=DAILY|without DTSTART",
        "available: always|available: [Mon 18:00-25:00]|no time of day",
        "available: always|available: [Mon-Fry 18:00-23:00]|no day of the week",
        "available: always|available: { weekly: [] }|no time is named",
        "available: always|available: { not_between: [[2026-11-03T00:00:00Z,"
            + " 2026-11-02T00:00:00Z]] }|not before",
        "available: always|available: { weakly: [Mon 18:00-23:00] }|weekly",
        "bands_MHz: [[435, 438]]|silent: [DTSTART:20261005T180000Z"
            + " RRULE:FREQ=SOMETIMES DURATION:PT1H]\\n        bands_MHz: [[435, 438]]|RRULE",
        "hours_per_week: 18|hours_between_commands: -1\\n  hours_per_week: 18|from 0 to",
        "until: 2027-01-31|until: 2027-02-30|UTC",
        "bands_MHz: [[435, 438]]|bands_MHz: [[438, 435]]|not below",
        "horizon: [[0, 5], [90, 12]]|horizon: [[0, 5], [400, 12]]|azimuth",
        "hours_per_week: 18|hours_per_week: eighteen|a number",
      })
  void oneMistakeIsOneProblemAtItsLine(String before, String after, String word) {
    String old = before.replace("\\n", "\n");
    Problem problem = onlyProblem(good.replacing(old, after.replace("\\n", "\n")));
    String yaml = good.files().get("mission.yaml");
    long line = 1 + yaml.substring(0, yaml.indexOf(old)).lines().count();
    line -= yaml.charAt(yaml.indexOf(old) - 1) == '\n' ? 0 : 1;
    assertTrue(problem.where().startsWith("mission.yaml:" + line + " "), problem::toString);
    assertTrue(problem.line().contains(word), problem::toString);
  }

  @Test
  void everyProblemIsToldAtOnce() {
    TextFolder bad =
        good.replacing("mass_kg: 1.3", "mass_kg: -1")
            .replacing("latitude_deg: 55.1", "latitude_deg: 99")
            .replacing("hours_per_week: 18", "hours_per_weak: 18")
            .with("runbooks/x.md", "no front matter");
    List<String> places = Missions.check(bad).problems().stream().map(Problem::where).toList();
    assertEquals(
        List.of(
            "mission.yaml:9 spacecraft.mass_kg",
            "mission.yaml:121 stations[0].latitude_deg",
            "mission.yaml:162 crew.hours_per_weak",
            "runbooks/x.md:1"),
        places);
  }

  /** Property: whatever line with a value is spoilt, a problem names that line. */
  @Test
  void everySpoiltValueIsNamedAtItsLine() {
    String[] lines = good.files().get("mission.yaml").split("\n");
    int spoilt = 0;
    for (int i = 0; i < lines.length; i++) {
      int colon = lines[i].indexOf(": ");
      if (colon < 0 || lines[i].startsWith("#") || lines[i].matches(".*(name|string|holder):.*")) {
        continue;
      }
      String[] changed = lines.clone();
      changed[i] = lines[i].substring(0, colon) + ": { wrong: [ 1, -1e9 ] }";
      changed[i] = (lines[i].contains("- { ") ? "      - { name: { wrong: 1 } }" : changed[i]);
      String place = "mission.yaml:" + (i + 1) + " ";
      List<Problem> problems =
          Missions.check(good.with("mission.yaml", String.join("\n", changed))).problems();
      assertTrue(
          problems.stream().anyMatch(p -> p.where().startsWith(place)),
          () -> place + changed[0] + problems);
      spoilt++;
    }
    assertTrue(spoilt > 90, "only " + spoilt + " lines were tried");
  }

  /** Property: a key that nobody knows is one problem at its line, wherever it stands. */
  @Test
  void everyMisspeltKeyIsNamedAtItsLine() {
    List<String> lines = Arrays.asList(good.files().get("mission.yaml").split("\n"));
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      boolean ownKey = line.matches("\\s+[A-Za-z]\\w*: \\S.*") && !line.contains("{");
      if (!ownKey) {
        continue;
      }
      List<String> changed = new java.util.ArrayList<>(lines);
      String indent = line.substring(0, line.length() - line.stripLeading().length());
      changed.add(i + 1, indent + "zzz: 1");
      Problem problem = onlyProblem(good.with("mission.yaml", String.join("\n", changed)));
      assertTrue(problem.where().startsWith("mission.yaml:" + (i + 2) + " "), problem::toString);
    }
  }

  @Test
  void aMissingEmptyOrDamagedElementFileIsNamed() {
    assertTrue(
        onlyProblem(good.without("orbit/shared.tle")).what().contains("no file"), "missing file");
    assertTrue(
        onlyProblem(good.with("orbit/shared.tle", "")).where().startsWith("orbit/shared.tle"),
        "empty file");
    String tle = good.files().get("orbit/shared.tle");
    String damaged = tle.replaceFirst("97\\.4500", "97.4600");
    Problem checksum = onlyProblem(good.with("orbit/shared.tle", damaged));
    assertTrue(checksum.where().startsWith("orbit/shared.tle"), checksum::toString);
  }

  @Test
  void noMissionFileIsOneProblem() {
    assertTrue(onlyProblem(good.without("mission.yaml")).what().contains("mission.yaml"));
  }

  @Test
  void aLicenceThatDoesNotCoverTheUplinkIsAWarning() {
    List<Problem> found = warnings(good.replacing("[[435, 438]]", "[[144, 146]]"));
    assertEquals(1, found.size());
    assertTrue(found.get(0).what().contains("437.2 MHz"));
  }

  @Test
  void aSpreadThatIsNotUsedIsAWarning() {
    List<Problem> found = warnings(good.replacing("gain_dBi: 8", "gain_dBi: { mean: 8, sd: 1 }"));
    assertTrue(found.get(0).what().contains("not used"), found::toString);
  }

  @Test
  void aStowawayUnitWithinTheLimitsIsAWarning() {
    List<Problem> found = warnings(good.replacing("quiet_minutes: 45", "quiet_minutes: 2700"));
    assertTrue(found.get(0).mend().contains("seconds"), found::toString);
  }

  @Test
  void whatIsLeftOutIsReportedWithTheValueTaken() {
    MissionCheck check = Missions.check(good.replacing("    boot_seconds: 45\n", ""));
    assertTrue(
        check.defaults().contains(new DefaultUsed("spacecraft.bus.boot_seconds", "60")),
        () -> check.defaults().toString());
    assertTrue(check.defaults().contains(new DefaultUsed("stations[1].receive.tuning_Hz", "5000")));
  }

  @Test
  void bodiesDoNotAddToTheReportOfTheFile() {
    MissionCheck check = Missions.check(good);
    int before = check.warnings().size();
    check.orThrow().body().typical();
    assertEquals(before, check.warnings().size());
  }
}
