package hark.power;

import hark.power.PowerModel.ClosesOn;

/**
 * The protection in each string of cells. A string that opens rests with its charge while the
 * others carry on; when the last opens they count as one battery again, which can be charged and
 * not discharged, and closes as one.
 */
final class CellProtection {
  private final PowerModel.Protection protection;
  private final int series;
  private final int parallel;

  CellProtection(PowerModel model) {
    protection = model.battery().protection();
    series = model.battery().series();
    parallel = model.battery().parallel();
  }

  /** Volts at the pack's terminals below which the next string opens, V. */
  double opensBelowVolts(BodyState s) {
    int string = 0;
    while (string < parallel && !Double.isNaN(s.restingSoc[string])) {
      string++;
    }
    double place = parallel == 1 ? 0.5 : (double) string / (parallel - 1);
    double volts = protection.openVoltsPerCell() + protection.toleranceVolts() * (0.5 - place);
    return volts * series;
  }

  /** Volts at the pack's terminals below which what is all open surely stays open, V. */
  double closesAboveVolts() {
    return protection.closeVoltsPerCell() * series;
  }

  /** The weakest connected string opens. */
  void open(BodyState s, Circuit circuit) {
    int string = 0;
    while (!Double.isNaN(s.restingSoc[string])) {
      string++;
    }
    s.restingSoc[string] = s.soc;
    s.stringsResting++;
    if (s.stringsResting + s.stringsLost >= parallel) {
      double before = circuit.storedJoule(s);
      gather(s, string);
      s.protectionOpen = true;
      // a protection that nothing closes again is an open battery
      s.batteryGone |= protection.closesOn() == ClosesOn.NEVER;
      circuit.renew(s);
      s.removedJoule += before - circuit.storedJoule(s);
    }
    circuit.renew(s);
  }

  /** All strings rest: they are one battery again at their mean charge. */
  private void gather(BodyState s, int last) {
    double sum = 0;
    for (int i = 0; i <= last; i++) {
      sum += s.restingSoc[i];
      s.restingSoc[i] = Double.NaN;
    }
    s.soc = sum / (last + 1);
    s.stringsResting = 0;
  }

  /** Whether what has opened closes again under what the last solution shows. */
  boolean closes(BodyState s, Circuit circuit) {
    if (s.protectionOpen) {
      return condition(s, circuit) && circuit.packVolts / series >= protection.closeVoltsPerCell();
    }
    return s.stringsResting > 0 && condition(s, circuit) && highest(s, circuit) >= 0;
  }

  private boolean condition(BodyState s, Circuit circuit) {
    return switch (protection.closesOn()) {
      case CHARGE -> circuit.amps > 0;
      case LOAD_REMOVAL -> s.busOff() && !s.batteryGone;
      case NEVER -> false;
    };
  }

  /** The fullest resting string that may close; −1 when none may. */
  private int highest(BodyState s, Circuit circuit) {
    boolean charges = protection.closesOn() == ClosesOn.CHARGE;
    int best = -1;
    for (int i = 0; i < parallel; i++) {
      if (!Double.isNaN(s.restingSoc[i])) {
        double volts = circuit.restingCellVolts(s.restingSoc[i]);
        double seen = charges ? Math.max(volts, circuit.packVolts / series) : volts;
        boolean fuller = best < 0 || s.restingSoc[i] > s.restingSoc[best];
        best = seen >= protection.closeVoltsPerCell() && fuller ? i : best;
      }
    }
    return best;
  }

  /** Closes; what sharing the charge costs leaves the books as removed. */
  void close(BodyState s, Circuit circuit) {
    if (s.protectionOpen) {
      s.protectionOpen = false;
      return;
    }
    double before = circuit.storedJoule(s);
    int string = highest(s, circuit);
    int connected = parallel - s.stringsLost - s.stringsResting;
    s.soc = (s.soc * connected + s.restingSoc[string]) / (connected + 1);
    s.restingSoc[string] = Double.NaN;
    s.stringsResting--;
    circuit.renew(s);
    s.removedJoule += before - circuit.storedJoule(s);
  }
}
