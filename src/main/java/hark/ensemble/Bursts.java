package hark.ensemble;

import hark.power.BodyHistory.BeaconSegment;
import java.util.Arrays;
import java.util.List;

/**
 * The bursts that a member sends in a window, looked up once for all nodes and modes: when, on
 * which beacon, and what the member's own faults do to them. Kept in plain arrays, since they are
 * read very often.
 */
final class Bursts {
  /** No window holds more bursts than this; the rest would change nothing. */
  private static final int MOST = 20_000;

  /** Number of bursts. */
  final int count;

  /** Place among a table's samples, and how far beyond it, 0…1. */
  final int[] cell;

  final float[] beyond;

  /** The member's own loss, dB, and its carrier's shift, Hz. */
  final float[] lossDb;

  final float[] shiftHz;

  /** Stretches of one beacon without a break: end of each (exclusive), beacon, coherence 0…1. */
  final int[] stretchEnd;

  final int[] stretchBeacon;
  final double[] stretchCoherence;

  private Bursts(Builder made) {
    count = made.count;
    cell = made.cell;
    beyond = made.beyond;
    lossDb = made.lossDb;
    shiftHz = made.shiftHz;
    stretchEnd = Arrays.copyOf(made.stretchEnd, made.stretches);
    stretchBeacon = Arrays.copyOf(made.stretchBeacon, made.stretches);
    stretchCoherence = Arrays.copyOf(made.stretchCoherence, made.stretches);
  }

  /** Bursts between two times, s since separation; tables begin at the first. */
  static Bursts of(Member member, Body body, double from, double to) {
    double until = Math.min(to, member.radio().muteFrom());
    Builder builder = new Builder(member, body, from);
    List<BeaconSegment> segments = body.history().segments();
    int first = until > from ? Ear.Segments.firstEndingAfter(segments, from) : segments.size();
    for (int s = first; s < segments.size() && builder.count < MOST; s++) {
      if (segments.get(s).firstBurst() > until) {
        break;
      }
      builder.add(segments.get(s), until);
    }
    return new Bursts(builder);
  }

  private static final class Builder {
    private final Member member;
    private final double turnDegPerSecond;
    private final double from;
    private int count;
    private int[] cell = new int[16];
    private float[] beyond = new float[16];
    private float[] lossDb = new float[16];
    private float[] shiftHz = new float[16];
    private int stretches;
    private int[] stretchEnd = new int[2];
    private int[] stretchBeacon = new int[2];
    private double[] stretchCoherence = new double[2];

    Builder(Member member, Body body, double from) {
      this.member = member;
      this.turnDegPerSecond = body.tumbleDegPerSecond();
      this.from = from;
    }

    void add(BeaconSegment segment, double until) {
      double last = Math.min(until, segment.end());
      boolean unharmed = member.radio().isUnharmedUntil(last);
      double t = Ear.Segments.firstBurstFrom(segment, from);
      while (t <= last && count < MOST) {
        room();
        double place = (t - from) / HearingTable.STEP_SECONDS;
        cell[count] = (int) place;
        beyond[count] = (float) (place - (int) place);
        if (!unharmed) {
          lossDb[count] = (float) member.radio().downlinkLossDb(t);
          shiftHz[count] = (float) member.radio().frequencyShiftHz(t);
        }
        count++;
        t += segment.interval();
      }
      if (stretches == stretchEnd.length) {
        stretchEnd = Arrays.copyOf(stretchEnd, 2 * stretches);
        stretchBeacon = Arrays.copyOf(stretchBeacon, 2 * stretches);
        stretchCoherence = Arrays.copyOf(stretchCoherence, 2 * stretches);
      }
      double turn = turnDegPerSecond * segment.interval();
      stretchEnd[stretches] = count;
      stretchBeacon[stretches] = segment.beacon();
      stretchCoherence[stretches] = Math.max(0, 1 - turn / Ear.INDEPENDENT_AFTER_DEG);
      stretches++;
    }

    private void room() {
      if (count == cell.length) {
        cell = Arrays.copyOf(cell, 2 * count);
        beyond = Arrays.copyOf(beyond, 2 * count);
        lossDb = Arrays.copyOf(lossDb, 2 * count);
        shiftHz = Arrays.copyOf(shiftHz, 2 * count);
      }
    }
  }
}
