package hark.assessment;

import hark.ensemble.Candidate;
import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.EnergyFan;
import hark.ensemble.OrbitSource;
import hark.evidence.CommandSent;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.evidence.EvidenceBook;
import hark.evidence.OutsideReport;
import hark.evidence.SearchResult;
import hark.mission.Mission;
import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.plan.PlanOutcome;
import hark.plan.PlanSettings;
import hark.plan.Planner;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The pure function from mission, record and clock to an {@link Assessment}. Same input, same
 * answer; no file, clock or socket is touched.
 */
public final class Assessor {
  private Assessor() {}

  /**
   * Assesses with the bundled Earth data.
   *
   * @throws BadInput when the record contradicts the mission, such as an entry of an unknown
   *     station
   */
  public static Assessment assess(Mission mission, List<Entry> journal, AssessmentRequest request) {
    return assess(mission, journal, request, EarthModel.bundled());
  }

  /** Assesses with given Earth data. */
  public static Assessment assess(
      Mission mission, List<Entry> journal, AssessmentRequest request, EarthModel earth) {
    return examine(mission, journal, request, earth).assessment();
  }

  /**
   * Assesses and keeps what answers further questions about the electrical system. Costs no more
   * than the assessment: what those questions need is worked out when the first of them is asked.
   */
  public static Examination examine(
      Mission mission, List<Entry> journal, AssessmentRequest request, EarthModel earth) {
    List<Entry> evidence = evidence(mission, journal, request);
    return Threads.with(
        request.threads(),
        workers -> {
          Diagnosis diagnosis = Diagnosis.of(input(mission, evidence, request, earth), workers);
          PlanSettings settings = settings(mission, evidence, request.now());
          PlanOutcome plan = Planner.plan(diagnosis, mission.procedures(), settings, workers);
          List<EnergyFan.Point> fan = diagnosis.energy(workers);
          EnergyView view = EnergyView.of(diagnosis, fan);
          Assessment assessment =
              new AssessmentBuilder(mission, evidence, request, diagnosis, plan, workers)
                  .build(fan, view);
          EnergyDesk energy = EnergyDesk.of(mission, diagnosis, view, request.threads());
          CaseDesk goingOn =
              new CaseDesk(mission, diagnosis, plan, assessment, energy, request.threads());
          FirstLook firstLook = new FirstLook(mission, request, diagnosis, assessment);
          return new Examination(
              assessment, energy, goingOn, PlanDesk.of(assessment, plan), firstLook);
        });
  }

  /** What a plan must keep to: the mission's limits, and this week's hours that are gone. */
  static PlanSettings settings(Mission mission, List<Entry> evidence, Instant now) {
    return mission.planSettings().spent(SpentHours.of(mission.stations(), evidence, now));
  }

  /** Only what concerns the electrical system: the diagnosis without the plan. */
  public static EnergyDesk energy(
      Mission mission, List<Entry> journal, AssessmentRequest request, EarthModel earth) {
    List<Entry> evidence = evidence(mission, journal, request);
    return Threads.with(
        request.threads(),
        workers -> {
          Diagnosis diagnosis = Diagnosis.of(input(mission, evidence, request, earth), workers);
          EnergyView view = EnergyView.of(diagnosis, diagnosis.energy(workers));
          return EnergyDesk.of(mission, diagnosis, view, request.threads());
        });
  }

  private static List<Entry> evidence(
      Mission mission, List<Entry> journal, AssessmentRequest request) {
    List<Entry> evidence = EvidenceBook.effective(journal, request.now());
    refuseStrangers(mission, evidence);
    return evidence;
  }

  private static void refuseStrangers(Mission mission, List<Entry> evidence) {
    List<Problem> problems = new ArrayList<>();
    List<String> names = mission.stations().stream().map(station -> station.name()).toList();
    for (Entry entry : evidence) {
      String station = station(entry.evidence());
      if (!station.isEmpty() && !names.contains(station)) {
        problems.add(
            new Problem(
                "no station is called " + station + "; the mission has " + String.join(", ", names),
                "journal entry " + entry.number(),
                "correct the entry: hark log MISSION correction of="
                    + entry.number()
                    + " station=…"));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
  }

  private static String station(Evidence evidence) {
    if (evidence instanceof Evidence.NothingHeard silence) {
      return silence.station();
    }
    if (evidence instanceof Evidence.Heard heard) {
      return heard.station();
    }
    if (evidence instanceof Evidence.StationCheck check) {
      return check.station();
    }
    if (evidence instanceof SearchResult result) {
      return result.station().orElse("");
    }
    if (evidence instanceof OutsideReport report && report.place().isEmpty()) {
      return report.station().orElse("");
    }
    if (evidence instanceof CommandSent sent) {
      return sent.station();
    }
    return evidence instanceof Evidence.NotListened not ? not.station() : "";
  }

  /** What the diagnosis of a mission depends on. */
  public static DiagnosisInput input(
      Mission mission, List<Entry> evidence, AssessmentRequest request, EarthModel earth) {
    if (!request.now().isAfter(mission.separation())) {
      throw BadInput.of(
          "the clock " + request.now() + " is not after separation " + mission.separation(),
          "--now",
          "give a time after separation; before it there is nothing to diagnose");
    }
    Instant end = request.now().plusMillis(Math.round(request.horizonDays() * 86_400_000));
    return new DiagnosisInput(
        mission.separation(),
        request.now(),
        end,
        mission.body(),
        mission.beacons(),
        mission.receiver(),
        candidates(mission),
        mission.stations(),
        mission.causes(),
        SentProcedures.asCommands(evidence, mission.procedures()),
        earth,
        request.bodiesPerSet(),
        request.seed());
  }

  /** The candidates of all sources; what their weights leave to 1 belongs to none of them. */
  static List<Candidate> candidates(Mission mission) {
    List<Candidate> candidates = new ArrayList<>();
    double sum = 0;
    for (OrbitSource source : mission.sources()) {
      for (Map.Entry<String, Double> weight : source.candidates().entrySet()) {
        List<ElementSet> sets =
            source.sets().stream().filter(set -> set.objectId().equals(weight.getKey())).toList();
        candidates.add(
            new Candidate(weight.getKey(), sets, source.alongTrack(), weight.getValue()));
        sum += weight.getValue();
      }
    }
    double none = 1 - sum;
    if (none > 1e-9 && !candidates.isEmpty()) {
      Candidate likeliest =
          candidates.stream().reduce((a, b) -> b.prior() > a.prior() ? b : a).orElseThrow();
      candidates.add(new Candidate(Candidate.NONE, likeliest.sets(), likeliest.alongTrack(), none));
    }
    return candidates;
  }

  /** Time between two instants in days. */
  static double days(Instant from, Instant to) {
    return Duration.between(from, to).toMillis() / 86_400_000.0;
  }
}
