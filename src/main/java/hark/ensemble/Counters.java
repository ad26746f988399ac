package hark.ensemble;

import hark.evidence.Channel;
import hark.link.NormalCurve;
import hark.power.BodyHistory;
import hark.power.BodyHistory.BeaconSegment;
import java.util.List;

/**
 * What a body's counters say at a time: restarts, uptime, bursts sent. They are the sharpest
 * evidence of life in sunlight only: an uptime that ends shortly after sunrise, again and again
 * (after Fléron 2019, Int. J. Aerospace Eng. 8428167).
 *
 * <p>A real computer also restarts for reasons that no cause of the tree stands for, with a small
 * rate; without it a single unforeseen restart would rule out every member.
 */
final class Counters {
  /** Unforeseen restarts a day, by radiation or software. Judged: one in seven weeks. */
  static final double UNFORESEEN_PER_DAY = 0.02;

  private static final double RATE = UNFORESEEN_PER_DAY / 86_400;
  private static final int MOST_UNFORESEEN = 12;

  /**
   * Model discrepancies. A restart near a threshold comes minutes early or late (s, and share of
   * the uptime); each of many restarts may fail to happen (restarts, and share of them); bursts are
   * as uncertain as the time they ran (bursts, and share). Judged.
   */
  private static final double UPTIME_SECONDS = 180;

  private static final double UPTIME_SHARE = 0.005;
  private static final double RESETS = 0.4;
  private static final double RESETS_SHARE = 0.1;
  private static final double BURSTS = 2;
  private static final double BURSTS_SHARE = 0.02;

  private final BodyHistory.Probe probe;
  private final List<BeaconSegment> segments;
  private final boolean counterSurvives;

  /**
   * @param counterSurvives whether the beacon counter goes on through a restart
   */
  Counters(BodyHistory history, int probe, boolean counterSurvives) {
    this.probe = history.probes().get(probe);
    this.segments = history.segments();
    this.counterSurvives = counterSurvives;
  }

  /** Density of those of the numbers that are counters. */
  double likelihood(List<Told> told) {
    Told uptime = find(told, Channel.UPTIME_S);
    Told bursts = find(told, Channel.BEACON_COUNTER);
    Told resets = find(told, Channel.RESETS);
    if (uptime == null && bursts == null && resets == null) {
      return 1;
    }
    double mine = probe.uptimeSeconds();
    double foreseen = Math.exp(-RATE * mine);
    double early = probe.seconds() - mine;
    double asModelled =
        foreseen
            * (uptime == null ? 1 : uptimeDensity(uptime, mine))
            * (bursts == null ? 1 : burstDensity(bursts, mine))
            * (resets == null ? 1 : resetDensity(resets, 0, early));
    double restarted =
        unforeseen(uptime, bursts)
            * (resets == null ? 1 : resetDensity(resets, 1, probe.seconds()));
    return asModelled + restarted;
  }

  private static Told find(List<Told> told, Channel channel) {
    return told.stream().filter(t -> t.channel() == channel).findFirst().orElse(null);
  }

  /** Density of uptime and bursts when it restarted, unforeseen, since the body's last start. */
  private double unforeseen(Told uptime, Told bursts) {
    double mine = probe.uptimeSeconds();
    if (uptime != null) {
      double before = NormalCurve.below((mine - uptime.value()) / uptimeSd(uptime, mine));
      double density = RATE * Math.exp(-RATE * uptime.value()) * before;
      return bursts == null ? density : density * burstDensity(bursts, uptime.value());
    }
    double any = -Math.expm1(-RATE * mine);
    if (bursts == null) {
      return any;
    }
    if (counterSurvives) {
      return any * burstDensity(bursts, mine);
    }
    double most = sentSince(mine);
    double even = NormalCurve.below((most - bursts.value()) / burstSd(bursts, most)) / (1 + most);
    return any * even;
  }

  private double uptimeDensity(Told uptime, double expected) {
    return Normal.density(uptime.value(), expected, uptimeSd(uptime, expected));
  }

  private static double uptimeSd(Told uptime, double expected) {
    return Math.hypot(uptime.sd(), UPTIME_SECONDS + UPTIME_SHARE * expected);
  }

  private double burstDensity(Told bursts, double uptime) {
    double expected = sentSince(counterSurvives ? probe.seconds() : uptime);
    return Normal.density(bursts.value(), expected, burstSd(bursts, expected));
  }

  private static double burstSd(Told bursts, double expected) {
    return Math.hypot(bursts.sd(), BURSTS + BURSTS_SHARE * expected);
  }

  /** Restarts of the body and unforeseen ones before a time, at least so many of these. */
  private double resetDensity(Told resets, int least, double beforeSeconds) {
    double mean = RATE * Math.max(0, beforeSeconds);
    double chance = Math.exp(-mean);
    double sum = 0;
    for (int k = 0; k <= MOST_UNFORESEEN; k++) {
      double expected = probe.resets() + least + k;
      sum += chance * Normal.density(resets.value(), expected, resetSd(resets));
      chance *= mean / (k + 1);
    }
    return sum;
  }

  private double resetSd(Told resets) {
    return Math.hypot(resets.sd(), RESETS + RESETS_SHARE * probe.resets());
  }

  /** Bursts of the first beacon that began in the last so many seconds. */
  double sentSince(double uptime) {
    double to = probe.seconds();
    double from = to - uptime;
    double sent = 0;
    for (int s = Ear.Segments.firstEndingAfter(segments, from); s < segments.size(); s++) {
      BeaconSegment segment = segments.get(s);
      double last = Math.min(to, segment.end());
      if (segment.beacon() == 0 && segment.firstBurst() <= last) {
        double first = Ear.Segments.firstBurstFrom(segment, from);
        sent += first > last ? 0 : 1 + Math.floor((last - first) / segment.interval());
      }
    }
    return sent;
  }

  /** Chance that a counter would have read lower. */
  double below(Told told) {
    double mine = probe.uptimeSeconds();
    double foreseen = Math.exp(-RATE * mine);
    double value = told.value();
    return switch (told.channel()) {
      case UPTIME_S ->
          foreseen * NormalCurve.below((value - mine) / uptimeSd(told, mine))
              - Math.expm1(-RATE * Math.min(value, mine));
      case BEACON_COUNTER -> burstsBelow(told, foreseen);
      default -> resetsBelow(told);
    };
  }

  private double burstsBelow(Told told, double foreseen) {
    double most = sentSince(counterSurvives ? probe.seconds() : probe.uptimeSeconds());
    double z = (told.value() - most) / burstSd(told, most);
    double even = Math.min(1, told.value() / (1 + most));
    return counterSurvives
        ? NormalCurve.below(z)
        : foreseen * NormalCurve.below(z) + (1 - foreseen) * even;
  }

  private double resetsBelow(Told told) {
    double mean = RATE * probe.seconds();
    double chance = Math.exp(-mean);
    double sum = 0;
    for (int k = 0; k <= MOST_UNFORESEEN; k++) {
      sum += chance * NormalCurve.below((told.value() - probe.resets() - k) / resetSd(told));
      chance *= mean / (k + 1);
    }
    return sum;
  }
}
