package hark.power;

import hark.power.PowerModel.BusState;
import java.util.Arrays;

/**
 * Everything that changes while a body is simulated. Plain fields: the kernel reads and writes them
 * a million times. A copy is a checkpoint. Times are seconds since separation; a time that will not
 * come is positive infinity, a time that has not been is NaN.
 */
final class BodyState {
  static final double NEVER = Double.POSITIVE_INFINITY;

  double seconds;

  // Battery and temperatures.
  double soc;
  double batteryC = PowerPhysics.CELSIUS_AT_SEPARATION;
  double structureC = PowerPhysics.CELSIUS_AT_SEPARATION;
  boolean protectionOpen;
  boolean chargeInhibited;
  boolean heating;

  // What changes on board have done so far.
  double arrayFactor = 1;
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
  final boolean[] standing;

  /** Next toggle of the separation switch, by place in the order. */
  final double[] toggleAt;

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

  /** Index of the next shadow edge. */
  int nextSunEdge;

  // What runs now.
  final double[] beaconFrom;
  double transmitWatts;
  double receiverFrom = Double.NaN;

  /** Everything drawn from the bus in the present state, W. */
  double loadWatts;

  // Energy so far, J.
  double arrayJoule;
  double loadJoule;
  double chargerLossJoule;
  double resistanceLossJoule;
  double removedJoule;

  BodyState(int changes, int beacons) {
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
    BodyState to = new BodyState(standing.length, beaconFrom.length);
    System.arraycopy(standing, 0, to.standing, 0, standing.length);
    System.arraycopy(toggleAt, 0, to.toggleAt, 0, toggleAt.length);
    System.arraycopy(beaconFrom, 0, to.beaconFrom, 0, beaconFrom.length);
    copyBattery(to);
    copyChanges(to);
    copyBus(to);
    to.seconds = seconds;
    to.nextSunEdge = nextSunEdge;
    to.transmitWatts = transmitWatts;
    to.receiverFrom = receiverFrom;
    to.loadWatts = loadWatts;
    return to;
  }

  private void copyBattery(BodyState to) {
    to.soc = soc;
    to.batteryC = batteryC;
    to.structureC = structureC;
    to.protectionOpen = protectionOpen;
    to.chargeInhibited = chargeInhibited;
    to.heating = heating;
    to.arrayJoule = arrayJoule;
    to.loadJoule = loadJoule;
    to.chargerLossJoule = chargerLossJoule;
    to.resistanceLossJoule = resistanceLossJoule;
    to.removedJoule = removedJoule;
  }

  private void copyChanges(BodyState to) {
    to.arrayFactor = arrayFactor;
    to.capacityFactor = capacityFactor;
    to.stringsLost = stringsLost;
    to.batteryGone = batteryGone;
    to.chargePathOpen = chargePathOpen;
    to.arraysCutOff = arraysCutOff;
    to.thresholdShiftVolts = thresholdShiftVolts;
    to.temperatureShiftKelvin = temperatureShiftKelvin;
    to.extraWatts = extraWatts;
    to.extraWattsWhenOff = extraWattsWhenOff;
    to.holdOffLost = holdOffLost;
    to.changesDone = changesDone;
    to.hung = hung;
    to.bootLoop = bootLoop;
    to.beaconsSilenced = beaconsSilenced;
    to.hungWatts = hungWatts;
  }

  private void copyBus(BodyState to) {
    to.bus = bus;
    to.bootedBefore = bootedBefore;
    to.voltageRecovered = voltageRecovered;
    to.powerCycling = powerCycling;
    to.offFrom = offFrom;
    to.bootAt = bootAt;
    to.bootedAt = bootedAt;
    to.safeSince = safeSince;
    to.resets = resets;
    to.timersFrom = timersFrom;
    to.releaseAt = releaseAt;
    to.releaseUntil = releaseUntil;
    to.commandTimerFrom = commandTimerFrom;
    to.watchdogFrom = watchdogFrom;
    to.unpoweredFrom = unpoweredFrom;
    to.lowPower = lowPower;
    to.nominalVoltsFrom = nominalVoltsFrom;
    to.safeByTimer = safeByTimer;
    to.beaconsInEveryState = beaconsInEveryState;
  }
}
