package hark.assessment;

import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.EnergyFan;
import hark.ensemble.Workers;
import hark.evidence.Entry;
import hark.mission.Mission;
import hark.plan.PlanOutcome;
import hark.plan.Procedure;
import hark.problem.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
    BeliefViews beliefs = new BeliefViews(evidence, diagnosis.posterior());
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
        beliefs.silence(),
        beliefs.explanations(),
        causes.all(),
        causes.groups(),
        beliefs.objects(),
        beliefs.stations(),
        beliefs.evidence(),
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
