package hark.assessment;

import hark.assessment.MemberTrace.Share;
import hark.ensemble.BodyList;
import hark.ensemble.DiagnosisInput;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Names of event sets as people read them. */
final class SetTitle {
  private SetTitle() {}

  /** What is wrong of a set by a time, s since separation; events still to come do not count. */
  static String begun(DiagnosisInput input, BodyList.Sharer sharer, double seconds) {
    List<String> titles = new ArrayList<>();
    List<Integer> rising = sharer.set().causes().stream().sorted().toList();
    for (int cause : rising) {
      if (sharer.onsets()[sharer.set().causes().indexOf(cause)] <= seconds) {
        titles.add(input.causes().get(cause).title());
      }
    }
    return titles.isEmpty() ? "nothing wrong" : String.join(" and ", titles);
  }

  /** An event set of which nobody says when it began. */
  static String of(List<String> causes) {
    return causes.isEmpty() ? "nothing wrong, missed" : String.join(" and ", causes);
  }

  /** The heaviest of some shares, in falling order; equal ones by name. */
  static List<Share> heaviest(Map<String, Double> shares, int most) {
    return shares.entrySet().stream()
        .map(entry -> new Share(entry.getKey(), entry.getValue()))
        .sorted(Comparator.comparingDouble(Share::share).reversed().thenComparing(Share::title))
        .limit(most)
        .toList();
  }
}
