package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.EvidenceView;
import hark.assessment.TreeAgainstSimulation;
import hark.assessment.TreeDisagreement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What is to be said against the numbers, in plain words. */
final class Doubts {
  /** Below this predictive tail probability nothing explains the evidence well. */
  static final double MISFIT = 0.05;

  /** An entry this unlikely is named; of many entries one in a hundred is odd by chance. */
  private static final double ODD_ENTRY = 0.01;

  private static final int MOST_ENTRIES = 3;

  private Doubts() {}

  /** All of them as sentences; none when there is nothing to say. */
  static List<String> of(Assessment assessment) {
    List<String> doubts = new ArrayList<>();
    if (assessment.misfit() < MISFIT) {
      doubts.add(misfit(assessment));
    }
    doubts.addAll(entries(assessment));
    return doubts;
  }

  /** What a small predictive tail probability of the whole record means. */
  static String misfit(Assessment assessment) {
    return "None of these explains what was heard and not heard at all well ("
        + chance(assessment.misfit())
        + " to look this odd if one of them is true). Look for an entry that is wrong, or a cause"
        + " that is not listed, before acting on these numbers.";
  }

  /** Entries that no member explains well, oddest first. */
  static List<String> entries(Assessment assessment) {
    List<EvidenceView> odd =
        assessment.evidence().stream()
            .filter(entry -> entry.tail().isPresent() && entry.tail().getAsDouble() < ODD_ENTRY)
            .sorted(Comparator.comparingDouble(entry -> entry.tail().getAsDouble()))
            .toList();
    List<String> lines = new ArrayList<>();
    for (EvidenceView entry : odd.subList(0, Math.min(MOST_ENTRIES, odd.size()))) {
      lines.add(
          "No possibility explains entry "
              + entry.entry()
              + " well ("
              + chance(entry.tail().getAsDouble())
              + "): look at “"
              + entry.title()
              + "” of "
              + Words.dayAndMinute(entry.at())
              + "; is it ours, is the time right, did the station work?");
    }
    if (odd.size() > MOST_ENTRIES) {
      lines.add("So it is with " + Words.count(odd.size() - MOST_ENTRIES, "entry") + " more.");
    }
    return lines;
  }

  /** {@code chance 1 in 300}; two digits at most. */
  static String chance(double tail) {
    if (!(tail > 0)) {
      return "chance under 1 in 100 000";
    }
    double one = 1 / tail;
    double step = Math.pow(10, Math.max(0, Math.floor(Math.log10(one)) - 1));
    long rounded = Math.round(Math.round(one / step) * step);
    return rounded > 100_000 ? "chance under 1 in 100 000" : "chance 1 in " + rounded;
  }

  /**
   * Where the fault tree says otherwise than the simulation, of what counts; empty when nowhere.
   */
  static String tree(Assessment assessment) {
    List<TreeDisagreement> all = assessment.treeDisagreements();
    if (all.isEmpty()) {
      return "";
    }
    List<String> parts = new ArrayList<>();
    for (boolean silent : new boolean[] {true, false}) {
      List<TreeDisagreement> same =
          all.stream().filter(each -> each.treeSilent() == silent).toList();
      if (!same.isEmpty()) {
        parts.add(
            (silent
                    ? "the tree counts as silent what the simulation mostly hears: "
                    : "the tree counts as audible what the simulation mostly does not hear: ")
                + TreeAgainstSimulation.byShare(same));
      }
    }
    return "The fault tree and the simulation disagree; the numbers go by the simulation: "
        + String.join("; ", parts)
        + ".";
  }

  /** What the remainder is and when it matters. */
  static String remainder(Assessment assessment) {
    String start =
        "Three or more things wrong at once are not worked out: "
            + Words.percent(assessment.remainderAtStart())
            + " at separation, "
            + Words.percent(assessment.remainder())
            + " now if they fit as pairs do on average.";
    boolean wide = assessment.remainderBound() > Math.max(0.05, 2 * assessment.remainder());
    String bound =
        " Only if each of them fitted as well as the best single possibility would it be "
            + Words.percent(assessment.remainderBound())
            + "; nothing says so.";
    return start
        + (wide ? bound : "")
        + " It matters where an action is right for one cause alone and wrong when another joins it.";
  }
}
