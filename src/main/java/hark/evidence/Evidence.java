package hark.evidence;

import hark.link.Way;
import java.time.Instant;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was done and heard. A closed set; a record says what happened and never what it means.
 * Optional numbers left out stay empty: nothing is invented here.
 */
public sealed interface Evidence
    permits Spanned,
        Evidence.Telemetry,
        Evidence.StationCheck,
        Evidence.Note,
        Evidence.Correction,
        ObjectVerdict,
        CommandSent,
        MotionSeen,
        Separation,
        DopplerFit {
  /** When it happened, or began. */
  Instant at();

  /** When it was over; the same as {@link #at()} for what has no length. */
  default Instant end() {
    return at();
  }

  /** The kind's name as the journal and the command line write it. */
  String kind();

  /**
   * We listened and heard nothing.
   *
   * @param windowHz half-width listened to; empty means the station's own
   * @param offsetSeconds pointed and tuned as if the object were so much later
   * @param object the object followed; empty means the likeliest candidate
   * @param frequencyHz middle of the band listened to; empty means each beacon's own
   * @param noiseDb noise above the usual in that hour, dB
   */
  record NothingHeard(
      String station,
      Instant from,
      Instant to,
      Optional<Way> way,
      OptionalDouble frequencyHz,
      OptionalDouble windowHz,
      double offsetSeconds,
      Optional<String> object,
      double noiseDb)
      implements Spanned {
    /** Refuses a window that ends before it begins and numbers that are none. */
    public NothingHeard {
      Refuse.backwards(from, to);
      Refuse.notFinite("offset", offsetSeconds);
      Refuse.notFinite("noise", noiseDb);
      Refuse.notPositive("frequency", frequencyHz);
      Refuse.notPositive("half-width", windowHz);
    }

    @Override
    public String kind() {
      return "nothing-heard";
    }
  }

  /**
   * Something was heard and taken for ours.
   *
   * @param levelDb over noise in the beacon's bandwidth, dB
   * @param frequencyHz as measured, Doppler and all, at some time of the window
   * @param frequencySdHz give or take
   * @param form carrier, morse, frames or fragment
   * @param callSign as decoded; empty when none was
   * @param object the object followed; empty means the likeliest candidate
   */
  record Heard(
      String station,
      Instant from,
      Instant to,
      OptionalDouble levelDb,
      OptionalDouble levelSdDb,
      OptionalDouble frequencyHz,
      OptionalDouble frequencySdHz,
      Optional<String> form,
      Optional<String> callSign,
      Optional<String> object)
      implements Spanned {
    /** A reception whose frequency, if read, has the usual spread. */
    public Heard(
        String station,
        Instant from,
        Instant to,
        OptionalDouble levelDb,
        OptionalDouble levelSdDb,
        OptionalDouble frequencyHz,
        Optional<String> form,
        Optional<String> callSign,
        Optional<String> object) {
      this(
          station,
          from,
          to,
          levelDb,
          levelSdDb,
          frequencyHz,
          OptionalDouble.empty(),
          form,
          callSign,
          object);
    }

    /** Refuses a window that ends before it begins and numbers that are none. */
    public Heard {
      Refuse.backwards(from, to);
      Refuse.notFinite("level", levelDb);
      Refuse.notPositive("spread of the level", levelSdDb);
      Refuse.notPositive("frequency", frequencyHz);
      Refuse.notPositive("spread of the frequency", frequencySdHz);
    }

    @Override
    public String kind() {
      return "heard";
    }
  }

  /**
   * What the spacecraft said of itself in one frame.
   *
   * @param readings by channel; with {@code mode} at least one
   * @param mode state of the bus as it names it
   */
  record Telemetry(Instant at, Map<Channel, Reading> readings, Optional<Mode> mode)
      implements Evidence {
    /** Keeps its own copy and refuses a frame that says nothing. */
    public Telemetry {
      if (readings.isEmpty() && mode.isEmpty()) {
        throw new IllegalArgumentException("telemetry without a reading");
      }
      EnumMap<Channel, Reading> ordered = new EnumMap<>(Channel.class);
      ordered.putAll(readings);
      readings = java.util.Collections.unmodifiableMap(ordered);
    }

    /** A frame with a voltage alone, V, and its spread. */
    public Telemetry(Instant at, double volts, OptionalDouble voltsSd) {
      this(at, Map.of(Channel.VOLTS, new Reading(volts, voltsSd)), Optional.empty());
    }

    /** The bus voltage; empty when it was not told. */
    public OptionalDouble volts() {
      Reading volts = readings.get(Channel.VOLTS);
      return volts == null ? OptionalDouble.empty() : OptionalDouble.of(volts.value());
    }

    @Override
    public String kind() {
      return "telemetry";
    }
  }

  /** A number of one channel, in its unit, and its spread; empty means the channel's usual. */
  record Reading(double value, OptionalDouble sd) {
    /** Refuses what is not a number. */
    public Reading {
      Refuse.notFinite("reading", value);
      Refuse.notPositive("spread of a reading", sd);
    }
  }

  /** A state of the bus that can speak. */
  enum Mode {
    BOOT,
    SAFE,
    NOMINAL
  }

  /**
   * A satellite known to send was listened for.
   *
   * @param levelDb as measured; with {@code expectedDb} it tells of sensitivity
   * @param sameHand whether it sends with the hand of polarisation that ours needs
   * @param sameBand whether it sends in the band of our beacon
   */
  record StationCheck(
      String station,
      Instant at,
      boolean heard,
      OptionalDouble levelDb,
      OptionalDouble expectedDb,
      Optional<Boolean> sameHand,
      Optional<Boolean> sameBand)
      implements Evidence {
    /** Refuses levels that are no numbers. */
    public StationCheck {
      Refuse.notFinite("level", levelDb);
      Refuse.notFinite("expected level", expectedDb);
    }

    @Override
    public String kind() {
      return "station-check";
    }
  }

  /** Nobody listened; no likelihood, kept so that the record is whole. */
  record NotListened(String station, Instant from, Instant to, String why) implements Spanned {
    /** Refuses a span that ends before it begins. */
    public NotListened {
      Refuse.backwards(from, to);
    }

    @Override
    public String kind() {
      return "not-listened";
    }
  }

  /** Words only. */
  record Note(Instant at, String text) implements Evidence {
    @Override
    public String kind() {
      return "note";
    }
  }

  /**
   * Keys that replace those of an earlier entry. An empty map withdraws the entry; an empty value
   * takes a key away.
   */
  record Correction(Instant at, int of, Map<String, String> keys) implements Evidence {
    /** Keeps its own copy. */
    public Correction {
      keys = Map.copyOf(keys);
    }

    @Override
    public String kind() {
      return "correction";
    }
  }
}
