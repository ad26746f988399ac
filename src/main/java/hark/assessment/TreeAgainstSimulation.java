package hark.assessment;

import hark.ensemble.DiagnosisInput;
import hark.ensemble.EventTrial;
import hark.ensemble.Workers;
import hark.fault.FaultTree;
import hark.fault.FaultTrees;
import hark.fault.Solution;
import hark.mission.Mission;
import hark.orbit.EarthModel;
import hark.problem.Problem;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Where the fault tree and the simulation disagree about an event set: the tree's top holds, so
 * that no beacon should be heard, and most simulated bodies are audible; or the reverse. See {@link
 * EventTrial} for what "audible" means.
 */
public final class TreeAgainstSimulation {
  /** Days after the events: by then a battery that is not charged is flat. Judged. */
  private static final EventTrial.Span LOOKED_AT = new EventTrial.Span(3, 6);

  /** Few bodies say little: only a clear majority counts as a disagreement. */
  private static final double CLEAR = 0.7;

  private static final int PAIRS = 20;

  private TreeAgainstSimulation() {}

  /** What {@code hark check} warns of; at most one warning a direction. */
  public static List<Problem> warnings(Mission mission, EarthModel earth) {
    AssessmentRequest request = AssessmentRequest.at(mission.separation().plus(Duration.ofDays(1)));
    DiagnosisInput input = Assessor.input(mission, List.of(), request, earth);
    return Threads.with(
        request.threads(),
        workers -> {
          List<TreeDisagreement> all =
              of(mission.tree(), input, singlesAndPairs(mission, input), workers);
          List<Problem> warnings = new ArrayList<>();
          warn(all, true, warnings);
          warn(all, false, warnings);
          return warnings;
        });
  }

  private static void warn(List<TreeDisagreement> all, boolean treeSilent, List<Problem> into) {
    List<TreeDisagreement> same =
        all.stream().filter(each -> each.treeSilent() == treeSilent).toList();
    if (same.isEmpty()) {
      return;
    }
    String names = byShare(same);
    into.add(
        new Problem(
            treeSilent
                ? "the fault tree counts as silent what the simulation mostly hears: " + names
                : "the fault tree counts as audible what the simulation mostly does not hear: "
                    + names,
            "causes.yaml: gates",
            treeSilent
                ? "the diagnosis goes by the simulation ("
                    + (EventTrial.DRAWN + 1)
                    + " bodies a set, days 3 to 6 after the event); let the tree join such events"
                    + " by an and-gate, or leave it if it lists what may contribute"
                : "the diagnosis goes by the simulation; give the tree a gate for them"));
  }

  /** {@code a, b and c (7 of 7 bodies heard); d (6 of 7)}. */
  public static String byShare(List<TreeDisagreement> sets) {
    Map<Long, List<String>> byHeard = new TreeMap<>(Comparator.reverseOrder());
    for (TreeDisagreement each : sets) {
      long heard = Math.round(each.audibleShare() * each.bodies());
      byHeard.computeIfAbsent(heard, key -> new ArrayList<>()).add(each.title());
    }
    int bodies = sets.get(0).bodies();
    return byHeard.entrySet().stream()
        .map(
            same ->
                Words.list(same.getValue())
                    + " (heard in "
                    + same.getKey()
                    + " of "
                    + bodies
                    + " bodies)")
        .collect(Collectors.joining("; "));
  }

  /** Every cause alone, and the pairs that only together make the tree's top hold. */
  private static List<List<Integer>> singlesAndPairs(Mission mission, DiagnosisInput input) {
    List<String> ids = input.causes().stream().map(cause -> cause.id()).toList();
    List<List<Integer>> sets =
        new ArrayList<>(IntStream.range(0, ids.size()).mapToObj(List::of).toList());
    for (Solution.CutSet cut : FaultTrees.solve(mission.tree(), 2).cutSets().sets()) {
      List<Integer> places = cut.events().stream().map(ids::indexOf).toList();
      if (places.size() == 2 && !places.contains(-1) && sets.size() < ids.size() + PAIRS) {
        sets.add(places);
      }
    }
    return sets;
  }

  /** Disagreements among some event sets, in their order. */
  static List<TreeDisagreement> of(
      FaultTree tree, DiagnosisInput input, List<List<Integer>> sets, Workers workers) {
    double[] audible = EventTrial.afterSeparation(input, LOOKED_AT).audible(sets, workers);
    List<TreeDisagreement> found = new ArrayList<>();
    for (int s = 0; s < audible.length; s++) {
      List<String> ids = new ArrayList<>();
      List<String> titles = new ArrayList<>();
      for (int cause : sets.get(s)) {
        ids.add(input.causes().get(cause).id());
        titles.add(input.causes().get(cause).title());
      }
      Set<String> happened = new HashSet<>(ids);
      boolean silent = FaultTrees.holds(tree, happened);
      if (silent ? audible[s] >= CLEAR : audible[s] <= 1 - CLEAR) {
        found.add(
            new TreeDisagreement(
                ids, Words.list(titles), silent, audible[s], EventTrial.DRAWN + 1));
      }
    }
    return found;
  }
}
