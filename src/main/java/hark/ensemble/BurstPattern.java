package hark.ensemble;

import hark.power.BodyHistory.BeaconSegment;
import java.util.ArrayList;
import java.util.List;

/**
 * The bursts of a window, rounded so that many members share one pattern: times to {@value
 * HearingTable#STEP_SECONDS} s, which is how finely tables are sampled; the member's own loss to a
 * decibel; its carrier's shift to {@value #SHIFT_STEP_HZ} Hz; coherence to eighths. All of it is
 * small against fades, tuning ranges and the errors of what is predicted.
 */
record BurstPattern(List<Stretch> stretches) {
  static final int SHIFT_STEP_HZ = 250;
  private static final int COHERENCE_STEPS = 8;

  /** So many bursts of a stretch are followed; a window holds few. */
  private static final int MOST = 2000;

  /**
   * Bursts of one beacon under one harm.
   *
   * @param first sample of the first burst
   * @param count of bursts
   * @param interval between bursts, s
   */
  record Stretch(
      int beacon,
      int first,
      int count,
      double interval,
      int coherenceEighths,
      int lossDb,
      int shiftSteps) {

    double firstSeconds() {
      return first * HearingTable.STEP_SECONDS;
    }

    double coherence() {
      return (double) coherenceEighths / COHERENCE_STEPS;
    }

    double shiftHz() {
      return (double) shiftSteps * SHIFT_STEP_HZ;
    }
  }

  /** The pattern of a member between two times, s since separation. */
  static BurstPattern of(Member member, Body body, double from, double to) {
    double until = Math.min(to, member.radio().muteFrom());
    List<Stretch> stretches = new ArrayList<>(1);
    for (BeaconSegment segment : Ear.Segments.overlapping(body.history().segments(), from, until)) {
      double first = Ear.Segments.firstBurstFrom(segment, from);
      double last = Math.min(until, segment.end());
      while (first <= last) {
        // what begins in between weakens or shifts the bursts after it
        double change = Math.min(last, member.radio().nextHarmAfter(first));
        int count = 1 + (int) Math.min(MOST, Math.floor((change - first) / segment.interval()));
        stretches.add(stretch(member, body, segment, new double[] {first, from}, count));
        first += count * segment.interval();
      }
    }
    return new BurstPattern(List.copyOf(stretches));
  }

  private static Stretch stretch(
      Member member, Body body, BeaconSegment segment, double[] firstAndFrom, int count) {
    double first = firstAndFrom[0];
    double turn = body.tumbleDegPerSecond() * segment.interval();
    double coherence = Math.max(0, 1 - turn / Ear.INDEPENDENT_AFTER_DEG);
    return new Stretch(
        segment.beacon(),
        (int) Math.rint((first - firstAndFrom[1]) / HearingTable.STEP_SECONDS),
        count,
        segment.interval(),
        (int) Math.rint(coherence * COHERENCE_STEPS),
        (int) Math.rint(member.radio().downlinkLossDb(first)),
        (int) Math.rint(member.radio().frequencyShiftHz(first) / SHIFT_STEP_HZ));
  }
}
