package hark.mission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.ensemble.Uncertain;
import hark.power.PowerModel;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OverridesTest {
  private final TextFolder good = TextFolder.kittiwake();

  private PowerModel typical(String key, String value) {
    return Missions.read(good, Map.of(key, value)).body().typical();
  }

  private Problem onlyProblem(String key, String value) {
    List<Problem> problems = Missions.check(good, Map.of(key, value)).problems();
    assertEquals(1, problems.size(), problems::toString);
    assertEquals("--what-if " + key + "=" + value, problems.get(0).where());
    return problems.get(0);
  }

  @Test
  void aNumberTakesThePlaceOfTheWrittenOne() {
    assertEquals(
        2, typical("spacecraft.battery.cell.capacity_Ah", "2.0").battery().cellCapacityAh());
    assertEquals(2.6, Missions.read(good).body().typical().battery().cellCapacityAh());
  }

  @Test
  void anUncertainNumberIsDrawnWhateverItWasBefore() {
    Mission mission =
        Missions.read(good, Map.of("spacecraft.battery.cell.capacity_Ah", "{ mean: 2, sd: .1 }"));
    int at = mission.body().keys().indexOf("spacecraft.battery.cell.capacity_Ah");
    assertEquals(new Uncertain.Normal(2, 0.1), mission.body().numbers().get(at));
    double[] values = mission.body().numbers().stream().mapToDouble(Uncertain::mean).toArray();
    values[at] = 2.2;
    assertEquals(2.2, mission.body().build().apply(values).battery().cellCapacityAh());
    assertFalse(
        Missions.read(good, Map.of("spacecraft.solar.losses", "0.1"))
            .body()
            .keys()
            .contains("spacecraft.solar.losses"));
  }

  @Test
  void oneNumberOfAnUncertainOneMayBeChanged() {
    assertEquals(0.2, typical("spacecraft.solar.losses.mean", "0.2").arrays().losses(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"[-Y]", "[3]"})
  void anItemOfAListIsFoundByNameOrNumber(String item) {
    PowerModel model = typical("spacecraft.solar.faces" + item + ".cell_area_cm2", "10");
    assertEquals(10e-4, model.arrays().faces().get(3).cellAreaSquareMeters(), 1e-12);
    assertEquals(60.4e-4, model.arrays().faces().get(2).cellAreaSquareMeters(), 1e-12);
  }

  @Test
  void nullTakesAKeyAwayAndMapsComeWhole() {
    assertTrue(typical("spacecraft.battery.heater", "null").battery().heater().isEmpty());
    PowerModel.Heater heater =
        typical("spacecraft.battery.heater", "{ W: 2, on_below_C: 1, off_above_C: 3 }")
            .battery()
            .heater()
            .orElseThrow();
    assertEquals(new PowerModel.Heater(2, 1, 3), heater);
  }

  @Test
  void keysThatAreNotInTheFileAreKnownToo() {
    assertEquals(
        0.9,
        typical("spacecraft.battery.age.capacity_share", "0.9").battery().cellCapacityAh() / 2.6,
        1e-12);
    assertEquals(
        7, Missions.read(good, Map.of("crew", "{ hours_per_week: 7 }")).crewHoursPerWeek());
    Map<String, String> inrush = new LinkedHashMap<>();
    inrush.put("spacecraft.bus.inrush.W", "3");
    inrush.put("spacecraft.bus.inrush.seconds", "1");
    PowerModel model = Missions.read(good, inrush).body().typical();
    assertEquals(new PowerModel.Inrush(3, 1), model.bus().inrush().orElseThrow());
  }

  @Test
  void keysOutsideOfTheSpacecraftAreOverriddenToo() {
    assertEquals(3, Missions.read(good, Map.of("crew.hours_per_week", "3")).crewHoursPerWeek());
    assertEquals(
        300,
        Missions.read(good, Map.of("stations[Quay].receive.system_noise_K", "300"))
            .stations()
            .get(1)
            .receive()
            .systemNoiseKelvin());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "spacecraft.battery.cell.capacity_mAh|2600|'spacecraft.battery.cell.capacity_Ah'",
        "spacecraft.batery.cell.capacity_Ah|2|'spacecraft.battery.cell.capacity_Ah'",
        "capacity_Ah|2|'spacecraft.battery.cell.capacity_Ah'",
        "battery.cell.capacity_Ah|2|'spacecraft.battery.cell.capacity_Ah'",
        "crew.hour_per_week|2|'crew.hours_per_week'",
        "spacecraft.solar.faces[+X].cell_area_m2|2|'spacecraft.solar.faces[0].cell_area_cm2'",
        "spacecraft.bus.loads_W.sleep|1|did you mean",
        "spacecraft.solar.losses.men|1|'mean'",
        "spacecraft.solar.faces[+W].cell_area_cm2|2|has no item '+W'",
        "spacecraft.solar.faces[6].cell_area_cm2|2|has no item '6'",
        "spacecraft.name.first|Kitti|has no key 'first'",
        "spacecraft..name|x|no path of keys",
        "spacecraft.solar.faces[|x|no path of keys",
        "[0]|x|no path of keys",
        "spacecraft.battery.cell.capacity_Ah|2600|milliampere-hours",
        "spacecraft.battery.cell.capacity_Ah|two|expected a number",
        "spacecraft.battery.cell.capacity_Ah|[2|not YAML",
        "spacecraft.battery.cell.capacity_Ah|null|no value",
        "spacecraft.battery.cell.capacity_Ah|{ mean: 2, sd: -1 }|sd",
        "spacecraft.bus.thresholds_V.cutoff|7.05|more than cutoff",
        "spacecraft.battery.heater|{ W: 2, on_below_C: 1, of_above_C: 3 }|'off_above_C'",
        "spacecraft.bus.inrush.W|3|missing",
        "stations[Quay].latitude_deg|123|-90 to 90",
      })
  void mistakesAreToldAsInTheFileAndPointToTheOption(String key, String value, String word) {
    if (key.endsWith("cutoff")) {
      // the order of two keys is told where the higher one stands
      List<Problem> problems = Missions.check(good, Map.of(key, value)).problems();
      assertTrue(problems.get(0).line().contains(word), problems::toString);
      return;
    }
    Problem problem = onlyProblem(key, value);
    assertTrue(problem.line().contains(word), problem::line);
  }

  @Test
  void noValueIsToldInWords() {
    BadInput bad =
        assertThrows(
            BadInput.class, () -> Missions.read(good, Map.of("spacecraft.quiet_minutes", " ")));
    assertTrue(bad.getMessage().contains("no value after the key"), bad.getMessage());
  }

  /** Property: each default that is reported can be laid over the file and changes nothing. */
  @Test
  void everyReportedDefaultIsAKeyThatCanBeOverridden() {
    TextFolder sparse =
        good.with(
            "mission.yaml",
            ResourceFolder.of("missions/sparse").text("mission.yaml").orElseThrow());
    MissionCheck plain = Missions.check(sparse);
    for (DefaultUsed used : plain.defaults()) {
      String value = used.value().replaceFirst(" \\(.*", "");
      MissionCheck written = Missions.check(sparse, Map.of(used.key(), value));
      assertEquals(List.of(), written.problems(), used::toString);
    }
    assertTrue(plain.defaults().size() > 60, plain.defaults().toString());
  }

  @Test
  void everyListedNumberCanBeSetToEitherEndOfWhatIsPlausible() {
    List<MissionNumber> numbers = MissionNumbers.list(good);
    for (MissionNumber number : numbers) {
      assertTrue(number.least() <= number.mean() && number.mean() <= number.greatest());
      assertTrue(number.least() < number.greatest(), number::toString);
      for (double end : new double[] {number.least(), number.greatest()}) {
        String value = Span.print(end);
        for (Problem problem : Missions.check(good, Map.of(number.key(), value)).problems()) {
          // an end may cross another key, and is then told; it never leaves the key's own limits
          assertFalse(problem.what().contains("no key"), problem::line);
          assertFalse(problem.what().contains("expected a number from"), problem::line);
        }
      }
    }
    assertTrue(numbers.size() > 60, "only " + numbers.size());
  }

  @Test
  void listedNumbersSayKeyValueUnitAndSpan() {
    List<MissionNumber> numbers = MissionNumbers.list(good);
    Map<String, MissionNumber> byKey = new LinkedHashMap<>();
    numbers.forEach(n -> byKey.put(n.key(), n));
    assertEquals(
        new MissionNumber(
            "spacecraft.battery.cell.capacity_Ah", "2.6", 2.6, "Ah", 0.65, 10.4, false),
        byKey.get("spacecraft.battery.cell.capacity_Ah"));
    assertEquals(
        "{ median: 1.1, factor: 1.12 }", byKey.get("spacecraft.bus.loads_W.nominal").value());
    assertEquals("W", byKey.get("spacecraft.bus.loads_W.nominal").unit());
    assertEquals("V", byKey.get("spacecraft.bus.thresholds_V.cutoff").unit());
    assertEquals("cm²", byKey.get("spacecraft.solar.faces[-Y].cell_area_cm2").unit());
    assertEquals("s", byKey.get("spacecraft.beacons[main].interval_s").unit());
    assertEquals("1/K", byKey.get("spacecraft.solar.temperature_coefficient_per_K").unit());
    assertEquals("", byKey.get("spacecraft.receiver.duty").unit());
    assertTrue(byKey.get("spacecraft.battery.series").whole());
    assertEquals("0", byKey.get("spacecraft.receiver.draw_W").value());
  }
}
