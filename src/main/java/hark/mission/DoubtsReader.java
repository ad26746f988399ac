package hark.mission;

import hark.station.StationDoubts;
import hark.station.StationFault;
import java.util.EnumMap;
import java.util.Map;

/** Reads how far a station's description may be wrong: keys of one of {@code stations}. */
final class DoubtsReader {
  private static final Span CLOCK_S = Span.of(0, 3600).usually(0, 30);
  private static final Span AZIMUTH_DEG = Span.of(0, 90).usually(0, 20);
  private static final Span INSENSITIVE_DB = Span.of(0, 60);
  private static final Span FREQUENCY_HZ = Span.of(0, 1e7).orIn("kHz", 1e3);
  private static final Span TURNED_DEG = Span.of(0, 180);
  private static final Span LATE_S = Span.of(0, 86_400);

  private DoubtsReader() {}

  static StationDoubts read(Section station) {
    double works = station.mean("works_with_probability", Spans.FRACTION, 0.95);
    return new StationDoubts(
        works,
        station.partOrDefaults("faults", DoubtsReader::shares),
        station.partOrDefaults("fault_sizes", DoubtsReader::sizes),
        station.mean("clock_sd_s", CLOCK_S, 0.2),
        station.mean("azimuth_sd_deg", AZIMUTH_DEG, StationDoubts.USUAL_AZIMUTH_SD_DEG),
        station.mean("minutes_lost", Spans.FRACTION, StationDoubts.USUAL_MINUTES_LOST));
  }

  private static Map<StationFault, Double> shares(Section faults) {
    Map<StationFault, Double> shares = new EnumMap<>(StationFault.class);
    for (StationFault fault : StationFault.values()) {
      shares.put(fault, faults.mean(fault.key(), Spans.FRACTION, fault.usualShare()));
    }
    if (shares.values().stream().noneMatch(share -> share > 0)) {
      throw new IllegalArgumentException("no fault has a share above 0");
    }
    return shares;
  }

  private static StationDoubts.Sizes sizes(Section sizes) {
    StationDoubts.Sizes usual = StationDoubts.Sizes.USUAL;
    return new StationDoubts.Sizes(
        sizes.mean("insensitive_dB", INSENSITIVE_DB, usual.insensitiveDb()),
        sizes.mean("frequency_Hz", FREQUENCY_HZ, usual.frequencyHz()),
        sizes.mean("azimuth_deg", TURNED_DEG, usual.azimuthDeg()),
        sizes.mean("clock_s", LATE_S, usual.clockSeconds()));
  }
}
