package hark.ensemble;

import hark.link.Doppler;
import hark.link.LinkBudget;
import hark.link.Uplink;
import hark.station.Station;
import java.util.List;

/**
 * The way up: is the receiver powered at the time of sending, does the link close, is the command
 * accepted? A command is sent around the culmination of the object that is followed.
 */
public final class CommandLink {
  /**
   * A receiver copes with so much frequency error before it is as good as deaf, Hz. Common practice
   * for UHF.
   */
  private static final double TOLERATED_HZ = 4000;

  private final Particles.Source source;
  private final SkyWindow window;
  private final double seconds;
  private final int followed;

  CommandLink(Particles.Source source, SkyWindow window) {
    this.source = source;
    this.window = window;
    this.followed = Diagnosis.heaviest(source.input(), window);
    this.seconds = Diagnosis.sendingTime(source.input(), window);
  }

  /** When it is sent, s since separation. */
  public double seconds() {
    return seconds;
  }

  double received(Member member, Body body, HearingNodes nodes, int node, int repeats) {
    RadioChange radio = member.radio().at(seconds);
    if (radio.deaf() || radio.refusesCommands() || !receiverOn(body)) {
      return 0;
    }
    double once = successOnce(radio, nodes, node) * body.model().receiver().duty();
    return 1 - Math.pow(1 - once, repeats);
  }

  private boolean receiverOn(Body body) {
    List<double[]> stretches = body.history().receiverOn();
    int low = 0;
    int high = stretches.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (stretches.get(middle)[1] > seconds) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low < stretches.size() && stretches.get(low)[0] <= seconds;
  }

  private double successOnce(RadioChange radio, HearingNodes nodes, int node) {
    DiagnosisInput input = source.input();
    Station station = input.stations().get(window.station());
    Station.Transmit transmit = station.transmit().orElseThrow();
    ReceiverRadio receiver = input.receiver();
    double late =
        nodes.alongTrackZ()[node]
            * input
                .candidates()
                .get(nodes.object()[node])
                .sdSeconds(input.instant(seconds), input.now());
    PassGeometry.Point there = new PassGeometry.Point();
    PassGeometry.Point aim = new PassGeometry.Point();
    window.paths().get(nodes.object()[node]).at(seconds - late, there);
    window.paths().get(followed).at(seconds, aim);
    double mistuned =
        Math.abs(
            Doppler.shiftHz(receiver.frequencyHz(), there.rangeRate)
                - Doppler.shiftHz(receiver.frequencyHz(), aim.rangeRate));
    if (there.aboveMaskDeg < 0 || mistuned > TOLERATED_HZ) {
      return 0;
    }
    Station.Polarisation onBoard = input.beacons().get(0).polarisation();
    double losses =
        LinkBudget.atmosphereLossDb(there.elevationDeg())
            + LinkBudget.polarisationLossDb(station.receive().polarisation(), onBoard)
            + LinkBudget.pointingLossDb(there.angleDeg(aim), station.receive().beamwidthDeg())
            + radio.uplinkLossDb();
    double level =
        Uplink.receivedDbm(
            Uplink.eirpDbm(transmit.powerWatts(), transmit.gainDbi()),
            receiver.frequencyHz(),
            there.rangeMeters,
            losses,
            receiver.antennaGainDbi());
    return Uplink.fadedSuccessProbability(
        level, receiver.sensitivityDbm(), input.beacons().get(0).patternSdDb());
  }
}
