package hark.plan;

import hark.power.OnboardCommand;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A procedure: something a crew can do, as the model and as people read it.
 *
 * @param needs what it needs: {@code receiver}, {@code transmitter}, {@code licence}, {@code
 *     rotator}, {@code outside_station}
 * @param change what it changes for the model
 * @param costHours people's hours beside the session and the pass
 * @param cautions shown with it, always
 * @param forbiddenIf conditions in words under which it must not be done
 * @param markdown the text for people
 */
public record Procedure(
    String id,
    String title,
    Kind kind,
    List<String> needs,
    Change change,
    double costHours,
    List<String> cautions,
    List<String> forbiddenIf,
    String markdown) {

  /** What sort of thing a procedure is. */
  public enum Kind {
    LISTEN,
    COMMAND,
    DESK,
    WAIT
  }

  /** What a procedure changes. A closed set. */
  public sealed interface Change {}

  /**
   * Listen differently.
   *
   * @param way how bursts are looked for; empty keeps the beacon's own way
   * @param windowHz half-width listened to; empty keeps the station's
   * @param offsetSeconds pointing and tuning as if the object were so much later (positive) or
   *     earlier
   * @param otherCandidate follow the second most likely object instead of the first
   * @param extraGainDb a larger antenna somewhere else, dB over the station's own; 0 for ours
   * @param setting who listens, with which hand, and when
   */
  public record Listen(
      Optional<hark.link.Way> way,
      Optional<Double> windowHz,
      double offsetSeconds,
      boolean otherCandidate,
      double extraGainDb,
      Setting setting)
      implements Change {
    /** Our own crew, the antenna's own hand, at any time. */
    public Listen(
        Optional<hark.link.Way> way,
        Optional<Double> windowHz,
        double offsetSeconds,
        boolean otherCandidate,
        double extraGainDb) {
      this(way, windowHz, offsetSeconds, otherCandidate, extraGainDb, Setting.USUAL);
    }
  }

  /** Who listens. */
  public enum Who {
    CREW,
    /** A station that records by itself. */
    NOBODY,
    /** People elsewhere; valued as if they sat at our station with {@code extraGainDb}. */
    OUTSIDE
  }

  /**
   * Who listens, with which hand, and when.
   *
   * @param otherHand the other hand of circular polarisation than the station's
   * @param sunriseMinutes only in windows in which the spacecraft leaves shadow, or has left it no
   *     longer ago than so many minutes; empty at any time
   */
  public record Setting(Who who, boolean otherHand, OptionalDouble sunriseMinutes) {
    /** As ever. */
    public static final Setting USUAL = new Setting(Who.CREW, false, OptionalDouble.empty());
  }

  /**
   * Send a command so many times in the pass, listening before and after.
   *
   * @param anyCounter sent with one counter value after the other, so that one of them fits
   */
  public record Command(OnboardCommand command, int repeats, boolean anyCounter) implements Change {
    /** With the counter that is believed to be the next. */
    public Command(OnboardCommand command, int repeats) {
      this(command, repeats, false);
    }
  }

  /** Check a station against a satellite that is known to send. */
  public record SelfCheck() implements Change {}

  /** Work at a desk that settles where to point from then on; the station listens as ever. */
  public record Settle(Question question) implements Change {}

  /** What a desk can settle. */
  public enum Question {
    /** Which catalogued object is ours. */
    OBJECT,
    /** How early or late it comes along its orbit. */
    TRACK
  }

  /** Send nothing, let it charge, stay at home. */
  public record Wait(Until until) implements Change {
    /** Until people decide anew. */
    public Wait() {
      this(Until.DECIDED);
    }
  }

  /** What ends a wait. Waits for a season are no choice of one window; the case weighs them. */
  public enum Until {
    DECIDED,
    FULL_SUN,
    ECLIPSES
  }
}
