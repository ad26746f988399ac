package hark.evidence;

import hark.link.Way;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was done and heard. A closed set; a record says what happened and never what it means.
 * Optional numbers left out stay empty: nothing is invented here.
 */
public sealed interface Evidence {
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
      implements Evidence {
    @Override
    public Instant at() {
      return from;
    }

    @Override
    public Instant end() {
      return to;
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
   */
  record Heard(
      String station,
      Instant from,
      Instant to,
      OptionalDouble levelDb,
      OptionalDouble levelSdDb,
      OptionalDouble frequencyHz,
      Optional<String> form,
      Optional<String> callSign,
      Optional<String> object)
      implements Evidence {
    @Override
    public Instant at() {
      return from;
    }

    @Override
    public Instant end() {
      return to;
    }

    @Override
    public String kind() {
      return "heard";
    }
  }

  /** What the spacecraft said of itself: battery voltage in this edition. */
  record Telemetry(Instant at, double volts, OptionalDouble voltsSd) implements Evidence {
    @Override
    public String kind() {
      return "telemetry";
    }
  }

  /** A satellite known to send was listened for. */
  record StationCheck(
      String station,
      Instant at,
      boolean heard,
      OptionalDouble levelDb,
      OptionalDouble expectedDb,
      Optional<Boolean> sameHand,
      Optional<Boolean> sameBand)
      implements Evidence {
    @Override
    public String kind() {
      return "station-check";
    }
  }

  /** Nobody listened; no likelihood, kept so that the record is whole. */
  record NotListened(String station, Instant from, Instant to, String why) implements Evidence {
    @Override
    public Instant at() {
      return from;
    }

    @Override
    public Instant end() {
      return to;
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
