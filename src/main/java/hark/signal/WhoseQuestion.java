package hark.signal;

import hark.orbit.EarthModel;
import java.util.List;

/**
 * What is asked: whose curves are these?
 *
 * @param suspects with weights that sum to 1
 * @param curves one for each pass
 * @param listeners every station the curves name
 * @param noise what is believed of the points' spread
 */
public record WhoseQuestion(
    List<Suspect> suspects,
    List<DopplerCurve> curves,
    List<Listener> listeners,
    Carrier carrier,
    Noise noise,
    EarthModel earth) {
  /**
   * Spread of a point for which no other is given.
   *
   * @param medianHz half the curves are quieter than this
   * @param factor a standard deviation of its logarithm, as a factor; 1 when it is known
   */
  public record Noise(double medianHz, double factor) {
    /** A beacon's frequency read off a waterfall or a decoder's estimate, Hz. Judged. */
    public static final Noise USUAL = new Noise(60, 2);

    /** Refuses what is not a spread. */
    public Noise {
      if (!(medianHz > 0 && factor >= 1)) {
        throw new IllegalArgumentException("noise " + medianHz + " Hz, factor " + factor);
      }
    }
  }

  /** Refuses curves of unknown stations and weights that do not sum to 1. */
  public WhoseQuestion {
    suspects = List.copyOf(suspects);
    curves = List.copyOf(curves);
    listeners = List.copyOf(listeners);
    double sum = suspects.stream().mapToDouble(Suspect::prior).sum();
    if (Math.abs(sum - 1) > 1e-6) {
      throw new IllegalArgumentException("the suspects' weights sum to " + sum);
    }
    for (DopplerCurve curve : curves) {
      if (listeners.stream().noneMatch(listener -> listener.name().equals(curve.station()))) {
        throw new IllegalArgumentException("no station " + curve.station());
      }
    }
    if (curves.isEmpty()) {
      throw new IllegalArgumentException("no curve");
    }
  }

  int listenerOf(DopplerCurve curve) {
    for (int s = 0; s < listeners.size(); s++) {
      if (listeners.get(s).name().equals(curve.station())) {
        return s;
      }
    }
    throw new IllegalArgumentException("no station " + curve.station());
  }
}
