package hark.ensemble;

import java.time.Instant;

/** Makes the hearing tables of all nodes of a group for one window and one way of listening. */
final class Tables {
  private Tables() {}

  /** By {@code [node][beacon]}. */
  static HearingTable[][] of(
      DiagnosisInput input, SkyWindow window, Listening listening, HearingNodes nodes) {
    HearingTable[][] tables = new HearingTable[nodes.count()][];
    for (int n = 0; n < nodes.count(); n++) {
      tables[n] = of(input, window, listening, nodes, n);
    }
    return tables;
  }

  /** One node alone, by beacon. */
  static HearingTable[] of(
      DiagnosisInput input, SkyWindow window, Listening listening, HearingNodes nodes, int node) {
    Instant middle = input.instant(0.5 * (window.from() + window.to()));
    double sd = input.candidates().get(nodes.object()[node]).sdSeconds(middle, input.now());
    HearingTable[] tables = new HearingTable[input.beacons().size()];
    for (int b = 0; b < tables.length; b++) {
      BeaconRadio beacon = input.beacons().get(b);
      HearingTable.Node hearing =
          new HearingTable.Node(
              nodes.object()[node],
              nodes.alongTrackZ()[node] * sd,
              beacon.radiated().quantile(nodes.powerQuantile()[node])
                  - medianBelowMeanDb(beacon.patternSdDb()),
              beacon.frequencyErrorHz().quantile(nodes.frequencyQuantile()[node]));
      tables[b] =
          HearingTable.of(
              window, input.stations().get(window.station()), beacon, listening, hearing);
    }
    return tables;
  }

  /** A level that is normal in dB has its median below its mean power by σ²·ln 10/20. */
  static double medianBelowMeanDb(double sdDb) {
    return sdDb * sdDb * Math.log(10) / 20;
  }
}
