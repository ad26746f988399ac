package hark.assessment;

import hark.ensemble.Candidate;
import hark.ensemble.Cause;
import hark.ensemble.CauseMarginal;
import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.EnergyFan;
import hark.ensemble.EventSet;
import hark.ensemble.SharedLikelihood;
import hark.ensemble.Workers;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.mission.Mission;
import hark.plan.PlanOutcome;
import hark.plan.Procedure;
import hark.problem.Problem;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts the results of diagnosis and plan into the words and order of an {@link Assessment}. */
final class AssessmentBuilder {
  private final Mission mission;
  private final List<Entry> evidence;
  private final AssessmentRequest request;
  private final Diagnosis diagnosis;
  private final DiagnosisInput input;
  private final PlanOutcome plan;
  private final Workers workers;
  private final List<SharedLikelihood> shared;

  AssessmentBuilder(
      Mission mission,
      List<Entry> evidence,
      AssessmentRequest request,
      Diagnosis diagnosis,
      PlanOutcome plan,
      Workers workers) {
    this.mission = mission;
    this.evidence = evidence;
    this.request = request;
    this.diagnosis = diagnosis;
    this.input = diagnosis.input();
    this.plan = plan;
    this.workers = workers;
    this.shared = diagnosis.sharedLikelihoods();
  }

  Assessment build(List<EnergyFan.Point> fan, EnergyView energy) {
    WindowViews windows = new WindowViews(diagnosis, plan, fan, workers);
    return new Assessment(
        mission.name(),
        request.now(),
        mission.separation(),
        request.horizonDays(),
        diagnosis.bodies(),
        request.seed(),
        diagnosis.remainder(),
        diagnosis.remainderBound(),
        diagnosis.misfit(),
        silence(),
        explanations(),
        causes(),
        groups(),
        objects(),
        stations(),
        evidenceViews(),
        energy.energy(),
        energy.shadows(),
        energy.cutoffSoc(),
        windows.all(),
        new Assessment.Plan(
            windows.choices(),
            plan.costHours(),
            plan.heardByHorizon(),
            plan.upperBound(),
            plan.meanDaysToHear()),
        plan.goingOn().stream().map(point -> new Assessment.GoingOn(point[0], point[1])).toList(),
        mission.crewHoursPerWeek(),
        procedures(),
        mission.warnings().stream().map(Problem::line).toList());
  }

  private Assessment.Silence silence() {
    Optional<Instant> last = Diagnosis.lastHeard(evidence);
    int silent = 0;
    for (Entry entry : evidence) {
      boolean after = last.map(heard -> entry.evidence().at().isAfter(heard)).orElse(true);
      silent += after && entry.evidence() instanceof Evidence.NothingHeard ? 1 : 0;
    }
    return new Assessment.Silence(last, silent);
  }

  private List<Assessment.Explanation> explanations() {
    double[] weights = diagnosis.setWeights();
    double[] errors = diagnosis.setErrors();
    List<Assessment.Explanation> list = new ArrayList<>();
    for (int s = 0; s < weights.length; s++) {
      EventSet set = diagnosis.sets().get(s);
      List<Cause> causes = set.causes().stream().sorted().map(input.causes()::get).toList();
      String title =
          causes.isEmpty()
              ? "nothing wrong, missed"
              : String.join(" and ", causes.stream().map(Cause::title).toList());
      list.add(
          new Assessment.Explanation(
              causes.stream().map(Cause::id).toList(), title, set.prior(), weights[s], errors[s]));
    }
    list.sort(Comparator.comparingDouble(Assessment.Explanation::posterior).reversed());
    return list;
  }

  private List<Assessment.CauseView> causes() {
    List<CauseMarginal> marginals = diagnosis.causes();
    List<Assessment.CauseView> list = new ArrayList<>();
    for (int c = 0; c < marginals.size(); c++) {
      Cause cause = input.causes().get(c);
      CauseMarginal marginal = marginals.get(c);
      list.add(
          new Assessment.CauseView(
              cause.id(),
              cause.title(),
              cause.branch(),
              marginal.prior(),
              marginal.posterior(),
              marginal.later(),
              marginal.error(),
              marginal.ifPriorHalved(),
              marginal.ifPriorDoubled(),
              groupOf(c),
              recovery(plan.recoveries().get(c)),
              cause.mechanism(),
              cause.signature()));
    }
    list.sort(Comparator.comparingDouble(Assessment.CauseView::posterior).reversed());
    return list;
  }

  private Optional<String> groupOf(int cause) {
    for (int g = 0; g < shared.size(); g++) {
      if (shared.get(g).causes().contains(cause)) {
        return Optional.of(groupId(g));
      }
    }
    return Optional.empty();
  }

  private static String groupId(int group) {
    return "group-" + (group + 1);
  }

  private Assessment.SelfRecovery recovery(PlanOutcome.Recovery recovery) {
    return new Assessment.SelfRecovery(
        recovery.probability(),
        recovery.p10().map(input::instant),
        recovery.p50().map(input::instant),
        recovery.p90().map(input::instant),
        note(recovery));
  }

  private String note(PlanOutcome.Recovery recovery) {
    if (recovery.weight() == 0) {
      return "no possibility that still counts has it";
    }
    if (recovery.probability() == 0) {
      return "never by itself before " + Words.date(input.end()) + ", where this look ahead ends";
    }
    if (recovery.p50().isEmpty()) {
      return "mostly not before " + Words.date(input.end());
    }
    return "";
  }

  private List<Assessment.Group> groups() {
    List<Assessment.Group> list = new ArrayList<>();
    for (int g = 0; g < shared.size(); g++) {
      SharedLikelihood group = shared.get(g);
      List<Cause> causes = group.causes().stream().map(input.causes()::get).toList();
      double prior =
          1
              - causes.stream()
                  .mapToDouble(cause -> 1 - cause.probability())
                  .reduce(1, (a, b) -> a * b);
      double[] begun = diagnosis.anyBegun(group.causes());
      list.add(
          new Assessment.Group(
              groupId(g),
              groupTitle(group),
              causes.stream().map(Cause::id).toList(),
              prior,
              begun[0],
              begun[1],
              String.join(
                  "; ",
                  causes.stream()
                      .map(cause -> cause.title() + ": " + cause.signature())
                      .toList())));
    }
    return list;
  }

  /** A short name; which causes they are stands in the group's list. */
  private String groupTitle(SharedLikelihood group) {
    String size = " (" + group.causes().size() + " causes)";
    if (group.harmless()) {
      return "no effect on what we hear" + size;
    }
    return (forGood(group) ? "silent for good" : "cannot be told apart") + size;
  }

  /**
   * No possibility that still counts and has one of these causes is audible again before the
   * horizon without help, and no season or reset of its own ends any of them after it.
   */
  private boolean forGood(SharedLikelihood group) {
    boolean counted = false;
    for (int cause : group.causes()) {
      PlanOutcome.Recovery recovery = plan.recoveries().get(cause);
      if (recovery.probability() > 0 || !input.causes().get(cause).clearsOn().isEmpty()) {
        return false;
      }
      counted |= recovery.weight() > 0;
    }
    return counted;
  }

  private List<Assessment.ObjectView> objects() {
    double[] posterior = diagnosis.objects();
    List<Assessment.ObjectView> list = new ArrayList<>();
    for (int k = 0; k < posterior.length; k++) {
      Candidate candidate = input.candidates().get(k);
      boolean none = candidate.objectId().equals(Candidate.NONE);
      String name = none ? "none of these" : candidate.sets().get(0).name().orElse("");
      list.add(
          new Assessment.ObjectView(candidate.objectId(), name, candidate.prior(), posterior[k]));
    }
    list.sort(Comparator.comparingDouble(Assessment.ObjectView::posterior).reversed());
    return list;
  }

  private List<Assessment.StationView> stations() {
    double[] works = diagnosis.stations();
    List<Assessment.StationView> list = new ArrayList<>();
    for (int s = 0; s < works.length; s++) {
      list.add(
          new Assessment.StationView(
              input.stations().get(s).name(),
              input.stations().get(s).worksWithProbability(),
              works[s]));
    }
    return list;
  }

  private List<Assessment.EvidenceView> evidenceViews() {
    int[] rows = diagnosis.bitsEntries();
    double[][] bits = diagnosis.bits();
    List<Assessment.EvidenceView> list = new ArrayList<>();
    for (int k = 0; k < evidence.size(); k++) {
      Map<String, Double> moved = new LinkedHashMap<>();
      for (int row = 0; row < rows.length; row++) {
        if (rows[row] == k) {
          for (int c = 0; c < bits[row].length; c++) {
            moved.merge(input.causes().get(c).id(), bits[row][c], Double::sum);
          }
        }
      }
      Entry entry = evidence.get(k);
      list.add(
          new Assessment.EvidenceView(
              entry.number(),
              entry.evidence().at(),
              entry.evidence().kind(),
              Words.title(entry),
              moved));
    }
    return list;
  }

  private List<Assessment.ProcedureView> procedures() {
    List<Assessment.ProcedureView> list = new ArrayList<>();
    for (Procedure procedure : mission.procedures()) {
      list.add(
          new Assessment.ProcedureView(
              procedure.id(),
              procedure.title(),
              procedure.kind().name().toLowerCase(java.util.Locale.ROOT),
              procedure.cautions(),
              procedure.forbiddenIf(),
              procedure.markdown()));
    }
    return list;
  }
}
