package hark.ensemble;

import hark.link.Doppler;
import hark.link.LinkBudget;
import hark.link.Uplink;
import hark.power.BodyHistory;
import hark.power.PowerModel;
import hark.station.Station;
import hark.station.Station.Polarisation;
import hark.station.StationFault;
import java.util.List;

/**
 * The way up: is the receiver powered at the time of sending, does the link close, is the command
 * accepted? A command is sent around the culmination of the object that is followed, or when the
 * record says.
 */
public final class CommandLink {
  /**
   * A receiver copes with so much frequency error before it is as good as deaf, Hz. Common practice
   * for UHF.
   */
  private static final double TOLERATED_HZ = 4000;

  /** A command on the air takes so long, s. Common practice for 1200 to 9600 bit/s. */
  private static final double COMMAND_SECONDS = 0.5;

  /**
   * A station that hears nothing can still send so often: the fault lies behind the relay. Judged.
   */
  private static final double DEAF_CAN_SEND = 0.5;

  /**
   * After a restart that loses the counter, a crew finds the one that is accepted so often. Judged.
   */
  private static final double COUNTER_FOUND = 0.5;

  /** A second try frees a stuck antenna or panel about so often. Judged. */
  public static final double RELEASE_WORKS = 0.3;

  /** Level where the path is below the skyline or the carrier out of the receiver's reach, dBm. */
  private static final double OUT_OF_REACH = Double.NEGATIVE_INFINITY;

  private final DiagnosisInput input;
  private final SkyWindow window;
  private final double seconds;
  private final int followed;
  private final double powerWatts;
  private final List<StationMode> modes;
  private final boolean anyCounter;

  /**
   * Around the culmination, with the station's own power.
   *
   * @param anyCounter sent with one counter value after the other, so that one of them fits
   */
  CommandLink(DiagnosisInput input, SkyWindow window, boolean anyCounter) {
    this(
        input,
        window,
        Diagnosis.sendingTime(input, window),
        Diagnosis.heaviest(input, window),
        station(input, window).transmit().orElseThrow().powerWatts(),
        anyCounter);
  }

  /** A command sent at a time with a power, by a station that may send. */
  CommandLink(
      DiagnosisInput input,
      SkyWindow window,
      double seconds,
      int followed,
      double powerWatts,
      boolean anyCounter) {
    this.anyCounter = anyCounter;
    this.input = input;
    this.window = window;
    this.seconds = seconds;
    this.followed = followed;
    this.powerWatts = powerWatts;
    this.modes = StationModes.of(input, window.station());
  }

  /** Index of the station that sends. */
  int station() {
    return window.station();
  }

  /** Modes of its health, the one that works as believed first. */
  List<StationMode> modes() {
    return modes;
  }

  private static Station station(DiagnosisInput input, SkyWindow window) {
    return input.stations().get(window.station());
  }

  /** When it is sent, s since separation. */
  public double seconds() {
    return seconds;
  }

  /** Chance that it is received and accepted, for one mode of the sending station's health. */
  double received(
      Member member, Body body, HearingNodes nodes, int node, StationMode mode, int repeats) {
    return receives(member, body)
        ? new Receiver(member, body).accepts(levelDbm(nodes, node, mode), mode, repeats)
        : 0;
  }

  private boolean receives(Member member, Body body) {
    RadioChange radio = member.radio().at(seconds);
    boolean refuses = radio.refusesCommands() && !anyCounter;
    return isOn(body.history().receiverOn(), seconds) && !radio.deaf() && !refuses;
  }

  /** A body's receiver at the time of sending, looked up once for all nodes and modes. */
  private final class Receiver {
    private final double lossDb;
    private final double duty;
    private final double listens;
    private final double inStep;

    Receiver(Member member, Body body) {
      lossDb = member.radio().at(seconds).uplinkLossDb();
      duty = body.model().receiver().duty();
      listens = listens(body);
      inStep = counterInStep(body);
    }

    double accepts(double levelDbm, StationMode mode, int repeats) {
      double once = linkCloses(levelDbm - lossDb, mode) * duty * listens;
      return inStep * (1 - Math.pow(1 - once, repeats));
    }
  }

  /** A spacecraft that sends cannot receive: share of the time in which it would not be sending. */
  private double listens(Body body) {
    if (!input.receiver().halfDuplex()) {
      return 1;
    }
    double sending = 0;
    for (BodyHistory.BeaconSegment segment :
        Ear.Segments.overlapping(body.history().segments(), seconds, seconds)) {
      double burst = body.model().beacons().get(segment.beacon()).durationSeconds();
      sending += (burst + COMMAND_SECONDS) / segment.interval();
    }
    return Math.max(0, 1 - sending);
  }

  private double counterInStep(Body body) {
    boolean counts = input.receiver().authentication() == ReceiverRadio.Authentication.COUNTER;
    if (anyCounter || !counts || !input.receiver().counterLostOnReset()) {
      return 1;
    }
    long boots =
        body.history().transitions().stream()
            .filter(t -> t.seconds() <= seconds && t.to() == PowerModel.BusState.BOOT)
            .count();
    return boots > 1 ? COUNTER_FOUND : 1;
  }

  /** Whether a time lies in one of these stretches (from, to), rising. */
  static boolean isOn(List<double[]> stretches, double seconds) {
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

  private double linkCloses(double levelDbm, StationMode mode) {
    if (levelDbm == OUT_OF_REACH) {
      return 0;
    }
    double closes =
        Uplink.fadedSuccessProbability(
            levelDbm, input.receiver().sensitivityDbm(), input.beacons().get(0).patternSdDb());
    return closes
        * (mode.fault().filter(f -> f == StationFault.DEAF).isPresent() ? DEAF_CAN_SEND : 1);
  }

  /**
   * Level at an unharmed receiver by {@code [mode][node]}, dBm: the costly part, for many bodies.
   */
  double[][] levelsDbm(HearingNodes nodes) {
    double[][] levels = new double[modes.size()][nodes.count()];
    for (int m = 0; m < levels.length; m++) {
      for (int n = 0; n < nodes.count(); n++) {
        levels[m][n] = levelDbm(nodes, n, modes.get(m));
      }
    }
    return levels;
  }

  /**
   * Chance that it is received and accepted by {@code [mode][node]}; null when the body cannot
   * receive at all.
   *
   * @param levelsDbm as {@link #levelsDbm} gave them for the member's nodes
   */
  double[][] received(Member member, Body body, double[][] levelsDbm, int repeats) {
    if (!receives(member, body)) {
      return null;
    }
    Receiver receiver = new Receiver(member, body);
    double[][] chance = new double[levelsDbm.length][levelsDbm[0].length];
    for (int m = 0; m < chance.length; m++) {
      for (int n = 0; n < chance[m].length; n++) {
        chance[m][n] = receiver.accepts(levelsDbm[m][n], modes.get(m), repeats);
      }
    }
    return chance;
  }

  private double levelDbm(HearingNodes nodes, int node, StationMode mode) {
    Station station = station(input, window);
    ReceiverRadio receiver = input.receiver();
    int object = nodes.object()[node];
    double sd = input.candidates().get(object).sdSeconds(input.instant(seconds), input.now());
    double clock =
        nodes.clockZ()[window.station()][node] * station.doubts().clockSdSeconds()
            + mode.lateSeconds();
    double turned =
        nodes.azimuthZ()[window.station()][node] * station.doubts().azimuthSdDeg()
            + mode.turnedDeg();
    PassGeometry.Point there = new PassGeometry.Point();
    PassGeometry.Point aim = new PassGeometry.Point();
    window.paths().get(object).at(seconds - nodes.alongTrackZ()[node] * sd, there);
    int aimed = mode.otherSet() ? StationModes.mistaken(input, followed) : followed;
    window.paths().get(aimed).aimAt(seconds - clock, aim);
    aim.turn(turned);
    double mistuned =
        Doppler.shiftHz(receiver.frequencyHz(), there.rangeRate)
            - mode.dopplerFactor() * Doppler.shiftHz(receiver.frequencyHz(), aim.rangeRate)
            - mode.tunedLowHz();
    if (there.aboveMaskDeg < 0 || Math.abs(mistuned) > TOLERATED_HZ) {
      return OUT_OF_REACH;
    }
    double losses =
        LinkBudget.atmosphereLossDb(there.elevationDeg())
            + polarisationLossDb(station, mode)
            + LinkBudget.pointingLossDb(there.angleDeg(aim), station.receive().beamwidthDeg());
    return Uplink.receivedDbm(
        Uplink.eirpDbm(powerWatts, station.transmit().orElseThrow().gainDbi()),
        receiver.frequencyHz(),
        there.rangeMeters,
        losses,
        receiver.antennaGainDbi());
  }

  private double polarisationLossDb(Station station, StationMode mode) {
    Polarisation hand = station.receive().polarisation();
    if (mode.otherHand()) {
      hand = hand == Polarisation.RHCP ? Polarisation.LHCP : Polarisation.RHCP;
    }
    return LinkBudget.polarisationLossDb(hand, input.beacons().get(0).polarisation());
  }
}
