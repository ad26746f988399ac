package hark.trial.campaign;

import hark.ensemble.DiagnosisInput;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What crews do alike, whatever rule they follow: how often they err, and how they write it down.
 */
public final class Crews {
  /** Share of sittings that fail without anybody noticing. */
  public static final double SLIP = 0.03;

  /** Error of a level that is read off, dB. Common practice. */
  public static final double LEVEL_SD = 2;

  private Crews() {}

  /** A known satellite on our band and hand was listened for. */
  public static Evidence check(DiagnosisInput input, int station, Instant at, boolean heard) {
    return new Evidence.StationCheck(
        input.stations().get(station).name(),
        at,
        heard,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.of(true),
        Optional.of(true));
  }

  /** Something was heard while listening as usual. */
  public static Evidence heard(DiagnosisInput input, Geometry.Window window, double levelDb) {
    return new Evidence.Heard(
        input.stations().get(window.station()).name(),
        window.from(),
        window.to(),
        OptionalDouble.of(levelDb),
        OptionalDouble.of(LEVEL_SD),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** Nothing was heard while listening as usual. */
  public static Evidence silence(DiagnosisInput input, Geometry.Window window) {
    return new Evidence.NothingHeard(
        input.stations().get(window.station()).name(),
        window.from(),
        window.to(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        0,
        Optional.empty(),
        0);
  }

  /** Nothing was heard in a manner of listening. */
  public static Evidence silence(
      DiagnosisInput input, Geometry.Window window, Listener.Manner manner) {
    return new Evidence.NothingHeard(
        input.stations().get(window.station()).name(),
        window.from(),
        window.to(),
        Optional.of(manner.way()),
        OptionalDouble.empty(),
        OptionalDouble.of(manner.halfWidthHz()),
        manner.offsetSeconds(),
        Optional.of(input.candidates().get(manner.object()).objectId()),
        0);
  }

  /** The record as a journal would hold it, in the order of time. */
  public static List<Entry> journal(List<Evidence> evidence) {
    List<Evidence> inTime = new ArrayList<>(evidence);
    inTime.sort(Comparator.comparing(Evidence::at));
    List<Entry> entries = new ArrayList<>();
    for (Evidence each : inTime) {
      entries.add(new Entry(entries.size() + 1, each.end(), "", "", Map.of(), each));
    }
    return entries;
  }
}
