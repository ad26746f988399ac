package hark.console;

import hark.assessment.Assessment;
import hark.assessment.Assessment.Window;
import hark.document.MissionFacts;
import hark.evidence.Entry;
import hark.evidence.EvidenceBook;
import hark.evidence.EvidenceContext;
import hark.journal.Journal;
import hark.mission.Mission;
import hark.mission.MissionClock;
import hark.orbit.EarthModel;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A mission with its journal, as the console sees it.. What time it is, {@link MissionClock} says.
 */
public final class MissionModel implements ConsoleModel {
  /** In a rehearsal, how far ahead of the clock an outcome may be written down. */
  static final Duration AHEAD = Duration.ofDays(30);

  /** An answer this fresh is not worked out again when nothing was recorded since. */
  static final Duration FRESH = Duration.ofMinutes(1);

  private final Mission mission;
  private final Journal journal;
  private final InstantSource clock;
  private final Assessing assessing;
  private final String notice;
  private final MissionSky sky;
  private Optional<Known> last = Optional.empty();

  private record Known(List<Entry> entries, Assessment assessment) {}

  /** Makes an assessment from a mission's whole record at a time; pure. */
  @FunctionalInterface
  public interface Assessing {
    /** Works it out; may take seconds. */
    Assessment assess(Mission mission, List<Entry> entries, Instant now);
  }

  /** How a mission's numbers are worked out, and on which Earth its passes are. */
  public record Working(Assessing assessing, EarthModel earth) {}

  /** A mission on the bundled Earth. */
  public MissionModel(
      Mission mission, Journal journal, InstantSource clock, Assessing assessing, String notice) {
    this(mission, journal, clock, new Working(assessing, EarthModel.bundled()), notice);
  }

  /**
   * @param clock real time; not asked when the mission has its own
   * @param notice a sentence the page shows at its head; may be empty
   */
  public MissionModel(
      Mission mission, Journal journal, InstantSource clock, Working working, String notice) {
    this.mission = mission;
    this.journal = journal;
    this.clock = clock;
    this.assessing = working.assessing();
    this.notice = notice;
    this.sky = new MissionSky(mission, working.earth());
  }

  @Override
  public synchronized Assessment assess() {
    List<Entry> entries = entries();
    Instant now = now();
    Optional<Assessment> fresh =
        last.filter(known -> known.entries.equals(entries))
            .map(Known::assessment)
            .filter(known -> !known.now().isAfter(now))
            .filter(known -> Duration.between(known.now(), now).compareTo(FRESH) < 0);
    if (fresh.isPresent()) {
      return fresh.get();
    }
    Assessment assessment = assessing.assess(mission, entries, now);
    last = Optional.of(new Known(entries, assessment));
    return assessment;
  }

  @Override
  public List<Entry> entries() {
    return journal.list();
  }

  @Override
  public int append(NewEntry entry) {
    Map<String, String> keys = new TreeMap<>(entry.keys());
    String who = Optional.ofNullable(keys.remove("who")).orElse("");
    String note = Optional.ofNullable(keys.remove("note")).orElse("");
    Instant now = now();
    EvidenceBook.Draft draft = EvidenceBook.draft(journal.list(), entry.kind(), keys, context(now));
    return journal.append(draft, now, who, note).number();
  }

  @Override
  public List<PastWindow> pastWindows() {
    return sky.past(now());
  }

  @Override
  public Optional<SkyView> sky(Window window) {
    return sky.view(window);
  }

  @Override
  public Map<String, List<String>> mayAuthorise() {
    return MissionFacts.of(mission).mayAuthorise();
  }

  @Override
  public Instant now() {
    return MissionClock.now(mission, entries(), clock);
  }

  @Override
  public boolean ownClock() {
    return mission.now().isPresent();
  }

  @Override
  public String notice() {
    return notice;
  }

  private EvidenceContext context(Instant now) {
    return new EvidenceContext(
        now,
        mission.separation(),
        ownClock() ? now.plus(AHEAD) : now,
        mission.stations().stream().map(station -> station.name()).toList(),
        mission.sources().stream().flatMap(s -> s.candidates().keySet().stream()).toList(),
        sky::find);
  }
}
