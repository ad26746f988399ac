package hark.trial;

import hark.station.AzimuthTable;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * What a station notices of the bursts that a beacon really sent, burst by burst: every fade, every
 * threshold and every slip of tuning is drawn. It follows the words of the link's description and
 * shares no code with {@code hark.link}.
 */
public final class PlainLink {
  /** Exact, SI 2019, J/K. */
  private static final double BOLTZMANN = 1.380649e-23;

  /** A turn of the body that shows another part of its pattern, degrees. Common practice. */
  private static final double ANOTHER_PART_DEG = 60;

  private final PlainBeacon beacon;
  private final PlainEars ears;
  private final PlainFlaws flaws;
  private final double fixedDb;

  /** A beacon for these ears. */
  public PlainLink(PlainBeacon beacon, PlainEars ears, PlainFlaws flaws) {
    this.beacon = beacon;
    this.ears = ears;
    this.flaws = flaws;
    double noiseWatts = BOLTZMANN * ears.noiseKelvin() * beacon.bandwidthHz();
    double noiseDbm = 10 * Math.log10(noiseWatts / 1e-3);
    // a level normal in dB has its median below its mean power by sd²·ln 10/20
    double sd = beacon.patternSdDb();
    double medianDbm = beacon.radiatedDbm() - sd * sd * Math.log(10) / 20;
    fixedDb =
        medianDbm
            + ears.gainDbi()
            - noiseDbm
            - Losses.crossDb(beacon.polarisation(), ears.polarisation())
            - flaws.lossDb();
  }

  /**
   * A stretch of listening.
   *
   * @param from start, s since separation
   * @param real path of the object it really is
   * @param lateSeconds it comes so much later than that path says
   * @param followed path that antenna and tuning follow
   */
  public record Window(
      double from, double to, PlainPath real, double lateSeconds, PlainPath followed) {}

  /**
   * What an event does to the radio.
   *
   * @param onset s since separation
   */
  public record Harm(double onset, boolean mute, double lossDb, double shiftHz) {}

  /** A burst that was noticed, and its level over noise. */
  public record Noticed(double seconds, double levelDb) {}

  /**
   * The bursts that are noticed.
   *
   * @param bursts beginnings, rising, s since separation
   * @param tumbleDegPerSecond how fast the pattern turns
   */
  public List<Noticed> listen(
      double[] bursts,
      List<Harm> harms,
      Window window,
      double tumbleDegPerSecond,
      SplittableRandom random) {
    List<Noticed> noticed = new ArrayList<>();
    double fade = random.nextGaussian();
    double before = Double.NEGATIVE_INFINITY;
    for (int k = first(bursts, window.from()); k < bursts.length; k++) {
      double t = bursts[k];
      if (t > window.to()) {
        break;
      }
      double turned = tumbleDegPerSecond * (t - before) / ANOTHER_PART_DEG;
      fade = random.nextDouble() < turned ? random.nextGaussian() : fade;
      before = t;
      double level = levelDb(window, t, fade, harms);
      boolean tuned = random.nextDouble() < inBand(window, t, harms);
      double skill = ears.skill().widthDb() * random.nextGaussian();
      if (tuned && level + skill > ears.skill().thresholdDb(beacon)) {
        noticed.add(new Noticed(t, level));
      }
    }
    return noticed;
  }

  private static int first(double[] bursts, double from) {
    int found = java.util.Arrays.binarySearch(bursts, from);
    return found >= 0 ? found : -found - 1;
  }

  /** Level over noise, dB; nothing below the skyline or from a mute radio. */
  private double levelDb(Window window, double t, double fade, List<Harm> harms) {
    PlainPath.Place there = window.real().at(t - window.lateSeconds());
    if (there.aboveMaskDeg() < 0) {
      return Double.NEGATIVE_INFINITY;
    }
    PlainPath.Place aim =
        window.followed().aimAt(t - flaws.lateSeconds()).turned(flaws.turnedDeg());
    double level = fixedDb + beacon.patternSdDb() * fade;
    level -= Losses.wayDb(there, aim, beacon.frequencyHz(), ears.beamwidthDeg());
    if (!ears.noiseByAzimuthDeg().isEmpty()) {
      level -= AzimuthTable.at(ears.noiseByAzimuthDeg(), aim.azimuthDeg());
    }
    for (Harm harm : harms) {
      if (harm.onset() <= t) {
        level = harm.mute() ? Double.NEGATIVE_INFINITY : level - harm.lossDb();
      }
    }
    return level;
  }

  /** Share of the burst's band in the band listened to, 0…1. */
  private double inBand(Window window, double t, List<Harm> harms) {
    PlainPath.Place there = window.real().at(t - window.lateSeconds());
    double off = beacon.carrierErrorHz() + flaws.tunedLowHz();
    double followed = window.followed().at(t - flaws.lateSeconds()).rangeRate();
    double apart = flaws.dopplerFactor() * followed - there.rangeRate();
    off += beacon.frequencyHz() * apart / Losses.LIGHT_METERS_PER_SECOND;
    for (Harm harm : harms) {
      off += harm.onset() <= t ? harm.shiftHz() : 0;
    }
    double inside = (ears.halfWidthHz() - Math.abs(off)) / beacon.bandwidthHz() + 0.5;
    return flaws.attended() * Math.max(0, Math.min(1, inside));
  }
}
