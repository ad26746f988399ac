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

  /** Bursts as a pattern has them. */
  static Bursts of(BurstPattern pattern) {
    Builder builder = new Builder();
    pattern.stretches().forEach(builder::add);
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

    Builder() {
      member = null;
      turnDegPerSecond = 0;
      from = 0;
    }

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
        place((t - from) / HearingTable.STEP_SECONDS);
        if (!unharmed) {
          lossDb[count] = (float) member.radio().downlinkLossDb(t);
          shiftHz[count] = (float) member.radio().frequencyShiftHz(t);
        }
        count++;
        t += segment.interval();
      }
      double turn = turnDegPerSecond * segment.interval();
      close(segment.beacon(), Math.max(0, 1 - turn / Ear.INDEPENDENT_AFTER_DEG));
    }

    void add(BurstPattern.Stretch stretch) {
      for (int k = 0; k < stretch.count() && count < MOST; k++) {
        double t = stretch.firstSeconds() + k * stretch.interval();
        room();
        place(t / HearingTable.STEP_SECONDS);
        lossDb[count] = stretch.lossDb();
        shiftHz[count] = (float) stretch.shiftHz();
        count++;
      }
      close(stretch.beacon(), stretch.coherence());
    }

    private void place(double samples) {
      cell[count] = (int) samples;
      beyond[count] = (float) (samples - (int) samples);
    }

    private void close(int beacon, double coherence) {
      if (stretches == stretchEnd.length) {
        stretchEnd = Arrays.copyOf(stretchEnd, 2 * stretches);
        stretchBeacon = Arrays.copyOf(stretchBeacon, 2 * stretches);
        stretchCoherence = Arrays.copyOf(stretchCoherence, 2 * stretches);
      }
      stretchEnd[stretches] = count;
      stretchBeacon[stretches] = beacon;
      stretchCoherence[stretches] = coherence;
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
