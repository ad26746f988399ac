package hark.ensemble;

import hark.link.Detector;
import hark.link.Way;
import hark.power.BodyHistory.BeaconSegment;
import hark.power.PowerModel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The chance to miss every burst that a member sends in a window, at one hearing node.
 *
 * <p>Fading by the antenna's pattern is normal in dB. Bursts sent more than {@value
 * #INDEPENDENT_AFTER_DEG} degrees of tumble apart see it anew; bursts sent at rest see the same
 * value; between, the two answers are mixed evenly by the angle.
 */
final class Ear {
  /** A turn that shows the station another part of the pattern, degrees. Common practice. */
  static final double INDEPENDENT_AFTER_DEG = 60;

  /**
   * Gauss–Hermite nodes and weights for the standard normal, five points (Abramowitz and Stegun,
   * table 25.10).
   */
  private static final double[] FADE = {
    -2.856970013872806, -1.355626179974266, 0, 1.355626179974266, 2.856970013872806
  };

  private static final double[] FADE_WEIGHT = {
    0.011257411327720, 0.222075922005613, 0.533333333333333, 0.222075922005613, 0.011257411327720
  };

  private final List<BeaconRadio> beacons;
  private final Map<Way, Detector[]> steady = new EnumMap<>(Way.class);
  private final Map<Way, Detector[]> faded = new EnumMap<>(Way.class);

  Ear(List<BeaconRadio> beacons, PowerModel typical) {
    this.beacons = List.copyOf(beacons);
    for (Way way : Way.values()) {
      Detector[] still = new Detector[beacons.size()];
      Detector[] turning = new Detector[beacons.size()];
      for (int b = 0; b < beacons.size(); b++) {
        BeaconRadio beacon = beacons.get(b);
        double duration = typical.beacons().get(b).durationSeconds();
        still[b] = Detector.of(way, beacon.requiredSnrDb(), duration, beacon.bandwidthHz());
        double width = Math.hypot(still[b].widthDb(), beacon.patternSdDb());
        turning[b] = new Detector(still[b].thresholdDb(), width);
      }
      steady.put(way, still);
      faded.put(way, turning);
    }
  }

  /**
   * The chance that no burst is noticed, at the only node of the tables.
   *
   * @param tables one a beacon, for the way of listening
   * @param from start of listening, s since separation
   */
  double miss(Member member, Body body, HearingTable[] tables, Way way, double from, double to) {
    return miss(Bursts.of(member, body, from, to), tables, way)[0];
  }

  /** The chance that no burst is noticed, by node. */
  double[] miss(Bursts bursts, HearingTable[] tables, Way way) {
    double[] miss = new double[tables[0].nodes()];
    Arrays.fill(miss, 1);
    int first = 0;
    for (int s = 0; s < bursts.stretchEnd.length; s++) {
      int end = bursts.stretchEnd[s];
      int beacon = bursts.stretchBeacon[s];
      double coherence = bursts.stretchCoherence[s];
      if (coherence == 0) {
        for (int i = first; i < end; i++) {
          tables[beacon].miss(bursts, i, faded.get(way)[beacon], miss);
        }
      } else {
        mix(bursts, s, first, tables[beacon], way, miss);
      }
      first = end;
    }
    return miss;
  }

  /** A stretch whose bursts see partly the same of the pattern, partly each another part. */
  private void mix(
      Bursts bursts, int stretch, int first, HearingTable table, Way way, double[] miss) {
    int beacon = bursts.stretchBeacon[stretch];
    double coherence = bursts.stretchCoherence[stretch];
    double sd = beacons.get(beacon).patternSdDb();
    double[] fadeDb = Arrays.stream(FADE).map(f -> sd * f).toArray();
    double[][] together = new double[FADE.length][miss.length];
    double[] apart = new double[miss.length];
    Arrays.fill(apart, 1);
    for (double[] row : together) {
      Arrays.fill(row, 1);
    }
    for (int i = first; i < bursts.stretchEnd[stretch]; i++) {
      table.miss(bursts, i, faded.get(way)[beacon], apart);
      table.miss(bursts, i, steady.get(way)[beacon], fadeDb, together);
    }
    for (int n = 0; n < miss.length; n++) {
      double mean = 0;
      for (int f = 0; f < FADE.length; f++) {
        mean += FADE_WEIGHT[f] * together[f][n];
      }
      miss[n] *= (1 - coherence) * apart[n] + coherence * mean;
    }
  }

  /**
   * The strongest mean level of any burst sent above the mask and in the band, dB over noise; NaN
   * when there is none.
   */
  static double strongestDb(Bursts bursts, HearingTable[] tables, int node) {
    double best = Double.NaN;
    int first = 0;
    for (int s = 0; s < bursts.stretchEnd.length; s++) {
      HearingTable table = tables[bursts.stretchBeacon[s]];
      for (int i = first; i < bursts.stretchEnd[s]; i++) {
        double snr = table.snrDb(bursts, i, node);
        boolean met = snr > Double.NEGATIVE_INFINITY && table.gate(bursts, i, node) > 0;
        if (met && !(snr <= best)) {
          best = snr;
        }
      }
      first = bursts.stretchEnd[s];
    }
    return best;
  }

  /** True when at least one burst leaves the antenna while the path is above the mask. */
  static boolean sends(Member member, Body body, PassGeometry path, double from, double to) {
    double until = Math.min(to, member.radio().muteFrom());
    for (BeaconSegment segment : Segments.overlapping(body.history().segments(), from, until)) {
      double last = Math.min(until, segment.end());
      for (double t = Segments.firstBurstFrom(segment, from); t <= last; t += segment.interval()) {
        if (path.isAboveMask(t)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Searching in a body's stretches of beacon. */
  static final class Segments {
    private Segments() {}

    static int firstEndingAfter(List<BeaconSegment> segments, double seconds) {
      int low = 0;
      int high = segments.size();
      while (low < high) {
        int middle = (low + high) >>> 1;
        if (segments.get(middle).end() >= seconds) {
          high = middle;
        } else {
          low = middle + 1;
        }
      }
      return low;
    }

    static double firstBurstFrom(BeaconSegment segment, double from) {
      if (segment.firstBurst() >= from) {
        return segment.firstBurst();
      }
      double n = Math.ceil((from - segment.firstBurst()) / segment.interval());
      return segment.firstBurst() + n * segment.interval();
    }

    /** True when a beacon runs at some time of the span. */
    static boolean any(List<BeaconSegment> segments, double from, double to) {
      int first = firstEndingAfter(segments, from);
      return first < segments.size() && segments.get(first).firstBurst() <= to;
    }

    static List<BeaconSegment> overlapping(List<BeaconSegment> segments, double from, double to) {
      List<BeaconSegment> found = new ArrayList<>();
      for (int s = firstEndingAfter(segments, from); s < segments.size(); s++) {
        if (segments.get(s).firstBurst() > to) {
          break;
        }
        found.add(segments.get(s));
      }
      return found;
    }
  }
}
