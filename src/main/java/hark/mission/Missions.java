package hark.mission;

import hark.plan.Procedure;
import hark.power.Face;
import hark.problem.BadInput;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts a mission together from the files of a folder, wherever they lie. */
public final class Missions {
  private static final String CAUSES_FILE = "causes.yaml";
  private static final String MISSION_FILE = "mission.yaml";

  private Missions() {}

  /**
   * Reads and validates a mission.
   *
   * @throws BadInput with every problem of every file
   */
  public static Mission read(FolderSource folder) {
    return check(folder).orThrow();
  }

  /**
   * Reads a mission as if some keys of its {@code mission.yaml} had other values.
   *
   * @param overrides YAML by dotted key path, as problems and defaults print it; items of lists by
   *     number or name; {@code null} takes a key away; laid over the file in the map's order
   * @throws BadInput with every problem; those of an override point to {@code --what-if KEY=VALUE}
   */
  public static Mission read(FolderSource folder, Map<String, String> overrides) {
    return check(folder, overrides).orThrow();
  }

  /** Reads a mission and reports every problem, warning and default; throws nothing for them. */
  public static MissionCheck check(FolderSource folder) {
    return check(folder, Map.of());
  }

  /** The same with other values for some keys, as in {@link #read(FolderSource, Map)}. */
  public static MissionCheck check(FolderSource folder, Map<String, String> overrides) {
    Reading reading = Reading.first();
    Overrides whatIf = new Overrides(overrides);
    YamlTree tree = missionTree(folder, whatIf, reading);
    Optional<MissionFile> file = MissionFile.read(tree, folder, reading);
    whatIf.explain(reading);
    Optional<CausesFile> causes = causes(folder, file.map(Missions::faces), reading);
    List<Procedure> procedures = Procedures.with(folder, reading.problems, reading.warnings);
    Optional<Mission> mission =
        reading.problems.isEmpty()
            ? Optional.of(assemble(file.orElseThrow(), causes.orElseThrow(), procedures, reading))
            : Optional.empty();
    return new MissionCheck(
        mission,
        reading.problems.list(),
        List.copyOf(reading.warnings),
        causes.map(CausesFile::notes).orElse(List.of()),
        List.copyOf(reading.defaults),
        List.copyOf(reading.notComputed),
        mission.isPresent() ? MissionNumbers.of(tree, reading.numbers) : List.of());
  }

  /** The mission file with other values in their places; nothing when it cannot be read. */
  private static YamlTree missionTree(FolderSource folder, Overrides overrides, Reading reading) {
    String label = folder.label(MISSION_FILE);
    YamlTree none = YamlTree.nothing(label, "");
    try {
      Optional<String> yaml = folder.text(MISSION_FILE);
      if (yaml.isEmpty()) {
        reading.problems.addAll(
            BadInput.of("there is no " + MISSION_FILE, label, "write it, or name another folder")
                .problems());
        return none;
      }
      YamlTree file = YamlTree.parse(label, yaml.get(), reading.problems);
      return file.isNothing() ? none : overrides.over(file, reading.problems);
    } catch (BadInput bad) {
      reading.problems.addAll(bad.problems());
      return none;
    }
  }

  private static List<Face> faces(MissionFile file) {
    return file.spacecraft().model().arrays().faces();
  }

  private static Optional<CausesFile> causes(
      FolderSource folder, Optional<List<Face>> faces, Reading reading) {
    String label = folder.label(CAUSES_FILE);
    try {
      Optional<String> yaml = folder.text(CAUSES_FILE);
      String own = yaml.orElse(CausesFile.NOTHING_OWN);
      Optional<CausesFile> causes = CausesFile.read(label, own, faces, reading.problems);
      causes.ifPresent(found -> reading.warnings.addAll(found.warnings()));
      return causes;
    } catch (BadInput bad) {
      reading.problems.addAll(bad.problems());
      return Optional.empty();
    }
  }

  private static Mission assemble(
      MissionFile file, CausesFile causes, List<Procedure> procedures, Reading reading) {
    SpacecraftReader.Spacecraft craft = file.spacecraft();
    return new Mission(
        craft.name(),
        craft.separation(),
        craft.now(),
        craft.massKg(),
        craft.areaSquareMeters(),
        file.body(),
        craft.tumbleDegPerSecond(),
        craft.beacons(),
        craft.receiver(),
        file.sources(),
        file.stations(),
        file.crewHoursPerWeek(),
        causes.causes(),
        causes.tree(),
        procedures,
        file.hazardLimit(),
        List.copyOf(reading.warnings),
        file.crewRules());
  }
}
