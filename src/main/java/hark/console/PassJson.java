package hark.console;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A pass as JSON; the many numbers of its tracks stand in rows without names. */
final class PassJson {
  private PassJson() {}

  /**
   * Rows are azimuth and elevation in degrees, range in km, and the shift of a carrier of 1 GHz in
   * Hz, positive when approaching.
   */
  static ObjectNode of(ConsoleModel.PassView pass) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    PageJson.directions(node.putArray("skyline"), pass.skyline());
    ArrayNode tracks = node.putArray("tracks");
    for (ConsoleModel.PassTrack track : pass.tracks()) {
      ObjectNode one = tracks.addObject();
      one.put("object", track.object())
          .put("from", PageJson.time(track.from()))
          .put("stepSeconds", track.stepSeconds());
      ArrayNode rows = one.putArray("rows");
      for (ConsoleModel.Moment moment : track.moments()) {
        rows.addArray()
            .add(rounded(moment.azimuthDeg(), 1000))
            .add(rounded(moment.elevationDeg(), 1000))
            .add(rounded(moment.rangeKm(), 10))
            .add(rounded(moment.shift() * 1e9, 10));
      }
    }
    ArrayNode beacons = node.putArray("beacons");
    for (ConsoleModel.BeaconView beacon : pass.beacons()) {
      ObjectNode one = beacons.addObject();
      one.put("name", beacon.name())
          .put("frequencyHz", beacon.frequencyHz())
          .put("intervalSeconds", beacon.intervalSeconds())
          .put("durationSeconds", beacon.durationSeconds());
      beacon.states().forEach(one.putArray("states")::add);
    }
    pass.receiverHz()
        .ifPresentOrElse(hz -> node.put("receiverHz", hz), () -> node.putNull("receiverHz"));
    return node;
  }

  private static double rounded(double value, double parts) {
    return Math.round(value * parts) / parts;
  }
}
