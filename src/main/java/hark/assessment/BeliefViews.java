package hark.assessment;

import hark.ensemble.Candidate;
import hark.ensemble.Cause;
import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.EventSet;
import hark.ensemble.Posterior;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.station.StationFault;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the record leaves of the prior, as an {@link Assessment} lists it. */
final class BeliefViews {
  private final List<Entry> evidence;
  private final Posterior posterior;
  private final DiagnosisInput input;

  BeliefViews(List<Entry> evidence, Posterior posterior) {
    this.evidence = evidence;
    this.posterior = posterior;
    this.input = posterior.input();
  }

  Assessment.Silence silence() {
    Optional<Instant> last = Diagnosis.lastHeard(input);
    int silent = 0;
    for (Entry entry : evidence) {
      boolean after = last.map(heard -> entry.evidence().at().isAfter(heard)).orElse(true);
      silent += after && entry.evidence() instanceof Evidence.NothingHeard ? 1 : 0;
    }
    return new Assessment.Silence(last, silent);
  }

  /** Heaviest first. */
  List<Assessment.Explanation> explanations() {
    double[] weights = posterior.setWeights();
    double[] errors = posterior.setErrors();
    List<Assessment.Explanation> list = new ArrayList<>();
    for (int s = 0; s < weights.length; s++) {
      EventSet set = posterior.sets().get(s);
      List<Cause> causes = set.causes().stream().sorted().map(input.causes()::get).toList();
      String title = SetTitle.of(causes.stream().map(Cause::title).toList());
      list.add(
          new Assessment.Explanation(
              causes.stream().map(Cause::id).toList(), title, set.prior(), weights[s], errors[s]));
    }
    list.sort(Comparator.comparingDouble(Assessment.Explanation::posterior).reversed());
    return list;
  }

  /** Likeliest first. */
  List<Assessment.ObjectView> objects() {
    double[] shares = posterior.objects();
    List<Assessment.ObjectView> list = new ArrayList<>();
    for (int k = 0; k < shares.length; k++) {
      Candidate candidate = input.candidates().get(k);
      boolean none = candidate.objectId().equals(Candidate.NONE);
      String name = none ? "none of these" : candidate.sets().get(0).name().orElse("");
      list.add(new Assessment.ObjectView(candidate.objectId(), name, candidate.prior(), shares[k]));
    }
    list.sort(Comparator.comparingDouble(Assessment.ObjectView::posterior).reversed());
    return list;
  }

  List<Assessment.StationView> stations() {
    double[] works = posterior.stations();
    List<Assessment.StationView> list = new ArrayList<>();
    for (int s = 0; s < works.length; s++) {
      list.add(
          new Assessment.StationView(
              input.stations().get(s).name(),
              input.stations().get(s).worksWithProbability(),
              works[s],
              faults(posterior.stationFaults().get(s))));
    }
    return list;
  }

  private static List<Assessment.FaultView> faults(Map<StationFault, Double> posterior) {
    return posterior.entrySet().stream()
        .map(e -> new Assessment.FaultView(e.getKey().key(), e.getKey().title(), e.getValue()))
        .sorted(Comparator.comparingDouble(Assessment.FaultView::posterior).reversed())
        .toList();
  }

  /** In the order of time. */
  List<Assessment.EvidenceView> evidence() {
    int[] rows = posterior.bitsEntries();
    double[][] bits = posterior.bits();
    double[] tails = posterior.entryTail();
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
}
