package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.CauseView;
import hark.assessment.Assessment.Group;
import hark.assessment.Assessment.SelfRecovery;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** When the satellite would be audible again without anybody doing anything. */
final class Recovery {
  /** Causes lighter than this are left to {@code --all}. */
  private static final double LEAST = 0.05;

  private static final double NEVER = 0.005;
  private static final int MOST = 3;
  private static final int MOST_NEVER = 4;

  private Recovery() {}

  /** One line for a brief; empty when no cause is heavy enough to speak of. */
  static String sentences(Assessment assessment) {
    List<CauseView> heavy =
        assessment.causes().stream()
            .filter(c -> c.posterior() >= LEAST)
            .sorted(Comparator.comparingDouble(CauseView::posterior).reversed())
            .toList();
    List<String> parts = new ArrayList<>();
    heavy.stream()
        .filter(c -> c.selfRecovery().probability() >= LEAST)
        .limit(MOST)
        .forEach(
            c -> parts.add("with " + Words.inSentence(c.title()) + ", " + of(c.selfRecovery())));
    List<String> never =
        heavy.stream()
            .filter(c -> c.selfRecovery().probability() < LEAST)
            .map(c -> title(assessment, c))
            .distinct()
            .limit(MOST_NEVER)
            .toList();
    if (!never.isEmpty()) {
      parts.add("hardly or never: " + Words.list(never));
    }
    return parts.isEmpty() ? "" : String.join("; ", parts) + ".";
  }

  private static boolean never(Assessment assessment, Group group) {
    return assessment.causes().stream()
        .filter(c -> group.causes().contains(c.id()))
        .allMatch(c -> c.selfRecovery().probability() < LEAST);
  }

  /** The cause, or the group it cannot be separated from when all of that stays silent. */
  private static String title(Assessment assessment, CauseView cause) {
    return assessment.groups().stream()
        .filter(g -> g.causes().contains(cause.id()) && never(assessment, g))
        .map(Group::title)
        .findFirst()
        .orElse(Words.inSentence(cause.title()));
  }

  /** {@code seven in ten are audible again, …}, within the horizon. */
  static String of(SelfRecovery recovery) {
    String note = recovery.note().strip();
    if (recovery.probability() < NEVER) {
      return note.isEmpty() ? "not within the days looked at" : note;
    }
    String share = Words.inTen(recovery.probability());
    String when = when(recovery);
    boolean twice = share.equals("half") && when.startsWith("half ");
    return share
        + (share.startsWith("one ") ? " is" : " are")
        + " audible again"
        + (when.isEmpty() ? "" : twice ? when.substring("half".length()) : ", " + when)
        + (note.isEmpty() ? "" : " (" + note + ")");
  }

  private static String when(SelfRecovery recovery) {
    Optional<String> p10 = recovery.p10().map(Words::dayAndMinute);
    Optional<String> p50 = recovery.p50().map(Words::dayAndMinute);
    Optional<String> p90 = recovery.p90().map(Words::dayAndMinute);
    if (p10.isPresent() && p10.equals(p90)) {
      return "most on " + p10.get();
    }
    if (p10.isPresent() && p90.isPresent()) {
      return "most between " + p10.get() + " and " + p90.get();
    }
    if (p50.isPresent()) {
      return "half by " + p50.get();
    }
    return p10.map(t -> "the first tenth by " + t).orElse("");
  }
}
