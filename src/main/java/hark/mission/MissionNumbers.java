package hark.mission;

import hark.ensemble.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The numbers of a spacecraft, written or taken by default, for asking "what if". */
public final class MissionNumbers {
  /** A plausible value is at most so many times larger or smaller than the one believed. */
  private static final double TIMES = 4;

  /** Voltages lie closer: a threshold far from its battery's voltage tells nothing. */
  private static final double TIMES_VOLTS = 1.25;

  private static final String SPACECRAFT = "spacecraft.";

  private MissionNumbers() {}

  /**
   * The spacecraft's numbers in the order read.
   *
   * @return empty when the folder cannot be read
   */
  public static List<MissionNumber> list(FolderSource folder) {
    return Missions.check(folder).numbers();
  }

  /** What the reader met at a key. */
  record Met(String path, Uncertain number, Span span, boolean whole) {}

  static List<MissionNumber> of(YamlTree top, Map<String, Met> met) {
    List<MissionNumber> numbers = new ArrayList<>();
    for (Met one : met.values()) {
      if (one.path().startsWith(SPACECRAFT)) {
        numbers.add(number(KeyPath.named(top, one.path()), one));
      }
    }
    return List.copyOf(numbers);
  }

  private static MissionNumber number(String key, Met met) {
    double mean = met.number().mean();
    String unit = KeyUnits.of(met.path());
    double times = unit.equals("V") ? TIMES_VOLTS : TIMES;
    double low = met.span().usualMin();
    double high = met.span().usualMax();
    if (mean != 0 && !unit.equals("°C") && !unit.startsWith("dB") && low * high >= 0) {
      low = Math.max(low, Math.min(mean / times, mean * times));
      high = Math.min(high, Math.max(mean / times, mean * times));
    }
    // a value beyond what is usual is still one to begin from
    low = Math.min(low, mean);
    high = Math.max(high, mean);
    if (met.whole()) {
      low = Math.ceil(low);
      high = Math.floor(high);
    }
    return new MissionNumber(key, Section.print(met.number()), mean, unit, low, high, met.whole());
  }
}
