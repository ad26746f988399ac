package hark.trial;

import hark.station.Station.Polarisation;
import java.util.SplittableRandom;

/**
 * Whether a command that a station sends is received on board, try by try: every fade and every
 * threshold is drawn. It follows the words of the link's description and shares no code with {@code
 * hark.link}.
 */
public final class PlainUplink {
  /** A receiver copes with so much frequency error, Hz. Common practice for UHF. */
  private static final double TOLERATED_HZ = 4000;

  /** Spread of a receiver's threshold, dB. Common practice. */
  private static final double THRESHOLD_SD_DB = 1.5;

  private final Receiver receiver;
  private final Sender sender;
  private final PlainFlaws flaws;

  /**
   * The receiver on board.
   *
   * @param sensitivityDbm received half of the time there
   * @param patternSdDb spread of the antenna's pattern over directions, dB
   */
  public record Receiver(
      double frequencyHz,
      double sensitivityDbm,
      double gainDbi,
      Polarisation polarisation,
      double patternSdDb) {}

  /** The sending chain on the ground. */
  public record Sender(
      double watts, double gainDbi, double beamwidthDeg, Polarisation polarisation) {}

  /** A way up. */
  public PlainUplink(Receiver receiver, Sender sender, PlainFlaws flaws) {
    this.receiver = receiver;
    this.sender = sender;
    this.flaws = flaws;
  }

  /**
   * Whether one try is received by a receiver that has power and listens.
   *
   * @param lossDb weaker reception on board than designed, dB
   */
  public boolean arrives(
      PlainLink.Window window, double seconds, double lossDb, SplittableRandom random) {
    double fade = receiver.patternSdDb() * random.nextGaussian();
    double threshold = receiver.sensitivityDbm() + THRESHOLD_SD_DB * random.nextGaussian();
    PlainPath.Place there = window.real().at(seconds - window.lateSeconds());
    double late = seconds - flaws.lateSeconds();
    double followed = window.followed().at(late).rangeRate();
    double apart = flaws.dopplerFactor() * followed - there.rangeRate();
    double off =
        receiver.frequencyHz() * apart / Losses.LIGHT_METERS_PER_SECOND - flaws.tunedLowHz();
    if (there.aboveMaskDeg() < 0 || Math.abs(off) > TOLERATED_HZ) {
      return false;
    }
    PlainPath.Place aim = window.followed().aimAt(late).turned(flaws.turnedDeg());
    double level = 10 * Math.log10(1000 * sender.watts()) + sender.gainDbi() + receiver.gainDbi();
    level -= Losses.wayDb(there, aim, receiver.frequencyHz(), sender.beamwidthDeg());
    level -= Losses.crossDb(sender.polarisation(), receiver.polarisation()) + lossDb;
    return level + fade > threshold;
  }
}
