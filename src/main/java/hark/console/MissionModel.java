package hark.console;

import hark.assessment.Assessment;
import hark.assessment.Assessment.Window;
import hark.assessment.CaseDesk;
import hark.assessment.EnergyDesk;
import hark.assessment.FirstLook;
import hark.assessment.PlanDesk;
import hark.assessment.TreeAgainstSimulation;
import hark.document.MissionFacts;
import hark.evidence.Entry;
import hark.evidence.EvidenceBook;
import hark.evidence.EvidenceContext;
import hark.journal.Journal;
import hark.mission.FolderSource;
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
 * A mission with its journal, as the console sees it. What time it is, {@link MissionClock} says.
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
  private final MissionPass pass;
  private final Optional<Rehearsal> rehearsal;
  private final Optional<FrozenFolder> folder;
  private final Optional<MissionPapers> papers;
  private final Optional<MissionOrbit> orbit;
  private Optional<Known> last = Optional.empty();
  private Optional<FirstLook> firstLook = Optional.empty();

  private record Known(List<Entry> entries, Answer answer) {}

  /**
   * An assessment as it was worked out.
   *
   * @param desk answers questions about its electrical system; empty when there is none
   * @param plan answers questions about its plan; empty when there is none
   * @param goingOn makes the case for going on; empty when there is none
   * @param firstLook answers for one more entry until that is worked out; empty when nobody can
   */
  public record Worked(
      Assessment assessment,
      Optional<EnergyDesk> desk,
      Optional<PlanDesk> plan,
      Optional<CaseDesk> goingOn,
      Optional<FirstLook> firstLook) {
    /** Without anybody who answers for the plan or for later entries. */
    public Worked(Assessment assessment, Optional<EnergyDesk> desk) {
      this(assessment, desk, Optional.empty(), Optional.empty(), Optional.empty());
    }
  }

  /** Makes an assessment from a mission's whole record at a time; pure. */
  @FunctionalInterface
  public interface Assessing {
    /** Works it out; may take seconds. */
    Worked assess(Mission mission, List<Entry> entries, Instant now);
  }

  /**
   * How a mission's numbers are worked out, and on which Earth its passes are.
   *
   * @param folder where the mission was read, for asking "what if"; without it nobody can
   */
  public record Working(Assessing assessing, EarthModel earth, Optional<FolderSource> folder) {
    /** The same for a mission read there. */
    public Working in(FolderSource source) {
      return new Working(assessing, earth, Optional.of(source));
    }
  }

  /** A mission on the bundled Earth. */
  public MissionModel(
      Mission mission, Journal journal, InstantSource clock, Assessing assessing, String notice) {
    this(
        mission,
        journal,
        clock,
        new Working(assessing, EarthModel.bundled(), Optional.empty()),
        notice);
  }

  /**
   * @param clock real time, not asked when the mission has its own; or a {@link Rehearsal}, which
   *     stands above both
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
    this.pass = new MissionPass(mission, working.earth(), sky);
    this.rehearsal = clock instanceof Rehearsal own ? Optional.of(own) : Optional.empty();
    this.folder = working.folder().map(FrozenFolder::new);
    this.orbit = working.folder().map(files -> new MissionOrbit(mission, working.earth(), files));
    this.papers =
        folder.map(
            files ->
                new MissionPapers(
                    files,
                    mission,
                    assessing,
                    () -> TreeAgainstSimulation.warnings(mission, working.earth())));
  }

  @Override
  public synchronized Answer assess() {
    List<Entry> entries = entries();
    Instant now = now();
    Optional<Answer> fresh =
        last.filter(known -> known.entries.equals(entries))
            .map(Known::answer)
            .filter(known -> isFresh(known.assessment().now(), now));
    if (fresh.isPresent()) {
      return fresh.get();
    }
    Worked worked = assessing.assess(mission, entries, now);
    Optional<EnergyQuestions> energy =
        worked.desk().flatMap(desk -> folder.map(files -> new MissionEnergy(desk, files)));
    Answer answer =
        new Answer(
            worked.assessment(), energy, worked.plan(), worked.goingOn().map(desk -> desk::made));
    firstLook = worked.firstLook();
    last = Optional.of(new Known(entries, answer));
    return answer;
  }

  @Override
  public synchronized Optional<Answer> provisional() {
    List<Entry> entries = entries();
    boolean longer = last.isPresent() && entries.size() > last.get().entries.size();
    return longer
        ? firstLook
            .flatMap(look -> look.after(entries, now()))
            .map(assessment -> last.get().answer.with(assessment))
        : Optional.empty();
  }

  private static boolean isFresh(Instant known, Instant now) {
    return !known.isAfter(now) && Duration.between(known, now).compareTo(FRESH) < 0;
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
    return entry
        .token()
        .map(token -> journal.appendOnce(token, draft, now, who, note))
        .orElseGet(() -> journal.append(draft, now, who, note))
        .number();
  }

  @Override
  public Optional<Integer> delivered(String token) {
    return journal.delivered(token);
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
  public Optional<MissionPapers> papers() {
    return papers;
  }

  @Override
  public Optional<MissionOrbit> orbit() {
    return orbit;
  }

  @Override
  public Optional<Journal.Verification> chain() {
    return Optional.of(journal.verify());
  }

  @Override
  public Optional<PassView> pass(Window window) {
    return pass.view(window);
  }

  @Override
  public Optional<Rehearsal> rehearsal() {
    return rehearsal;
  }

  @Override
  public Map<String, List<String>> mayAuthorise() {
    return MissionFacts.of(mission).mayAuthorise();
  }

  @Override
  public Instant now() {
    return rehearsal
        .map(Rehearsal::instant)
        .orElseGet(() -> MissionClock.now(mission, entries(), clock));
  }

  @Override
  public boolean ownClock() {
    return mission.now().isPresent() && rehearsal.isEmpty();
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
