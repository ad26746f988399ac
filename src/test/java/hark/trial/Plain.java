package hark.trial;

import hark.power.Bodies;
import hark.power.Illumination;
import hark.power.PowerModel.BusState;
import hark.power.SimulationRequest.TimedChange;
import java.util.List;
import java.util.stream.DoubleStream;

/** Runs of plain bodies for tests. */
final class Plain {
  private Plain() {}

  static PlainRequest request(double seconds, double step, TimedChange... changes) {
    return new PlainRequest(
        seconds, step, Math.max(step, 60 - 60 % step), List.of(changes), List.of());
  }

  static PlainHistory run(Bodies body, Illumination light, double days, TimedChange... changes) {
    return PlainBody.run(body.model(), light, request(days * Bodies.DAY, 1, changes));
  }

  static double lastBurst(PlainHistory history) {
    return bursts(history).max().orElse(0);
  }

  static DoubleStream bursts(PlainHistory history) {
    return history.bursts().stream().flatMapToDouble(DoubleStream::of);
  }

  static boolean silentBetween(PlainHistory history, double from, double to) {
    return bursts(history).noneMatch(t -> t > from && t < to);
  }

  static double firstOff(PlainHistory history) {
    return history.transitions().stream()
        .filter(t -> t.to() == BusState.OFF)
        .mapToDouble(PlainHistory.Transition::seconds)
        .findFirst()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
