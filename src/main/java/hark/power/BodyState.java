package hark.power;

import hark.power.PowerModel.BusState;
import java.util.Arrays;

/**
 * Everything that changes while a body is simulated. Plain fields: the kernel reads and writes them
 * a million times. A copy is a checkpoint. Times are seconds since separation; a time that will not
 * come is positive infinity, a time that has not been is NaN.
 */
final class BodyState implements Cloneable {
  static final double NEVER = Double.POSITIVE_INFINITY;

  double seconds;

  // Battery and temperatures.
  double soc;
  double batteryC = PowerPhysics.CELSIUS_AT_SEPARATION;
  double structureC = PowerPhysics.CELSIUS_AT_SEPARATION;

  /** How fast both temperatures moved in the last step, K/s: foretells the middle of the next. */
  double batteryRate;

  double structureRate;

  /** Heat in the cells in the last step, W: foretells the next. */
  double cellWatts;

  /** All strings have opened: the battery can be charged and not discharged. */
  boolean protectionOpen;

  /** State of charge of each string that has opened while others carry on; NaN when connected. */
  double[] restingSoc;

  int stringsResting;

  /** The taper has ended; the charger waits for the voltage to fall. */
  boolean chargeEnded;

  boolean chargeInhibited;
  boolean heating;

  // What changes on board have done so far.
  double arrayFactor = 1;

  /** Bit {@code i} set: face {@code i} gives nothing. */
  long facesLost;

  boolean panelsStuck;
  boolean unfolded;
  double capacityFactor = 1;
  int stringsLost;
  boolean batteryGone;
  boolean chargePathOpen;
  boolean arraysCutOff;
  double thresholdShiftVolts;
  double temperatureShiftKelvin;
  double extraWatts;
  double extraWattsWhenOff;
  boolean holdOffLost;
  int changesDone;

  /** Hangs, boot loops and silenced beacons that nothing has cleared yet, by place in the order. */
  boolean[] standing;

  /** Next toggle of the separation switch, by place in the order. */
  double[] toggleAt;

  boolean hung;
  boolean bootLoop;
  boolean beaconsSilenced;
  double hungWatts;

  // The bus and its timers.
  BusState bus = BusState.OFF;
  boolean bootedBefore;
  boolean voltageRecovered;
  boolean powerCycling;
  double offFrom = Double.NEGATIVE_INFINITY;
  double bootAt = NEVER;
  double bootedAt = Double.NaN;
  double safeSince = Double.NaN;
  int resets;
  double timersFrom;
  double releaseAt = NEVER;
  double releaseUntil = Double.NEGATIVE_INFINITY;
  double commandTimerFrom;
  double watchdogFrom = NEVER;
  double unpoweredFrom = NEVER;
  boolean lowPower;
  double nominalVoltsFrom = NEVER;
  boolean safeByTimer;
  boolean beaconsInEveryState;

  /** Age of cells and arrays, years; moves on once a day. */
  double years;

  double nextDay = PowerPhysics.DAY_SECONDS;

  /** Time below the voltage of damage since the day began, s. */
  double damagedSeconds;

  /** Next burst that pulls the voltage below something; never when no burst would. */
  double sagAt = NEVER;

  /** A beacon whose pace hangs on voltage looks again at this time. */
  double paceAt = NEVER;

  // What the voltage must leave to matter; kept by the bus.
  double floorVolts;
  double ceilingVolts;

  /** All strings open: they close above this voltage if the protection's condition holds. */
  double closesVolts = NEVER;

  // Without a battery that feeds the bus: what array power must leave to matter; kept by the bus.
  double leastWatts;
  double mostWatts;

  /** Index of the next shadow edge. */
  int nextSunEdge;

  // What runs now.
  double[] beaconFrom;

  /** Interval that each running beacon keeps, s. */
  double[] beaconInterval;

  double transmitWatts;

  /** Drawn on top of the mean while the strongest running beacon sends a burst, W. */
  double burstWatts;

  double receiverFrom = Double.NaN;

  /** Everything drawn from the bus in the present state, W. */
  double loadWatts;

  // Energy so far, J.
  /** Array energy that was there to take, behind the charger. */
  double offeredJoule;

  /** Array energy that was wanted, behind the charger. */
  double usedJoule;

  double loadJoule;
  double resistanceLossJoule;
  double coulombicLossJoule;
  double selfDischargeJoule;
  double removedJoule;

  /** Energy in the battery when it was released, J. */
  double storedAtSeparation;

  BodyState(int changes, int beacons, int strings) {
    restingSoc = new double[strings];
    Arrays.fill(restingSoc, Double.NaN);
    beaconInterval = new double[beacons];
    standing = new boolean[changes];
    toggleAt = new double[changes];
    Arrays.fill(toggleAt, NEVER);
    beaconFrom = new double[beacons];
    Arrays.fill(beaconFrom, Double.NaN);
  }

  boolean busOff() {
    return bus == BusState.OFF;
  }

  /** Whether software runs: the bus is up and the computer neither hangs nor loops. */
  boolean computerRuns() {
    return !busOff() && !hung && !bootLoop;
  }

  /** A copy that shares nothing with this. */
  BodyState copy() {
    try {
      BodyState to = (BodyState) clone();
      to.standing = standing.clone();
      to.toggleAt = toggleAt.clone();
      to.restingSoc = restingSoc.clone();
      to.beaconFrom = beaconFrom.clone();
      to.beaconInterval = beaconInterval.clone();
      return to;
    } catch (CloneNotSupportedException e) {
      throw new IllegalStateException(e);
    }
  }
}
