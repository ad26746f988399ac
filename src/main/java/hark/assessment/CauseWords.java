package hark.assessment;

import hark.ensemble.Cause;
import hark.plan.Procedure;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What to do about a cause and what would settle it, from its effects and what clears it. */
final class CauseWords {
  private final Telling telling;

  CauseWords(Telling telling) {
    this.telling = telling;
  }

  /**
   * All of it.
   *
   * @param hopeless no saving of power would bring it back
   */
  Assessment.CauseDetail of(Cause cause, boolean hopeless) {
    return new Assessment.CauseDetail(
        endedBy(cause),
        cause.signature(),
        refutes(cause),
        procedures(cause, hopeless),
        begins(cause.onset()),
        cause.sources());
  }

  private static String begins(Cause.Onset onset) {
    return switch (onset) {
      case SEPARATION -> "there from separation on";
      case UNIFORM -> "at any time in its 30 days";
      case HAZARD -> "at any time in its 30 days, slightly rather early than late";
      case FIRST_ECLIPSE -> "at the first entry into shadow";
      case FIRST_TRANSMISSION -> "at the first transmission, when the quiet time ends";
    };
  }

  private static List<String> endedBy(Cause cause) {
    Traits traits = Traits.of(cause);
    List<String> words = new ArrayList<>();
    for (Cause.ClearsOn clears :
        new Cause.ClearsOn[] {
          Cause.ClearsOn.POWER_CYCLE,
          Cause.ClearsOn.POWER_REMOVED,
          Cause.ClearsOn.WATCHDOG,
          Cause.ClearsOn.COMMAND,
          Cause.ClearsOn.SEASON
        }) {
      if (cause.clearsOn().contains(clears)) {
        words.add(words(clears, traits));
      }
    }
    return words;
  }

  private static String words(Cause.ClearsOn clears, Traits traits) {
    return switch (clears) {
      case POWER_CYCLE -> "a loss of power on the bus, by itself or by a reset it receives";
      case POWER_REMOVED -> "all power gone: battery flat and in the dark";
      case WATCHDOG -> "a watchdog, where there is one";
      case COMMAND -> traits.standing() ? "a command that it receives" : "a release that works";
      case SEASON -> "a season with more sunlight";
    };
  }

  /** The observation that most speaks against it. */
  private static String refutes(Cause cause) {
    Traits traits = Traits.of(cause);
    if (traits.radio().mute()) {
      return "any sound of ours from after it began";
    }
    if (traits.weak()) {
      return "a sound as strong as planned";
    }
    if (Traits.shifted(cause)) {
      return "a sound on the planned frequency";
    }
    if (traits.unreachable()) {
      return "one command that is answered";
    }
    if (traits.standing()) {
      return "a sound while the bus has kept its power since it began (uptime tells)";
    }
    return "telemetry with charge as planned at the end of an eclipse";
  }

  private List<String> procedures(Cause cause, boolean hopeless) {
    Set<String> titles = new LinkedHashSet<>();
    for (Telling.Means means : Telling.Means.values()) {
      if (Telling.shows(means, cause)) {
        telling.procedures(means).stream().map(Procedure::title).forEach(titles::add);
      }
    }
    Traits traits = Traits.of(cause);
    if (traits.power() && !traits.standing() && !hopeless) {
      telling.saving().stream().map(Procedure::title).forEach(titles::add);
    }
    return List.copyOf(titles);
  }
}
