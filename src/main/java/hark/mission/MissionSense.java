package hark.mission;

import hark.mission.SpacecraftReader.Spacecraft;
import hark.power.PowerModel.Battery;
import hark.power.PowerModel.Thresholds;
import hark.station.Station;
import hark.station.Station.Licence;
import java.time.Instant;
import java.util.List;

/** Whether parts of a mission file, each fine by itself, make sense together. */
final class MissionSense {
  private static final double HZ_PER_MHZ = 1e6;

  /** Charging above the table's full voltage by more than this is warned about. */
  private static final double OVERCHARGE = 1.005;

  private MissionSense() {}

  static void check(Section top, Spacecraft craft, List<Station> stations, Reading reading) {
    YamlTree spacecraft = top.at("spacecraft");
    checkThresholds(spacecraft, craft, reading);
    List<YamlTree> nodes = top.at("stations").items();
    for (int i = 0; i < stations.size() && i < nodes.size(); i++) {
      checkLicence(nodes.get(i), stations.get(i), craft, reading);
    }
  }

  private static void checkThresholds(YamlTree node, Spacecraft craft, Reading reading) {
    Battery battery = craft.model().battery();
    Thresholds volts = craft.model().bus().thresholds();
    List<double[]> curve = battery.openCircuit();
    double empty = battery.series() * curve.get(0)[1];
    double full = battery.series() * curve.get(curve.size() - 1)[1];
    double open = battery.series() * battery.protection().openVoltsPerCell();
    YamlTree cutoff = deep(node, "bus", "thresholds_V", "cutoff");
    if (volts.cutoffVolts() < empty) {
      reading.problems.add(
          cutoff,
          "found "
              + Span.print(volts.cutoffVolts())
              + ", expected at least "
              + Span.print(empty)
              + ", the voltage of "
              + battery.series()
              + " empty cells in series",
          "check battery.series and whether the threshold is per cell");
    } else if (volts.cutoffVolts() < open) {
      reading.warn(
          cutoff,
          "the cells' protection opens at " + Span.print(open) + " V, before the bus cuts off",
          "raise cutoff, or expect the protection to act first");
    }
    requireReachable(
        deep(node, "bus", "thresholds_V", "recovery"), volts.recoveryVolts(), full, reading);
    requireReachable(
        deep(node, "bus", "thresholds_V", "nominal_above"),
        volts.nominalAboveVolts(),
        full,
        reading);
    checkCharge(
        deep(node, "solar", "charging", "charge_V"), craft, new double[] {empty, full}, reading);
  }

  private static void requireReachable(YamlTree at, double volts, double full, Reading reading) {
    if (volts >= full) {
      reading.problems.add(
          at,
          "found "
              + Span.print(volts)
              + ", which a full battery ("
              + Span.print(full)
              + " V) never reaches",
          "check battery.series and the threshold");
    }
  }

  private static void checkCharge(YamlTree at, Spacecraft craft, double[] range, Reading reading) {
    double charge = craft.model().charging().chargeVolts();
    double nominal = craft.model().bus().thresholds().nominalAboveVolts();
    if (nominal >= range[1]) {
      return; // told already
    }
    if (charge <= nominal || charge <= range[0]) {
      reading.problems.add(
          at,
          "found "
              + Span.print(charge)
              + ", expected more than nominal_above "
              + Span.print(nominal)
              + ", or the bus never becomes nominal",
          "charge_V is for the whole string of cells in series");
    } else if (charge > range[1] * OVERCHARGE) {
      reading.warn(
          at,
          "charges to " + Span.print(charge) + " V; full cells have " + Span.print(range[1]) + " V",
          "check charge_V and battery.series");
    }
  }

  private static void checkLicence(
      YamlTree node, Station station, Spacecraft craft, Reading reading) {
    if (station.transmit().isEmpty()) {
      return;
    }
    Licence licence = station.transmit().get().licence();
    double uplinkMhz = craft.receiver().frequencyHz() / HZ_PER_MHZ;
    boolean covered =
        licence.bandsMhz().stream().anyMatch(b -> b[0] <= uplinkMhz && uplinkMhz <= b[1]);
    if (!covered) {
      reading.warn(
          deep(node, "transmit", "licence", "bands_MHz"),
          "no licensed band of "
              + station.name()
              + " covers the uplink "
              + Span.print(uplinkMhz)
              + " MHz",
          "commands from there are not offered; ask the licence holder");
    }
    Instant from = craft.now().orElse(craft.separation());
    if (licence.until().filter(until -> !until.isAfter(from)).isPresent()) {
      reading.warn(
          deep(node, "transmit", "licence", "until"),
          "the licence of " + station.name() + " ended on " + licence.until().get(),
          "commands from there are not offered; ask the licence holder");
    }
  }

  /** The node at a path of keys; of kind NOTHING when it is not written. */
  static YamlTree deep(YamlTree node, String... keys) {
    YamlTree at = node;
    for (String key : keys) {
      at = at.find(key).orElse(at.absent(key));
    }
    return at;
  }
}
