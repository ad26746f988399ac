package hark.mission;

import hark.power.BeaconPace;
import hark.power.BeaconPace.Later;
import hark.power.BeaconPace.WhenLow;
import hark.power.PowerModel.BusState;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;

/**
 * Reads {@code beacons[].interval_s}: one number, or a map of the usual interval and those of
 * states, of low voltage and of later days.
 */
final class RhythmReader {
  private static final Span INTERVAL_S = Span.of(0.1, 86_400).usually(1, 3600);
  private static final Span DAYS = Span.of(0.001, 3660).usually(0.01, 400);
  private static final double SECONDS_PER_DAY = 86_400;
  private static final String KEY = "interval_s";
  private static final List<BusState> SENDING =
      List.of(BusState.BOOT, BusState.SAFE, BusState.NOMINAL);

  private RhythmReader() {}

  /** The usual interval, s, and when it is another. */
  record Rhythm(double usualSeconds, BeaconPace pace) {
    /** The least of all intervals, s. */
    double shortest() {
      DoubleStream others =
          DoubleStream.concat(
              pace.byState().values().stream().mapToDouble(s -> s),
              DoubleStream.concat(
                  pace.whenLow().stream().mapToDouble(WhenLow::intervalSeconds),
                  pace.later().stream().mapToDouble(Later::intervalSeconds)));
      return Math.min(usualSeconds, others.min().orElse(usualSeconds));
    }
  }

  static Rhythm read(Section beacon, Reading reading) {
    YamlTree written = beacon.at(KEY);
    boolean paced = written.kind() == YamlTree.Kind.MAP && !UncertainNumbers.isOne(written);
    if (!paced) {
      return new Rhythm(beacon.number(KEY, INTERVAL_S), BeaconPace.STEADY);
    }
    return beacon.part(KEY, RhythmReader::rhythm).orElse(new Rhythm(1, BeaconPace.STEADY));
  }

  private static Rhythm rhythm(Section map) {
    double usual = map.number("usual", INTERVAL_S);
    Map<BusState, Double> byState = new EnumMap<>(BusState.class);
    for (BusState state : SENDING) {
      map.numberIfWritten(Section.word(state), INTERVAL_S)
          .ifPresent(seconds -> byState.put(state, seconds));
    }
    var low =
        map.partIfWritten(
            "below_V", b -> new WhenLow(b.number("volts", Spans.VOLTS), b.number(KEY, INTERVAL_S)));
    var later =
        map.partIfWritten(
            "after_days",
            a -> new Later(a.number("days", DAYS) * SECONDS_PER_DAY, a.number(KEY, INTERVAL_S)));
    return new Rhythm(usual, new BeaconPace(byState, low, later));
  }
}
