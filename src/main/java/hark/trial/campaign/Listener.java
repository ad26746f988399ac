package hark.trial.campaign;

import hark.ensemble.BeaconRadio;
import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.link.Way;
import hark.power.PowerModel;
import hark.station.Station;
import hark.station.Station.Polarisation;
import hark.trial.PlainBeacon;
import hark.trial.PlainEars;
import hark.trial.PlainFlaws;
import hark.trial.PlainLink;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** What a sitting notices of a hidden truth: the numbers of a mission handed to the plain link. */
public final class Listener {
  private final DiagnosisInput input;
  private final int likeliest;

  /** For the stations and beacons of a mission. */
  public Listener(DiagnosisInput input) {
    this.input = input;
    likeliest = input.likeliestCandidate();
  }

  /**
   * How a station listens.
   *
   * @param halfWidthHz of the band listened to, Hz
   * @param offsetSeconds pointed and tuned as if the object came so much later
   * @param object index of the candidate that is followed
   * @param extraGainDb a larger antenna than the station's own, dB
   */
  public record Manner(
      Way way, double halfWidthHz, double offsetSeconds, int object, double extraGainDb) {}

  /** As a station listens when nothing else is said. */
  public Manner usual(int station) {
    Station here = input.stations().get(station);
    Way way = Diagnosis.usualWay(input.beacons().get(0), here);
    return new Manner(way, here.receive().tuningHz(), 0, likeliest, 0);
  }

  /** The bursts that are noticed in a window by a sitting that does not fail. */
  public List<PlainLink.Noticed> noticed(
      Geometry.Window window, Truth truth, Sent sent, Manner manner, SplittableRandom random) {
    Truth.StationTruth health = truth.stations().get(window.station());
    PlainLink.Window stretch = stretch(window, truth, manner.object());
    PlainEars ears = ears(input.stations().get(window.station()), manner, health.otherHand());
    PlainFlaws flaws = health.flaws().later(manner.offsetSeconds());
    double tumble = truth.model().attitude().rateDegPerSecond();
    List<PlainLink.Noticed> noticed = new ArrayList<>();
    for (int b = 0; b < input.beacons().size(); b++) {
      PlainLink link = new PlainLink(beacon(b, truth), ears, flaws);
      noticed.addAll(link.listen(sent.bursts().get(b), sent.harms(), stretch, tumble, random));
    }
    return noticed;
  }

  /**
   * What the spacecraft does.
   *
   * @param bursts beginnings, rising, for each beacon, s since separation
   * @param harms what is wrong with its radio
   */
  public record Sent(List<double[]> bursts, List<PlainLink.Harm> harms) {}

  /** A window with the path of what it really is and of what the station really follows. */
  public PlainLink.Window stretch(Geometry.Window window, Truth truth, int object) {
    Truth.StationTruth health = truth.stations().get(window.station());
    double late = truth.alongTrackZ() * window.sdSeconds()[truth.object()];
    return new PlainLink.Window(
        input.seconds(window.from()),
        input.seconds(window.to()),
        window.paths().get(truth.object()),
        late,
        window.paths().get(health.otherSet() ? mistaken(object) : object));
  }

  /** The object whose set is loaded by mistake: the likeliest of the others. */
  private int mistaken(int followed) {
    int best = followed;
    for (int k = 0; k < input.candidates().size(); k++) {
      boolean other = k != followed && StationHealth.catalogued(input.candidates().get(k));
      boolean likelier =
          best == followed
              || input.candidates().get(k).prior() > input.candidates().get(best).prior();
      best = other && likelier ? k : best;
    }
    return best;
  }

  private PlainBeacon beacon(int b, Truth truth) {
    BeaconRadio radio = input.beacons().get(b);
    PowerModel.Beacon sent = truth.model().beacons().get(b);
    return new PlainBeacon(
        radio.frequencyHz(),
        truth.radiatedDbm()[b],
        truth.carrierErrorHz()[b],
        radio.polarisation(),
        radio.bandwidthHz(),
        sent.durationSeconds(),
        radio.requiredSnrDb(),
        radio.patternSdDb());
  }

  private static PlainEars ears(Station station, Manner manner, boolean otherHand) {
    Station.Receive receive = station.receive();
    return new PlainEars(
        receive.gainDbi() + manner.extraGainDb(),
        receive.systemNoiseKelvin(),
        receive.noiseByAzimuthDeg(),
        receive.beamwidthDeg(),
        otherHand ? other(receive.polarisation()) : receive.polarisation(),
        manner.halfWidthHz(),
        PlainEars.Skill.valueOf(manner.way().name()));
  }

  /** The hand that an antenna has by mistake. */
  public static Polarisation other(Polarisation hand) {
    return hand == Polarisation.RHCP ? Polarisation.LHCP : Polarisation.RHCP;
  }
}
