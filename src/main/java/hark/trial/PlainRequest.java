package hark.trial;

import hark.power.OnboardCommand;
import hark.power.SimulationRequest.TimedChange;
import java.util.Comparator;
import java.util.List;

/**
 * What to run a plain body for.
 *
 * @param endSeconds last time, s since separation
 * @param stepSeconds of the simulation, s: 1 for the truth, 10 for a quick look
 * @param gridSeconds between two entries of the history, s; a whole number of steps
 * @param changes what breaks, and when
 * @param commands what reaches the spacecraft, and when
 */
public record PlainRequest(
    double endSeconds,
    double stepSeconds,
    double gridSeconds,
    List<TimedChange> changes,
    List<TimedCommand> commands) {
  /** Entries and steps that one run may have. */
  static final int MOST_STEPS = 100_000_000;

  /** Refuses times that are not positive and a grid off the steps; puts changes in turn. */
  public PlainRequest {
    positive("end", endSeconds);
    positive("step", stepSeconds);
    positive("grid", gridSeconds);
    double steps = gridSeconds / stepSeconds;
    if (steps < 1 || Math.abs(steps - Math.rint(steps)) > 1e-9) {
      throw new IllegalArgumentException(
          "grid " + gridSeconds + " s is not a whole number of steps of " + stepSeconds + " s");
    }
    if (endSeconds / stepSeconds > MOST_STEPS) {
      throw new IllegalArgumentException("more than " + MOST_STEPS + " steps");
    }
    changes =
        changes.stream().sorted(Comparator.comparingDouble(TimedChange::onsetSeconds)).toList();
    commands = commands.stream().sorted(Comparator.comparingDouble(TimedCommand::seconds)).toList();
  }

  /** A command that arrives, s since separation. */
  public record TimedCommand(double seconds, OnboardCommand command) {
    /** Refuses a time before separation. */
    public TimedCommand {
      if (!(seconds >= 0)) {
        throw new IllegalArgumentException("command at " + seconds + " s, before separation");
      }
    }
  }

  private static void positive(String what, double seconds) {
    if (!(seconds > 0 && seconds < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " " + seconds + " s is not positive");
    }
  }
}
