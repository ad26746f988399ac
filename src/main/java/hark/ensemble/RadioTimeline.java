package hark.ensemble;

import java.util.Arrays;

/** What events do to one member's radio over time. Seconds since separation; losses add. */
final class RadioTimeline {
  static final RadioTimeline UNHARMED = new RadioTimeline(new double[0], new RadioChange[0]);

  private final double[] onset;
  private final RadioChange[] change;
  private final double muteFrom;

  RadioTimeline(double[] onset, RadioChange[] change) {
    this.onset = onset.clone();
    this.change = change.clone();
    double mute = Double.POSITIVE_INFINITY;
    for (int k = 0; k < onset.length; k++) {
      if (change[k].mute()) {
        mute = Math.min(mute, onset[k]);
      }
    }
    this.muteFrom = mute;
  }

  /** From when on nothing is radiated, s. */
  double muteFrom() {
    return muteFrom;
  }

  /** True when nothing that a listener could notice has begun by a time. */
  boolean isUnharmedUntil(double seconds) {
    for (int k = 0; k < onset.length; k++) {
      boolean noticeable =
          change[k].mute() || change[k].downlinkLossDb() != 0 || change[k].frequencyShiftHz() != 0;
      if (noticeable && onset[k] <= seconds) {
        return false;
      }
    }
    return true;
  }

  /** When the next loss or shift begins after a time, s; positive infinity when none does. */
  double nextHarmAfter(double seconds) {
    double next = Double.POSITIVE_INFINITY;
    for (int k = 0; k < onset.length; k++) {
      boolean harms = change[k].downlinkLossDb() != 0 || change[k].frequencyShiftHz() != 0;
      next = harms && onset[k] > seconds ? Math.min(next, onset[k]) : next;
    }
    return next;
  }

  double downlinkLossDb(double seconds) {
    double loss = 0;
    for (int k = 0; k < onset.length; k++) {
      if (onset[k] <= seconds) {
        loss += change[k].downlinkLossDb();
      }
    }
    return loss;
  }

  double frequencyShiftHz(double seconds) {
    double shift = 0;
    for (int k = 0; k < onset.length; k++) {
      if (onset[k] <= seconds) {
        shift += change[k].frequencyShiftHz();
      }
    }
    return shift;
  }

  /** Everything together at a time. */
  RadioChange at(double seconds) {
    RadioChange all = RadioChange.NONE;
    for (int k = 0; k < onset.length; k++) {
      if (onset[k] <= seconds) {
        all = all.plus(change[k]);
      }
    }
    return all;
  }

  /** The same without the losses of a stowed antenna after a release that worked. */
  RadioTimeline withoutAntennaLossAfter(double seconds) {
    int count = onset.length;
    double[] onsets = Arrays.copyOf(onset, 2 * count);
    RadioChange[] changes = Arrays.copyOf(change, 2 * count);
    for (int k = 0; k < count; k++) {
      boolean antenna = change[k].uplinkLossDb() > 0;
      onsets[count + k] = antenna ? Math.max(seconds, onset[k]) : Double.POSITIVE_INFINITY;
      changes[count + k] =
          new RadioChange(
              false, -change[k].downlinkLossDb(), -change[k].uplinkLossDb(), 0, false, false);
    }
    return new RadioTimeline(onsets, changes);
  }
}
