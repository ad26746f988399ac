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
  float[] miss(Bursts bursts, HearingTable[] tables, Way way) {
    float[] miss = ones(tables[0].nodes());
    int first = 0;
    for (int s = 0; s < bursts.stretchEnd.length; s++) {
      int end = bursts.stretchEnd[s];
      int beacon = bursts.stretchBeacon[s];
      if (bursts.stretchCoherence[s] == 0) {
        tables[beacon].miss(bursts, first, end, faded.get(way)[beacon], 0, miss);
      } else {
        mix(bursts, s, first, tables[beacon], way, miss);
      }
      first = end;
    }
    return miss;
  }

  private static float[] ones(int count) {
    float[] ones = new float[count];
    Arrays.fill(ones, 1);
    return ones;
  }

  /** A stretch whose bursts see partly the same of the pattern, partly each another part. */
  private void mix(
      Bursts bursts, int stretch, int first, HearingTable table, Way way, float[] miss) {
    int beacon = bursts.stretchBeacon[stretch];
    int end = bursts.stretchEnd[stretch];
    float coherence = (float) bursts.stretchCoherence[stretch];
    double sd = beacons.get(beacon).patternSdDb();
    float[] apart = ones(miss.length);
    table.miss(bursts, first, end, faded.get(way)[beacon], 0, apart);
    float[] mean = new float[miss.length];
    for (int f = 0; f < FADE.length; f++) {
      float[] together = ones(miss.length);
      table.miss(bursts, first, end, steady.get(way)[beacon], (float) (sd * FADE[f]), together);
      for (int n = 0; n < mean.length; n++) {
        mean[n] += (float) FADE_WEIGHT[f] * together[n];
      }
    }
    for (int n = 0; n < miss.length; n++) {
      miss[n] *= (1 - coherence) * apart[n] + coherence * mean[n];
    }
  }

  /**
   * What levels of the bursts are met at each node of some tables.
   *
   * @param tables one a beacon
   */
  MetLevels levels(Bursts bursts, HearingTable[] tables, Way way) {
    return new MetLevels(bursts, tables, beacons, steady.get(way));
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
