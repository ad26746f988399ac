package hark.assessment;

import hark.ensemble.CauseMarginal;
import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.Posterior;
import hark.evidence.Entry;
import hark.evidence.EvidenceBook;
import hark.mission.Mission;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A provisional answer while a new entry is worked out: beliefs are weighed on the possibilities of
 * the last examination, and what comes ahead (charge, windows, plan, dates of return) still stands
 * as it was. Holds on to that examination's bodies.
 */
public final class FirstLook {
  private final Mission mission;
  private final AssessmentRequest request;
  private final Diagnosis diagnosis;
  private final Assessment last;

  FirstLook(Mission mission, AssessmentRequest request, Diagnosis diagnosis, Assessment last) {
    this.mission = mission;
    this.request = request;
    this.diagnosis = diagnosis;
    this.last = last;
  }

  /**
   * The provisional answer to a longer record; empty when only the whole work can tell.
   *
   * @param journal the whole record
   */
  public Optional<Assessment> after(List<Entry> journal, Instant now) {
    List<Entry> evidence = EvidenceBook.effective(journal, now);
    DiagnosisInput before = diagnosis.input();
    List<Entry> weighed = SentProcedures.asCommands(evidence, mission.procedures());
    if (!before.end().isAfter(now)) {
      return Optional.empty();
    }
    DiagnosisInput input = before.at(now, before.end(), weighed);
    return Threads.with(
        request.threads(),
        workers ->
            diagnosis.provisional(input, workers).map(posterior -> with(posterior, evidence)));
  }

  private Assessment with(Posterior posterior, List<Entry> evidence) {
    BeliefViews beliefs = new BeliefViews(evidence, posterior);
    Instant now = posterior.input().now();
    List<Assessment.Window> windows =
        last.windows().stream().filter(window -> window.los().isAfter(now)).toList();
    return new Assessment(
        last.mission(),
        now,
        last.separation(),
        last.horizonDays(),
        last.members(),
        last.seed(),
        posterior.remainder(),
        posterior.remainderBound(),
        posterior.misfit(),
        beliefs.silence(),
        beliefs.explanations(),
        causes(posterior),
        groups(posterior),
        beliefs.objects(),
        beliefs.stations(),
        beliefs.evidence(),
        last.energy(),
        last.shadows(),
        last.cutoffSoc(),
        windows,
        plan(windows),
        last.goingOn(),
        last.crewHoursPerWeek(),
        last.procedures(),
        last.warnings(),
        last.treeDisagreements(),
        Optional.empty(),
        last.tree());
  }

  private List<Assessment.CauseView> causes(Posterior posterior) {
    List<CauseMarginal> marginals = posterior.causes();
    List<Assessment.CauseView> list = new ArrayList<>();
    for (Assessment.CauseView view : last.causes()) {
      CauseMarginal marginal = marginals.get(index(posterior, view.id()));
      list.add(
          new Assessment.CauseView(
              view.id(),
              view.title(),
              view.branch(),
              view.prior(),
              marginal.posterior(),
              marginal.later(),
              marginal.error(),
              marginal.ifPriorHalved(),
              marginal.ifPriorDoubled(),
              view.inseparableGroup(),
              view.selfRecovery(),
              view.mechanism(),
              view.signature(),
              view.detail()));
    }
    list.sort(Comparator.comparingDouble(Assessment.CauseView::posterior).reversed());
    return list;
  }

  private static int index(Posterior posterior, String id) {
    List<hark.ensemble.Cause> causes = posterior.input().causes();
    for (int c = 0; c < causes.size(); c++) {
      if (causes.get(c).id().equals(id)) {
        return c;
      }
    }
    throw new IllegalStateException("no cause is called " + id);
  }

  private List<Assessment.Group> groups(Posterior posterior) {
    List<Assessment.Group> list = new ArrayList<>();
    for (Assessment.Group group : last.groups()) {
      double[] begun =
          posterior.anyBegun(group.causes().stream().map(id -> index(posterior, id)).toList());
      list.add(
          new Assessment.Group(
              group.id(),
              group.title(),
              group.causes(),
              group.prior(),
              begun[0],
              begun[1],
              group.wouldSeparate(),
              group.separators()));
    }
    return list;
  }

  /** The plan without windows that are over. */
  private Assessment.Plan plan(List<Assessment.Window> windows) {
    Set<String> left = new HashSet<>(windows.stream().map(Assessment.Window::id).toList());
    Assessment.Plan plan = last.plan();
    return new Assessment.Plan(
        plan.choices().stream().filter(choice -> left.contains(choice.window())).toList(),
        plan.costHours(),
        plan.heardByHorizon(),
        plan.upperBound(),
        plan.meanDaysToHear());
  }
}
