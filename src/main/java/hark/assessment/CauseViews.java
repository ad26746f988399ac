package hark.assessment;

import hark.ensemble.Cause;
import hark.ensemble.CauseMarginal;
import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.SharedLikelihood;
import hark.ensemble.Workers;
import hark.mission.Mission;
import hark.plan.PlanOutcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Causes, each with its dates of return and what to do about it, and the groups among them. */
final class CauseViews {
  private final Diagnosis diagnosis;
  private final DiagnosisInput input;
  private final PlanOutcome plan;
  private final List<SharedLikelihood> shared;
  private final SeasonNotes seasons;
  private final Telling telling;
  private final CauseWords words;

  CauseViews(Mission mission, Diagnosis diagnosis, PlanOutcome plan, Workers workers) {
    this.diagnosis = diagnosis;
    this.input = diagnosis.input();
    this.plan = plan;
    this.shared = diagnosis.sharedLikelihoods();
    this.seasons = SeasonNotes.of(input, plan.recoveries(), workers);
    this.telling = new Telling(mission.procedures());
    this.words = new CauseWords(telling);
  }

  /** Heaviest first. */
  List<Assessment.CauseView> all() {
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
              recovery(c),
              cause.mechanism(),
              cause.signature(),
              words.of(cause, seasons.isHopeless(c))));
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

  private Assessment.SelfRecovery recovery(int cause) {
    PlanOutcome.Recovery recovery = plan.recoveries().get(cause);
    return new Assessment.SelfRecovery(
        recovery.probability(),
        recovery.p10().map(input::instant),
        recovery.p50().map(input::instant),
        recovery.p90().map(input::instant),
        seasons.of(cause, recovery));
  }

  /** Causes that the evidence cannot tell apart, and what would. */
  List<Assessment.Group> groups() {
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
      List<Assessment.Separator> separators = telling.separators(causes);
      list.add(
          new Assessment.Group(
              groupId(g),
              groupTitle(group),
              causes.stream().map(Cause::id).toList(),
              prior,
              begun[0],
              begun[1],
              Telling.sentences(separators),
              separators));
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
}
