package hark.assessment;

import hark.power.BodyHistory;
import hark.power.BodyHistory.Transition;
import hark.power.PowerModel.BusState;
import java.util.List;
import java.util.Locale;

/** What state a body is in at a time, and since when and why. */
final class Course {
  /** What the simulation says of a change. */
  record Since(BusState state, String reason, double seconds) {}

  /** Changes that a history lists; a body that restarts without end has more. */
  static final int LISTED = 10_000;

  /** The reason given when the change itself is no longer listed. */
  static final String TOO_MANY = "restarts without end";

  private static final String NEVER_ON = "never came on";

  private Course() {}

  /** The last change at or before a time, s since separation. */
  static Since at(BodyHistory history, double seconds) {
    List<Transition> changes = history.transitions();
    int last = lastAtOrBefore(changes, seconds);
    if (last < 0) {
      return new Since(BusState.OFF, NEVER_ON, 0);
    }
    Transition change = changes.get(last);
    if (last == LISTED - 1) {
      return new Since(gridState(history, seconds, change.to()), TOO_MANY, change.seconds());
    }
    return new Since(change.to(), change.reason(), change.seconds());
  }

  private static int lastAtOrBefore(List<Transition> changes, double seconds) {
    int low = 0;
    int high = changes.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (changes.get(middle).seconds() <= seconds) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low - 1;
  }

  @SuppressWarnings("EnumOrdinal") // the history promises ordinals
  private static BusState gridState(BodyHistory history, double seconds, BusState otherwise) {
    int g = (int) Math.floor((seconds - history.gridStart()) / history.gridStep());
    boolean inside = seconds >= history.gridStart() && g < history.states().length;
    return inside ? BusState.values()[history.states()[g]] : otherwise;
  }

  static String word(BusState state) {
    return state.name().toLowerCase(Locale.ROOT);
  }

  /** A reason for people; one that is not known here stays as the simulation gives it. */
  static String words(String reason) {
    return switch (reason) {
      case "undervoltage" -> "the voltage under load fell below the cut-off";
      case "inrush" -> "switching on drew more than the battery could give, and it went off again";
      case "arrays too weak" -> "no battery on the bus, and the arrays alone could not feed it";
      case "separation" -> "it came on when it was released";
      case "restart" -> "the voltage held above recovery for the hold-off, and it came on again";
      case "booted" -> "it has booted";
      case "voltage low" -> "the voltage fell below the limit of nominal mode";
      case "voltage high" -> "the voltage was high enough for nominal mode";
      case "safe by order" -> "safe mode was ordered, by command or timer";
      case "boot loop" -> "the computer restarts over and over";
      case "watchdog" -> "the watchdog cut its power for a moment";
      case "command loss" -> "no command for too long: it reset itself";
      case "reset command" -> "a reset command arrived";
      case NEVER_ON -> "it never came on";
      case TOO_MANY -> "it restarts so often that single changes are no longer listed";
      default -> reason;
    };
  }
}
