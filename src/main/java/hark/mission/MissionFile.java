package hark.mission;

import hark.ensemble.BodyPrior;
import hark.ensemble.OrbitSource;
import hark.ensemble.Uncertain;
import hark.mission.SpacecraftReader.Spacecraft;
import hark.orbit.DragBody;
import hark.power.PowerModel;
import hark.station.Station;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * {@code mission.yaml} as read: pure, text in and values out.
 *
 * @param spacecraft with the body of mean numbers
 * @param body its uncertain numbers and how a draw becomes a model
 * @param sources element sets
 * @param stations in the order written
 * @param crewHoursPerWeek people's hours
 * @param crewRules what else the crew keeps to
 * @param hazardLimit options above it are ranked last, 0…1
 */
record MissionFile(
    Spacecraft spacecraft,
    BodyPrior body,
    List<OrbitSource> sources,
    List<Station> stations,
    double crewHoursPerWeek,
    CrewRules crewRules,
    double hazardLimit) {
  private static final int FORMAT = 1;
  private static final Span CREW_HOURS = Span.of(0, 2000).usually(1, 500);

  /**
   * Reads the file; problems, warnings and defaults are left in {@code reading}.
   *
   * @param tree the whole file
   * @param folder where the element-set files lie
   * @return empty when there is any problem
   */
  static Optional<MissionFile> read(YamlTree tree, FolderSource folder, Reading reading) {
    if (tree.isNothing()) {
      return Optional.empty();
    }
    Section top = Section.of(tree, reading);
    requireFormat(top, reading);
    Optional<Spacecraft> craft =
        top.part("spacecraft", s -> SpacecraftReader.read(s, reading)).flatMap(c -> c);
    List<OrbitSource> sources =
        top.part("orbit", o -> OrbitReader.read(o, folder, body(craft), reading)).orElse(List.of());
    List<Station> stations = top.parts("stations", s -> StationReader.read(s, reading));
    top.requireDistinct("stations", stations.stream().map(Station::name).toList(), "station");
    Crew crew = top.partOrDefaults("crew", MissionFile::crew);
    double hazard = top.mean("hazard_limit", Spans.FRACTION, 0.2);
    top.finish();
    craft.ifPresent(c -> MissionSense.check(top, c, stations, reading));
    if (!reading.problems.isEmpty()) {
      return Optional.empty();
    }
    craft.ifPresent(c -> EnergyBalance.check(loads(tree), c.model(), sources, reading));
    YamlTree craftNode = top.at("spacecraft");
    craft.ifPresent(c -> RestartSense.check(craftNode, c.model(), reading));
    BodyPrior body = body(tree, reading.uncertain());
    return craft.map(
        c -> new MissionFile(c, body, sources, stations, crew.hours(), crew.rules(), hazard));
  }

  private record Crew(double hours, CrewRules rules) {}

  private static Crew crew(Section crew) {
    CrewRules usual = CrewRules.USUAL;
    return new Crew(
        crew.mean("hours_per_week", CREW_HOURS, 20),
        new CrewRules(
            crew.mean("hours_between_commands", CREW_HOURS, usual.hoursBetweenCommands()),
            crew.mean("outside_hours_per_week", CREW_HOURS, usual.outsideHoursPerWeek())));
  }

  /** What the air acts on; stands for nothing when the spacecraft is refused anyway. */
  private static DragBody body(Optional<Spacecraft> craft) {
    return craft.map(c -> DragBody.of(c.massKg(), c.areaSquareMeters())).orElse(DragBody.USUAL);
  }

  private static YamlTree loads(YamlTree tree) {
    YamlTree bus = tree.find("spacecraft").flatMap(craft -> craft.find("bus")).orElseThrow();
    return bus.find("loads_W").orElseThrow();
  }

  private static void requireFormat(Section top, Reading reading) {
    YamlTree format = top.required("hark");
    if (!format.isNothing() && !format.text().equals(Integer.toString(FORMAT))) {
      reading.problems.add(
          format,
          "found format " + format.found() + ", expected " + FORMAT,
          "this program reads files that begin with 'hark: 1'");
    }
  }

  /**
   * The prior over bodies. Building a body reads the tree again with the drawn values in place of
   * the uncertain ones, each clamped to its physical span, thresholds kept in order.
   */
  private static BodyPrior body(YamlTree tree, Map<String, Uncertain> uncertain) {
    List<String> keys = new ArrayList<>(uncertain.keySet());
    // stable: how a body lies in the sky is drawn last and leaves the draws of the others alone
    keys.sort(Comparator.comparing(AttitudeReader::isOrientation));
    List<String> ordered = List.copyOf(keys);
    YamlTree craft = tree.find("spacecraft").orElseThrow();
    return new BodyPrior(
        ordered,
        ordered.stream().map(uncertain::get).toList(),
        values -> model(craft, ordered, values));
  }

  private static PowerModel model(YamlTree craft, List<String> keys, double[] values) {
    if (values.length != keys.size()) {
      throw new IllegalArgumentException(values.length + " values for " + keys.size() + " keys");
    }
    Map<String, Double> drawn = new HashMap<>();
    for (int i = 0; i < values.length; i++) {
      if (Double.isNaN(values[i])) {
        throw new IllegalArgumentException("value of " + keys.get(i) + " is not a number");
      }
      drawn.put(keys.get(i), values[i]);
    }
    Reading reading = Reading.drawn(drawn);
    return SpacecraftReader.read(Section.of(craft, reading), reading)
        .orElseThrow(() -> new IllegalStateException(reading.problems.list().toString()))
        .model();
  }
}
