package hark.cli;

import hark.evidence.Entry;
import hark.evidence.EvidenceBook;
import hark.evidence.EvidenceBook.Draft;
import hark.evidence.EvidenceContext;
import hark.journal.Journal;
import hark.mission.Mission;
import hark.mission.MissionClock;
import hark.mission.MissionFolder;
import hark.mission.Missions;
import hark.orbit.EarthModel;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A mission folder with its journal: what a command reads from it and how it writes an entry.
 *
 * @param folder holds {@code mission.yaml}, {@code journal.db} and {@code entries/}
 */
record MissionRecord(Path folder, Mission mission) {
  private static final String JOURNAL = "journal.db";

  /**
   * Reads the mission.
   *
   * @throws hark.problem.BadInput with everything wrong in the folder
   */
  static MissionRecord read(Path folder) {
    return new MissionRecord(folder, MissionFolder.read(folder));
  }

  /**
   * The mission as it would be with other values in its file; nothing on disk changes.
   *
   * @param overrides values by key path, as they would be written
   * @throws hark.problem.BadInput naming each key that is unknown and each value that is wrong
   */
  Mission with(Map<String, String> overrides) {
    return Missions.read(MissionFolder.at(folder), overrides);
  }

  /** Where the journal is or will be. */
  static Path journal(Path folder) {
    return folder.resolve(JOURNAL);
  }

  /** Every entry so far; none when nothing was logged yet. */
  List<Entry> entries() {
    return Journal.read(journal(folder));
  }

  /** The time it is for the mission, by the one rule of {@link MissionClock}. */
  Instant now(Clock clock) {
    return mission.now().isPresent()
        ? MissionClock.now(mission, entries(), clock)
        : clock.instant();
  }

  /**
   * Appends an entry; it is on disk when this returns.
   *
   * @param at when it happened, for kinds whose keys do not say
   * @param keys as typed; {@code who} and {@code note} may be among them
   * @throws hark.problem.BadInput with all problems of the entry; nothing is written then
   */
  Entry log(Clock clock, EarthModel earth, Instant at, String kind, Map<String, String> keys) {
    Map<String, String> own = new TreeMap<>(keys);
    String who = removed(own, "who");
    String note = removed(own, "note");
    Draft draft = EvidenceBook.draft(entries(), kind, own, context(clock, earth, at));
    try (Journal journal = Journal.open(journal(folder))) {
      return journal.append(draft, now(clock), who, note);
    }
  }

  private static String removed(Map<String, String> keys, String key) {
    String value = keys.remove(key);
    return value == null ? "" : value.strip();
  }

  /** What the mission knows, for checking an entry. */
  EvidenceContext context(Clock clock, EarthModel earth, Instant at) {
    return new EvidenceContext(
        at,
        mission.separation(),
        mission.now().isPresent() ? Instant.MAX : clock.instant(),
        mission.stations().stream().map(station -> station.name()).toList(),
        mission.sources().stream().flatMap(s -> s.candidates().keySet().stream()).toList(),
        new PredictedPasses(mission, earth)::find);
  }
}
