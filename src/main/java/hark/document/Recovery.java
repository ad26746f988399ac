package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.CauseView;
import hark.assessment.Assessment.Group;
import hark.assessment.Assessment.SelfRecovery;
import hark.assessment.LongReturn;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** When the satellite would be audible again without anybody doing anything. */
final class Recovery {
  /** Causes lighter than this are left to {@code --all}. */
  private static final double LEAST = 0.05;

  private static final double NEVER = 0.005;

  /** From this share on a cause is not one of being off. */
  private static final double MOST_SEND = 0.5;

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
    List<CauseView> late =
        heavy.stream().filter(c -> c.selfRecovery().probability() < LEAST).toList();
    late.stream()
        .filter(c -> hasDate(c.selfRecovery()))
        .limit(MOST)
        .forEach(c -> parts.add("with " + Words.inSentence(c.title()) + " " + note(c)));
    List<String> never =
        late.stream()
            .filter(c -> !hasDate(c.selfRecovery()))
            .map(c -> title(assessment, c))
            .distinct()
            .limit(MOST_NEVER)
            .toList();
    if (!never.isEmpty()) {
      parts.add("hardly or never: " + Words.list(never));
    }
    return parts.isEmpty() ? "" : String.join("; ", parts) + ".";
  }

  /** Something is said of the time after the horizon. */
  private static boolean hasDate(SelfRecovery recovery) {
    return !recovery.note().startsWith("never") && recovery.note().contains(";");
  }

  private static String note(CauseView cause) {
    return cause.selfRecovery().note().strip().replace(";", ",");
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

  /** What became of bodies that were followed beyond the horizon. */
  static String of(LongReturn look) {
    String of = Words.count(look.bodies(), "case") + " followed";
    if (look.probability() <= 0 || look.sending() >= MOST_SEND) {
      return look.note() + " (" + of + ")";
    }
    String when = when(look.p10(), look.p50(), look.p90());
    String share = Words.inTen(look.probability());
    return share
        + (share.startsWith("one ") ? " sends" : " send")
        + " again"
        + (when.isEmpty() ? "" : ", " + when)
        + (look.note().isEmpty() ? "" : ", " + look.note())
        + " ("
        + of
        + ")";
  }

  private static String when(SelfRecovery recovery) {
    return when(recovery.p10(), recovery.p50(), recovery.p90());
  }

  private static String when(
      Optional<Instant> early, Optional<Instant> middle, Optional<Instant> late) {
    Optional<String> p10 = early.map(Words::dayAndMinute);
    Optional<String> p50 = middle.map(Words::dayAndMinute);
    Optional<String> p90 = late.map(Words::dayAndMinute);
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
