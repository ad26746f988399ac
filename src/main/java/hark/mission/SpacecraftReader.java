package hark.mission;

import hark.ensemble.BeaconRadio;
import hark.ensemble.ReceiverRadio;
import hark.ensemble.Uncertain;
import hark.mission.RadioReader.BeaconPart;
import hark.mission.RadioReader.ReceiverPart;
import hark.mission.SolarReader.Solar;
import hark.power.PowerModel;
import hark.power.PowerModel.Attitude;
import hark.power.PowerModel.Bus;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Reads {@code spacecraft}, for checking once and then for each body. */
final class SpacecraftReader {
  private static final Span QUIET_MINUTES =
      Span.of(0, 20_160).usually(0, 1440).orIn("seconds", 1 / 60.0);
  private static final Span MASS_KG = Span.of(0.01, 2000).usually(0.05, 200).orIn("grams", 1e-3);
  private static final Span AREA_M2 = Span.of(0.0001, 50).usually(0.001, 5).orIn("cm²", 1e-4);
  private static final double SECONDS_PER_MINUTE = 60;

  private SpacecraftReader() {}

  /** Everything in the section; the model is that of this reading's values. */
  record Spacecraft(
      String name,
      Instant separation,
      Optional<Instant> now,
      double massKg,
      double areaSquareMeters,
      Uncertain tumbleDegPerSecond,
      PowerModel model,
      List<BeaconRadio> beacons,
      ReceiverRadio receiver) {}

  static Optional<Spacecraft> read(Section craft, Reading reading) {
    int before = reading.problems.count();
    String name = craft.text("name");
    Optional<Instant> separation =
        YamlValues.instant(craft.required("separation"), reading.problems);
    Optional<Instant> now = YamlValues.instant(craft.at("now"), reading.problems);
    double quiet = craft.number("quiet_minutes", QUIET_MINUTES, 45) * SECONDS_PER_MINUTE;
    double mass = craft.mean("mass_kg", MASS_KG);
    double area = craft.mean("area_m2", AREA_M2);
    Attitude attitude = craft.partOrDefaults("attitude", a -> AttitudeReader.read(a, reading));
    Optional<Solar> solar = craft.part("solar", s -> SolarReader.read(s, reading));
    Optional<BatteryReader.Part> battery =
        craft.part("battery", b -> BatteryReader.read(b, reading));
    Optional<Bus> bus = craft.part("bus", b -> BusReader.read(b, reading));
    int cells = battery.map(b -> b.battery().series() * b.battery().parallel()).orElse(1);
    PowerModel.Thermal thermal =
        craft.partOrDefaults(
            "thermal", t -> ThermalReader.read(t, new ThermalReader.Size(mass, area, cells)));
    List<BeaconPart> beacons = craft.parts("beacons", b -> RadioReader.beacon(b, reading));
    craft.requireDistinct(
        "beacons", beacons.stream().map(b -> b.radio().name()).toList(), "beacon");
    ReceiverPart receiver =
        craft.part("receiver", r -> RadioReader.receiver(r, reading)).orElse(ReceiverPart.NONE);
    noteUnused(craft, reading);
    if (reading.problems.count() > before) {
      return Optional.empty();
    }
    PowerModel model =
        new PowerModel(
            attitude,
            solar.orElseThrow().arrays(),
            solar.orElseThrow().charger().fitting(battery.orElseThrow().pack()),
            battery.orElseThrow().battery(),
            bus.orElseThrow(),
            thermal,
            beacons.stream().map(BeaconPart::power).toList(),
            receiver.power(),
            quiet);
    Uncertain tumble =
        reading
            .uncertain()
            .getOrDefault(
                "spacecraft.attitude.rate_deg_s", Uncertain.of(attitude.rateDegPerSecond()));
    return Optional.of(
        new Spacecraft(
            name,
            separation.orElseThrow(),
            now,
            mass,
            area,
            tumble,
            model,
            beacons.stream().map(BeaconPart::radio).toList(),
            receiver.radio()));
  }

  /** Mass and area serve only as a base for thermal defaults so far. */
  private static void noteUnused(Section craft, Reading reading) {
    YamlTree structure = MissionSense.deep(craft.node(), "thermal", "structure");
    if (structure.find("heat_capacity_J_K").isPresent()) {
      reading.notComputed.add("spacecraft.mass_kg");
    }
    if (structure.find("area_m2").isPresent()) {
      reading.notComputed.add("spacecraft.area_m2");
    }
  }
}
