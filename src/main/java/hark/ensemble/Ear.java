package hark.ensemble;

import hark.link.Detector;
import hark.link.Way;
import hark.power.BodyHistory.BeaconSegment;
import hark.power.PowerModel;
import java.util.ArrayList;
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
   * The chance that no burst is noticed.
   *
   * @param tables one a beacon, for the node and the way of listening
   * @param from start of listening, s since separation
   */
  double miss(Member member, Body body, HearingTable[] tables, Way way, double from, double to) {
    double until = Math.min(to, member.radio().muteFrom());
    if (until <= from) {
      return 1;
    }
    double miss = 1;
    List<BeaconSegment> segments = body.history().segments();
    for (int s = Segments.firstEndingAfter(segments, from); s < segments.size(); s++) {
      BeaconSegment segment = segments.get(s);
      if (segment.firstBurst() > until) {
        break;
      }
      miss *= missInSegment(member, body, segment, tables[segment.beacon()], way, from, until);
    }
    return miss;
  }

  private double missInSegment(
      Member member,
      Body body,
      BeaconSegment segment,
      HearingTable table,
      Way way,
      double from,
      double to) {
    double last = Math.min(to, segment.end());
    double independent = 1;
    double turn = body.tumbleDegPerSecond() * segment.interval();
    double coherence = Math.max(0, 1 - turn / INDEPENDENT_AFTER_DEG);
    double[] coherent = coherence > 0 ? new double[] {1, 1, 1, 1, 1} : null;
    boolean unharmed = member.radio().isUnharmedUntil(last);
    Detector fadedDetector = faded.get(way)[segment.beacon()];
    for (double t = Segments.firstBurstFrom(segment, from); t <= last; t += segment.interval()) {
      double snr = table.snrDbAt(t);
      if (snr == Double.NEGATIVE_INFINITY) {
        continue;
      }
      snr -= unharmed ? 0 : member.radio().downlinkLossDb(t);
      double gate = table.gateAt(t, unharmed ? 0 : member.radio().frequencyShiftHz(t));
      independent *= 1 - gate * fadedDetector.probability(snr);
      if (coherent != null) {
        fadeTogether(coherent, segment.beacon(), way, snr, gate);
      }
    }
    return coherent == null
        ? independent
        : (1 - coherence) * independent + coherence * averaged(coherent);
  }

  private void fadeTogether(double[] coherent, int beacon, Way way, double snr, double gate) {
    Detector detector = steady.get(way)[beacon];
    double sd = beacons.get(beacon).patternSdDb();
    for (int f = 0; f < coherent.length; f++) {
      coherent[f] *= 1 - gate * detector.probability(snr + sd * FADE[f]);
    }
  }

  private static double averaged(double[] coherent) {
    double sum = 0;
    for (int f = 0; f < coherent.length; f++) {
      sum += FADE_WEIGHT[f] * coherent[f];
    }
    return sum;
  }

  /**
   * The strongest mean level of any burst sent above the mask in the window, dB over noise; NaN
   * when none is sent.
   */
  double strongestDb(Member member, Body body, HearingTable[] tables, double from, double to) {
    double until = Math.min(to, member.radio().muteFrom());
    double best = Double.NaN;
    for (BeaconSegment segment : Segments.overlapping(body.history().segments(), from, until)) {
      HearingTable table = tables[segment.beacon()];
      double last = Math.min(until, segment.end());
      for (double t = Segments.firstBurstFrom(segment, from); t <= last; t += segment.interval()) {
        double snr = table.snrDbAt(t) - member.radio().downlinkLossDb(t);
        if (snr > Double.NEGATIVE_INFINITY && !(snr <= best)) {
          best = snr;
        }
      }
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
