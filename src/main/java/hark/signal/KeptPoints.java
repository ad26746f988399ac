package hark.signal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Which points of which curve take part in a fit. */
final class KeptPoints {
  private KeptPoints() {}

  /** All of them, by curve and point; the arrays may be changed. */
  static List<boolean[]> all(List<DopplerCurve> curves) {
    List<boolean[]> kept = new ArrayList<>();
    for (DopplerCurve curve : curves) {
      boolean[] flags = new boolean[curve.points().size()];
      Arrays.fill(flags, true);
      kept.add(flags);
    }
    return kept;
  }
}
