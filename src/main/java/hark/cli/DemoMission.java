package hark.cli;

import hark.evidence.Entry;
import hark.evidence.EvidenceContext;
import hark.journal.Journal;
import hark.mission.FolderSource;
import hark.mission.Mission;
import hark.mission.Missions;
import hark.mission.ResourceFolder;
import hark.problem.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The demo that lies in the program: an invented mission with its own clock, and the record of its
 * crew.
 *
 * @param entries numbered from 1, as a journal would hold them
 */
record DemoMission(Mission mission, List<Entry> entries) {
  private static final FolderSource FOLDER = ResourceFolder.of("hark/demo");
  private static final List<String> FILES =
      List.of(
          "mission.yaml",
          "orbit/launch-731.tle",
          "recordings/first-contact.csv",
          "recordings/first-contact.tdm");
  private static final String LOG = "entries.jsonl";
  private static final String JOURNAL = "journal.db";

  /** Reads the demo; touches no disk but the program's own files. */
  static DemoMission load() {
    Mission mission = Missions.read(FOLDER);
    return new DemoMission(mission, DemoLog.replay(log(), context(mission), DemoLog.inMemory()));
  }

  /**
   * Writes the demo as a mission folder with its journal.
   *
   * @throws BadInput when the folder is there and holds anything; it is untouched then
   * @throws CouldNot when the disk refuses
   */
  static List<Path> writeTo(Path directory) {
    refuseOccupied(directory);
    try {
      for (String file : FILES) {
        Path target = directory.resolve(file);
        Files.createDirectories(target.getParent());
        Files.writeString(target, text(file), StandardOpenOption.CREATE_NEW);
      }
    } catch (IOException e) {
      throw new CouldNot("the demo could not be written to " + directory + ": " + e, e);
    }
    Path journal = directory.resolve(JOURNAL);
    try (Journal book = Journal.open(journal)) {
      DemoLog.replay(log(), context(Missions.read(FOLDER)), book::append);
    }
    return Stream.concat(FILES.stream().map(directory::resolve), Stream.of(journal)).toList();
  }

  private static List<DemoLog.Line> log() {
    return DemoLog.lines(text(LOG));
  }

  private static EvidenceContext context(Mission mission) {
    return new EvidenceContext(
        mission.separation(),
        mission.separation(),
        mission.now().orElse(Instant.MAX),
        mission.stations().stream().map(station -> station.name()).toList(),
        mission.sources().stream().flatMap(s -> s.candidates().keySet().stream()).toList(),
        (station, time) -> Optional.empty());
  }

  private static String text(String file) {
    return FOLDER
        .text(file)
        .orElseThrow(() -> new IllegalStateException("the program lacks its demo file " + file));
  }

  private static void refuseOccupied(Path directory) {
    if (!Files.exists(directory)) {
      return;
    }
    try (Stream<Path> inside =
        Files.isDirectory(directory) ? Files.list(directory) : Stream.of(directory)) {
      if (inside.findAny().isPresent()) {
        throw BadInput.of(
            "there is something here already and nothing is overwritten",
            directory.toString(),
            "name a folder that does not exist yet");
      }
    } catch (IOException e) {
      throw new CouldNot(directory + " could not be read: " + e, e);
    }
  }
}
