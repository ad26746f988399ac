package hark.ensemble;

import hark.station.Station;
import hark.station.StationDoubts;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Makes the hearing tables of all nodes of a group for one window and one way of listening. */
final class Tables {
  private Tables() {}

  /** By {@code [mode][beacon]}, each over all nodes; null for a deaf mode. */
  static HearingTable[][] of(
      DiagnosisInput input,
      SkyWindow window,
      Listening listening,
      HearingNodes nodes,
      List<StationMode> modes) {
    Station station = input.stations().get(window.station());
    int[] all = IntStream.range(0, nodes.count()).toArray();
    return of(input, station, window, listening, nodes, all, modes);
  }

  /** The same at a station of somebody else that works as believed, by beacon. */
  static HearingTable[] elsewhere(
      DiagnosisInput input,
      Station station,
      SkyWindow window,
      Listening listening,
      HearingNodes nodes) {
    List<StationMode> works = List.of(StationMode.asBelieved(1));
    int[] all = IntStream.range(0, nodes.count()).toArray();
    return of(input, station, window, listening, nodes, all, works)[0];
  }

  /** One node alone at a station that works as believed, by beacon. */
  static HearingTable[] of(
      DiagnosisInput input, SkyWindow window, Listening listening, HearingNodes nodes, int node) {
    List<StationMode> works = List.of(StationMode.asBelieved(1));
    Station station = input.stations().get(window.station());
    return of(input, station, window, listening, nodes, new int[] {node}, works)[0];
  }

  private static HearingTable[][] of(
      DiagnosisInput input,
      Station station,
      SkyWindow window,
      Listening listening,
      HearingNodes nodes,
      int[] chosen,
      List<StationMode> modes) {
    int mistaken = StationModes.mistaken(input, listening.tracked());
    HearingTable[][] tables = new HearingTable[modes.size()][];
    for (int m = 0; m < tables.length; m++) {
      tables[m] = modes.get(m).isDeaf() ? null : new HearingTable[input.beacons().size()];
    }
    for (int b = 0; b < input.beacons().size(); b++) {
      BeaconRadio beacon = input.beacons().get(b);
      List<HearingTables.Node> met =
          Arrays.stream(chosen).mapToObj(n -> node(input, window, beacon, nodes, n)).toList();
      HearingTable[] byMode =
          new HearingTables(window, station, beacon, listening, modes, mistaken).of(met);
      for (int m = 0; m < tables.length; m++) {
        if (tables[m] != null) {
          tables[m][b] = byMode[m];
        }
      }
    }
    return tables;
  }

  private static HearingTables.Node node(
      DiagnosisInput input, SkyWindow window, BeaconRadio beacon, HearingNodes nodes, int n) {
    Instant middle = input.instant(0.5 * (window.from() + window.to()));
    double sd = input.candidates().get(nodes.object()[n]).sdSeconds(middle, input.now());
    int station = window.station();
    boolean ours = station >= 0;
    StationDoubts doubts = ours ? input.stations().get(station).doubts() : null;
    return new HearingTables.Node(
        nodes.object()[n],
        nodes.alongTrackZ()[n] * sd,
        beacon.radiated().quantile(nodes.powerQuantile()[n])
            - medianBelowMeanDb(beacon.patternSdDb()),
        beacon.frequencyErrorHz().quantile(nodes.frequencyQuantile()[n]),
        ours ? nodes.clockZ()[station][n] * doubts.clockSdSeconds() : 0,
        ours ? nodes.azimuthZ()[station][n] * doubts.azimuthSdDeg() : 0);
  }

  /** A level that is normal in dB has its median below its mean power by σ²·ln 10/20. */
  static double medianBelowMeanDb(double sdDb) {
    return sdDb * sdDb * Math.log(10) / 20;
  }
}
