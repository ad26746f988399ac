package hark.assessment;

import hark.assessment.Assessment.CauseDetail;
import hark.assessment.Assessment.CauseView;
import hark.assessment.Assessment.Explanation;
import hark.assessment.Assessment.Group;
import hark.assessment.Assessment.SelfRecovery;
import hark.assessment.Assessment.TreeNode;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Explanations, causes and the inseparable group of the invented assessment. */
final class FixtureCauses {
  private static final SelfRecovery NEVER =
      new SelfRecovery(0, Optional.empty(), Optional.empty(), Optional.empty(), "never by itself");

  private FixtureCauses() {}

  static List<Explanation> explanations() {
    return List.of(
        explanation("undervoltage loop", 0.080, 0.270, 0.020, "uv_loop"),
        explanation("computer hung", 0.050, 0.170, 0.010, "computer_hung"),
        explanation("transmitter dead", 0.020, 0.096, 0.005, "tx_dead"),
        explanation("antenna stowed", 0.024, 0.090, 0.008, "antenna_stowed"),
        explanation("computer dead", 0.018, 0.086, 0.004, "computer_dead"),
        explanation("battery open", 0.024, 0.070, 0.010, "battery_open"),
        explanation("transmitter weak", 0.045, 0.060, 0.006, "tx_weak"),
        explanation("spacecraft lost", 0.012, 0.058, 0.003, "lost"),
        explanation("timers started again", 0.017, 0.050, 0.004, "timers"),
        explanation(
            "undervoltage loop and antenna stowed",
            0.004,
            0.030,
            0.003,
            "uv_loop",
            "antenna_stowed"),
        explanation("nothing wrong, missed", 0.700, 0.012, 0.002));
  }

  static List<CauseView> causes() {
    return List.of(
        cause("uv_loop", "undervoltage loop", "power", 0.084, 0.300, 0.021, 0.01, "", uvRecovery()),
        cause("computer_hung", "computer hung", "computer", 0.05, 0.17, 0.010, 0.02, "", hung()),
        cause("antenna_stowed", "antenna stowed", "antenna", 0.028, 0.12, 0.009, 0, "", NEVER),
        cause("tx_dead", "transmitter dead", "radio", 0.020, 0.096, 0.005, 0.004, "mute", NEVER),
        cause("computer_dead", "computer dead", "computer", 0.018, 0.086, 0.004, 0, "mute", NEVER),
        cause("battery_open", "battery open", "power", 0.024, 0.070, 0.010, 0.001, "", NEVER),
        cause("tx_weak", "transmitter weak", "radio", 0.045, 0.060, 0.006, 0, "", NEVER),
        cause("lost", "spacecraft lost", "mechanical", 0.012, 0.058, 0.003, 0, "mute", NEVER),
        cause("timers", "timers started again", "computer", 0.017, 0.05, 0.004, 0, "", NEVER),
        cause("cold", "battery too cold", "thermal", 0.006, 0.004, 0.001, 0.001, "", NEVER));
  }

  static List<Group> groups() {
    return List.of(
        new Group(
            "mute",
            "silent for good (3 causes)",
            List.of("tx_dead", "computer_dead", "lost"),
            0.050,
            0.240,
            0.012,
            "a sighting of the object by radar or eye, or any answer to a command",
            List.of(
                new Assessment.Separator(
                    "radar or telescope, which need no signal",
                    "spacecraft lost might be in pieces or off the elements",
                    "transmitter dead and computer dead would fly on whole"))));
  }

  /** A small tree over some of the causes: an or over an or, an and, and a leaf kept elsewhere. */
  static List<TreeNode> tree() {
    return List.of(
        gate("silent", "no beacon heard", "or", 0.215, 0.95, "power", "radio", "kept", "ground"),
        gate("power", "not enough power", "or", 0.106, 0.36, "uv_loop", "battery_open"),
        event("uv_loop", "undervoltage loop", 0.084, 0.300),
        event("battery_open", "battery open", 0.024, 0.070),
        gate("radio", "nothing is sent", "or", 0.064, 0.15, "tx_dead", "tx_weak"),
        event("tx_dead", "transmitter dead", 0.020, 0.096),
        event("tx_weak", "transmitter weak", 0.045, 0.060),
        gate("kept", "off, and no command helps", "and", 0.001, 0.02, "computer_hung", "tx_dead"),
        event("computer_hung", "computer hung", 0.05, 0.17),
        new TreeNode(
            "ground",
            "station not working as believed",
            "elsewhere",
            0,
            List.of(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            0));
  }

  private static TreeNode gate(
      String id, String title, String join, double prior, double now, String... inputs) {
    return new TreeNode(
        id,
        title,
        join,
        0,
        List.of(inputs),
        OptionalDouble.of(prior),
        OptionalDouble.of(now),
        0.02);
  }

  private static TreeNode event(String id, String title, double prior, double now) {
    return gate(id, title, "event", prior, now);
  }

  private static SelfRecovery uvRecovery() {
    return new SelfRecovery(
        0.71,
        Optional.of(Instant.parse("2026-11-14T19:40:00Z")),
        Optional.of(Instant.parse("2026-11-15T08:12:00Z")),
        Optional.of(Instant.parse("2026-11-16T21:05:00Z")),
        "when the battery has filled through a run of sunlit orbits");
  }

  private static SelfRecovery hung() {
    return new SelfRecovery(
        0.38,
        Optional.of(Instant.parse("2026-11-16T02:00:00Z")),
        Optional.empty(),
        Optional.empty(),
        "when the battery has run flat, else not before the next eclipse season");
  }

  private static Explanation explanation(
      String title, double prior, double posterior, double error, String... events) {
    return new Explanation(List.of(events), title, prior, posterior, error);
  }

  private static CauseView cause(
      String id,
      String title,
      String branch,
      double prior,
      double posterior,
      double error,
      double later,
      String group,
      SelfRecovery recovery) {
    return new CauseView(
        id,
        title,
        branch,
        prior,
        posterior,
        later,
        error,
        scaledOdds(posterior, 0.5),
        scaledOdds(posterior, 2),
        group.isEmpty() ? Optional.empty() : Optional.of(group),
        recovery,
        "How " + title + " comes about, in a sentence.",
        signature(id),
        new CauseDetail(
            id.equals("computer_hung") ? List.of("a loss of power on the bus") : List.of(),
            signature(id),
            "a sound as strong as planned",
            id.equals("computer_hung") ? List.of("blind reset") : List.of(),
            "at any time in its 30 days",
            List.of("judgement", "invented: a source for " + title)));
  }

  private static double scaledOdds(double probability, double factor) {
    double odds = factor * probability / (1 - probability);
    return odds / (1 + odds);
  }

  private static String signature(String id) {
    return switch (id) {
      case "uv_loop" -> "short bursts late in sunlight";
      case "computer_hung" -> "a return after the battery runs flat";
      case "antenna_stowed" -> "a weak carrier on a large dish";
      case "battery_open" -> "bursts in sunlight only";
      case "tx_weak" -> "a faint trace in a recording";
      case "timers" -> "a burst every few hours";
      default -> "nothing that listening can give";
    };
  }
}
