package hark.cli;

import hark.assessment.Assessment;
import hark.console.ConsoleServer;
import hark.console.ConsoleSettings;
import hark.console.MissionModel;
import hark.journal.Journal;
import hark.journal.JournalUnavailable;
import hark.mission.Mission;
import hark.mission.MissionFolder;
import java.io.IOException;
import java.net.BindException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What {@code hark serve} keeps open: a mission, its journal and the console over them. */
final class Desk implements AutoCloseable {
  private static final String FORGOTTEN =
      "This is the built-in demo of an invented satellite: what is written down here is forgotten"
          + " when it stops.";

  private final Mission mission;
  private final Journal journal;
  private final MissionModel model;
  private final Optional<Path> forgotten;
  private ConsoleServer server;

  private Desk(
      Mission mission,
      Path journalFile,
      Clock clock,
      MissionModel.Working working,
      Optional<Path> forgotten) {
    this.mission = mission;
    this.forgotten = forgotten;
    try {
      this.journal = Journal.open(journalFile);
    } catch (JournalUnavailable e) {
      throw new CouldNot(e.getMessage(), e);
    }
    this.model =
        new MissionModel(mission, journal, clock, working, forgotten.isPresent() ? FORGOTTEN : "");
  }

  /** Opens a mission folder and the journal in it. */
  static Desk folder(Path folder, Clock clock, MissionModel.Working working) {
    Mission mission = MissionFolder.read(folder);
    MissionModel.Working here = working.in(MissionFolder.at(folder));
    return new Desk(mission, folder.resolve("journal.db"), clock, here, Optional.empty());
  }

  /** Writes the demo to a folder that is deleted when the desk is closed, and opens that. */
  static Desk demo(Clock clock, MissionModel.Working working) {
    try {
      Path folder = Files.createTempDirectory("hark-demo-");
      DemoMission.writeTo(folder);
      Path journal = folder.resolve("journal.db");
      MissionModel.Working here = working.in(MissionFolder.at(folder));
      return new Desk(MissionFolder.read(folder), journal, clock, here, Optional.of(folder));
    } catch (IOException e) {
      throw new CouldNot("no room for the demo's journal could be made: " + e.getMessage(), e);
    }
  }

  /** Starts the console; the first assessment is then being worked out. */
  void serve(ConsoleSettings settings) {
    try {
      server = ConsoleServer.start(model, settings);
    } catch (BindException e) {
      throw new CouldNot(
          "port " + settings.port() + " is in use; take another with --port, or stop what uses it",
          e);
    } catch (IOException e) {
      throw new CouldNot("the console could not start: " + e.getMessage(), e);
    }
  }

  /** The assessment the console shows first; waits for it. */
  Assessment assess() {
    return model.assess().assessment();
  }

  /** By station, who may authorise a transmission there. */
  Map<String, List<String>> mayAuthorise() {
    return model.mayAuthorise();
  }

  String name() {
    return mission.name();
  }

  URI address() {
    return server.address();
  }

  /** Stops the console, closes the journal, forgets the demo. */
  @Override
  public void close() {
    if (server != null) {
      server.close();
    }
    journal.close();
    forgotten.ifPresent(Desk::delete);
  }

  private static void delete(Path folder) {
    try (Stream<Path> inside = Files.walk(folder)) {
      List<Path> deepestFirst = inside.sorted(Comparator.reverseOrder()).toList();
      for (Path path : deepestFirst) {
        Files.deleteIfExists(path);
      }
    } catch (IOException e) {
      // A temporary folder that will not go harms nobody; the system clears it.
    }
  }
}
