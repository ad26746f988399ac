package hark.assessment;

import hark.ensemble.Candidate;
import hark.ensemble.Cause;
import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.EnergyFan;
import hark.ensemble.EventSet;
import hark.ensemble.Workers;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.mission.Mission;
import hark.plan.PlanOutcome;
import hark.plan.Procedure;
import hark.problem.Problem;
import hark.station.StationFault;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Puts the results of diagnosis and plan into the words and order of an {@link Assessment}. */
final class AssessmentBuilder {
  /** Sets from this weight on are compared with the fault tree, 0…1. */
  private static final double TREE_ASKED = 0.02;

  private final Mission mission;
  private final List<Entry> evidence;
  private final AssessmentRequest request;
  private final Diagnosis diagnosis;
  private final DiagnosisInput input;
  private final PlanOutcome plan;
  private final Workers workers;

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
  }

  Assessment build(List<EnergyFan.Point> fan, EnergyView energy) {
    CauseViews causes = new CauseViews(mission, diagnosis, plan, workers);
    WindowViews windows =
        new WindowViews(diagnosis, plan, fan, Neighbours.of(mission, diagnosis), workers);
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
        causes.all(),
        causes.groups(),
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
        mission.warnings().stream().map(Problem::line).toList(),
        treeDisagreements(),
        Optional.empty(),
        TreeNodes.of(mission.tree(), diagnosis));
  }

  private Assessment.Silence silence() {
    Optional<Instant> last = Diagnosis.lastHeard(input);
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
      String title = SetTitle.of(causes.stream().map(Cause::title).toList());
      list.add(
          new Assessment.Explanation(
              causes.stream().map(Cause::id).toList(), title, set.prior(), weights[s], errors[s]));
    }
    list.sort(Comparator.comparingDouble(Assessment.Explanation::posterior).reversed());
    return list;
  }

  /** Sets heavy enough to ask whether the fault tree means the same. */
  private List<TreeDisagreement> treeDisagreements() {
    double[] weights = diagnosis.setWeights();
    List<List<Integer>> heavy =
        IntStream.range(0, weights.length)
            .filter(s -> weights[s] >= TREE_ASKED && !diagnosis.sets().get(s).causes().isEmpty())
            .boxed()
            .sorted(Comparator.comparingDouble(s -> -weights[s]))
            .map(s -> diagnosis.sets().get(s).causes())
            .toList();
    return heavy.isEmpty()
        ? List.of()
        : TreeAgainstSimulation.of(mission.tree(), input, heavy, workers);
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
              works[s],
              faults(diagnosis.stationFaults().get(s))));
    }
    return list;
  }

  private static List<Assessment.FaultView> faults(Map<StationFault, Double> posterior) {
    return posterior.entrySet().stream()
        .map(e -> new Assessment.FaultView(e.getKey().key(), e.getKey().title(), e.getValue()))
        .sorted(Comparator.comparingDouble(Assessment.FaultView::posterior).reversed())
        .toList();
  }

  private List<Assessment.EvidenceView> evidenceViews() {
    int[] rows = diagnosis.bitsEntries();
    double[][] bits = diagnosis.bits();
    double[] tails = diagnosis.entryTail();
    List<Assessment.EvidenceView> list = new ArrayList<>();
    for (int k = 0; k < evidence.size(); k++) {
      Map<String, Double> moved = new LinkedHashMap<>();
      OptionalDouble tail = OptionalDouble.empty();
      for (int row = 0; row < rows.length; row++) {
        if (rows[row] == k) {
          tail = OptionalDouble.of(tails[row]);
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
              moved,
              tail));
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
