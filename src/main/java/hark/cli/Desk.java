package hark.cli;

import hark.assessment.Assessment;
import hark.console.ConsoleServer;
import hark.console.ConsoleSettings;
import hark.console.MissionModel;
import hark.evidence.Entry;
import hark.evidence.EvidenceBook.Draft;
import hark.journal.Journal;
import hark.journal.JournalUnavailable;
import hark.mission.Mission;
import hark.mission.MissionFolder;
import java.io.IOException;
import java.net.BindException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
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

  private static final String REHEARSED =
      "This is a rehearsal on a copy of the journal: what is written down here is forgotten when it"
          + " stops.";

  private final Mission mission;
  private final Journal journal;
  private final MissionModel model;
  private final Optional<Path> forgotten;
  private ConsoleServer server;

  private Desk(Mission mission, Journal journal, MissionModel model, Optional<Path> forgotten) {
    this.mission = mission;
    this.journal = journal;
    this.model = model;
    this.forgotten = forgotten;
  }

  /** Opens a mission folder and the journal in it; a rehearsal writes into a copy. */
  static Desk folder(Path folder, Pace pace, MissionModel.Working working) {
    Mission mission = MissionFolder.read(folder);
    MissionModel.Working here = working.in(MissionFolder.at(folder));
    Path file = folder.resolve("journal.db");
    if (!pace.isRehearsal() || mission.now().isPresent()) {
      Journal journal = open(file);
      return new Desk(mission, journal, model(mission, journal, pace, here, ""), Optional.empty());
    }
    Path copy = temporary("hark-rehearsal-");
    Journal journal = open(copy.resolve("journal.db"));
    copied(Journal.read(file), journal);
    return new Desk(
        mission, journal, model(mission, journal, pace, here, REHEARSED), Optional.of(copy));
  }

  /** Writes the demo to a folder that is deleted when the desk is closed, and opens that. */
  static Desk demo(Pace pace, MissionModel.Working working) {
    Path folder = temporary("hark-demo-");
    DemoMission.writeTo(folder);
    Mission mission = MissionFolder.read(folder);
    Journal journal = open(folder.resolve("journal.db"));
    MissionModel.Working here = working.in(MissionFolder.at(folder));
    return new Desk(
        mission, journal, model(mission, journal, pace, here, FORGOTTEN), Optional.of(folder));
  }

  private static MissionModel model(
      Mission mission, Journal journal, Pace pace, MissionModel.Working working, String notice) {
    return new MissionModel(mission, journal, pace.clock(mission), working, notice);
  }

  private static Journal open(Path file) {
    try {
      return Journal.open(file);
    } catch (JournalUnavailable e) {
      throw new CouldNot(e.getMessage(), e);
    }
  }

  private static Path temporary(String name) {
    try {
      return Files.createTempDirectory(name);
    } catch (IOException e) {
      throw new CouldNot("no room for a journal could be made: " + e.getMessage(), e);
    }
  }

  private static void copied(List<Entry> entries, Journal into) {
    for (Entry entry : entries) {
      Draft draft = new Draft(entry.evidence().kind(), entry.keys(), entry.evidence());
      into.append(draft, entry.recordedAt(), entry.who(), entry.note());
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
