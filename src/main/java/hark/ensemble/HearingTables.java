package hark.ensemble;

import hark.link.Doppler;
import hark.link.LinkBudget;
import hark.station.AzimuthTable;
import hark.station.Station;
import java.util.List;

/**
 * Makes the tables of one beacon for every mode of the station's health at once: where the object
 * is, is worked out once, and what modes have in common is shared.
 */
final class HearingTables {
  private final SkyWindow window;
  private final Station station;
  private final BeaconRadio beacon;
  private final Listening listening;
  private final List<StationMode> modes;
  private final int mistaken;
  private final int count;
  private final HearingTable.Band band;

  /**
   * For a window listened to in one way.
   *
   * @param mistaken index of the candidate that is followed when the wrong set is loaded
   */
  HearingTables(
      SkyWindow window,
      Station station,
      BeaconRadio beacon,
      Listening listening,
      List<StationMode> modes,
      int mistaken) {
    this.window = window;
    this.station = station;
    this.beacon = beacon;
    this.listening = listening;
    this.modes = modes;
    this.mistaken = mistaken;
    count = 2 + (int) Math.ceil((window.to() - window.from()) / HearingTable.STEP_SECONDS);
    double attended = 1 - station.doubts().minutesLostShare();
    band = new HearingTable.Band(listening.windowHz(), beacon.bandwidthHz(), attended);
  }

  /**
   * What a node is.
   *
   * @param lateSeconds the object comes so much later than predicted, s
   * @param radiatedDbm median over orientations, dBm
   * @param carrierErrorHz carrier minus nominal, Hz
   * @param clockSeconds the station's clock is late, s
   * @param turnedDeg the antenna stands too far to the east
   */
  record Node(
      int object,
      double lateSeconds,
      double radiatedDbm,
      double carrierErrorHz,
      double clockSeconds,
      double turnedDeg) {}

  /** One table for each mode, over these nodes; null for a deaf one. */
  HearingTable[] of(List<Node> nodes) {
    Seen there = new Seen(nodes);
    HearingTable[] tables = new HearingTable[modes.size()];
    Aim believed = null;
    for (int m = 0; m < tables.length; m++) {
      StationMode mode = modes.get(m);
      if (mode.isDeaf()) {
        continue;
      }
      boolean ownAim = mode.turnedDeg() != 0 || mode.lateSeconds() != 0 || mode.otherSet();
      Aim aim = ownAim || believed == null ? new Aim(there, nodes, mode) : believed;
      believed = ownAim ? believed : aim;
      tables[m] = table(nodes, mode, aim, there);
    }
    return tables;
  }

  private HearingTable table(List<Node> nodes, StationMode mode, Aim aim, Seen there) {
    int width = nodes.size();
    float[] offset = new float[count * width];
    for (int i = 0; i < offset.length; i++) {
      Node node = nodes.get(i % width);
      offset[i] =
          (float)
              (there.shiftHz[i]
                  - mode.dopplerFactor() * aim.shiftHz[i]
                  + node.carrierErrorHz()
                  + mode.tunedLowHz()
                  + listening.beaconAboveHz(beacon.frequencyHz()));
    }
    double loss = mode.lossDb() + (mode.otherHand() ? otherHandDb() : 0);
    return new HearingTable(
        width, new HearingTable.Met(aim.snrDb, aim.levelDb, offset, there.carrierHz), loss, band);
  }

  private double otherHandDb() {
    return LinkBudget.polarisationLossDb(beacon.polarisation(), opposite(hand()))
        - LinkBudget.polarisationLossDb(beacon.polarisation(), hand());
  }

  /** Polarisation listened with, if the antenna is as believed. */
  private Station.Polarisation hand() {
    Station.Polarisation own = station.receive().polarisation();
    return listening.otherHand() ? opposite(own) : own;
  }

  private static Station.Polarisation opposite(Station.Polarisation hand) {
    return switch (hand) {
      case RHCP -> Station.Polarisation.LHCP;
      case LHCP -> Station.Polarisation.RHCP;
      case LINEAR -> Station.Polarisation.LINEAR;
    };
  }

  /** Where the object is for each node and how strong it would be on the antenna's axis. */
  private final class Seen {
    final double[] east;
    final double[] north;
    final double[] up;
    final float[] levelDb;
    final double[] shiftHz;

    /** What arrives, above the nominal frequency, Hz. */
    final float[] carrierHz;

    Seen(List<Node> nodes) {
      int width = nodes.size();
      east = new double[count * width];
      north = new double[count * width];
      up = new double[count * width];
      levelDb = new float[count * width];
      shiftHz = new double[count * width];
      carrierHz = new float[count * width];
      PassGeometry.Point point = new PassGeometry.Point();
      double fixed = fixedDb();
      for (int n = 0; n < width; n++) {
        Node node = nodes.get(n);
        PassGeometry real = window.paths().get(node.object());
        for (int k = 0; k < count; k++) {
          int i = k * width + n;
          real.at(window.from() + k * HearingTable.STEP_SECONDS - node.lateSeconds(), point);
          if (point.aboveMaskDeg < 0) {
            levelDb[i] = HearingTable.BELOW_MASK;
            continue;
          }
          east[i] = point.east;
          north[i] = point.north;
          up[i] = point.up;
          double pathDb =
              LinkBudget.freeSpaceLossDb(beacon.frequencyHz(), point.rangeMeters)
                  + LinkBudget.atmosphereLossDb(point.elevationDeg());
          levelDb[i] = (float) (node.radiatedDbm() + fixed - pathDb);
          shiftHz[i] = Doppler.shiftHz(beacon.frequencyHz(), point.rangeRate);
          carrierHz[i] = (float) (shiftHz[i] + node.carrierErrorHz());
        }
      }
    }

    /** All of the budget that is the same at every place of the path, dB. */
    private double fixedDb() {
      Station.Receive receive = station.receive();
      return receive.gainDbi()
          + listening.extraGainDb()
          - LinkBudget.noisePowerDbm(receive.systemNoiseKelvin(), beacon.bandwidthHz())
          - listening.extraNoiseDb()
          - LinkBudget.polarisationLossDb(beacon.polarisation(), hand());
    }
  }

  /** Where the antenna points for each node and how the radio is tuned. */
  private final class Aim {
    final float[] snrDb;
    final float[] levelDb;
    final double[] shiftHz;

    Aim(Seen there, List<Node> nodes, StationMode mode) {
      int width = nodes.size();
      snrDb = new float[count * width];
      shiftHz = new double[count * width];
      int followed = mode.otherSet() ? mistaken : listening.tracked();
      PassGeometry path = window.paths().get(followed);
      List<double[]> noise = station.receive().noiseByAzimuthDeg();
      PassGeometry.Point aim = new PassGeometry.Point();
      for (int i = 0; i < snrDb.length; i++) {
        if (there.levelDb[i] == HearingTable.BELOW_MASK) {
          snrDb[i] = HearingTable.BELOW_MASK;
          continue;
        }
        Node node = nodes.get(i % width);
        double late = listening.offsetSeconds() + node.clockSeconds() + mode.lateSeconds();
        int sample = i / width;
        path.aimAt(window.from() + sample * HearingTable.STEP_SECONDS - late, aim);
        aim.turn(node.turnedDeg() + mode.turnedDeg());
        double angle = aim.angleDeg(there.east[i], there.north[i], there.up[i]);
        double pointing = LinkBudget.pointingLossDb(angle, station.receive().beamwidthDeg());
        double extra = noise.isEmpty() ? 0 : AzimuthTable.at(noise, aim.azimuthDeg());
        snrDb[i] = (float) (there.levelDb[i] - pointing - extra);
        shiftHz[i] = Doppler.shiftHz(beacon.frequencyHz(), aim.rangeRate);
      }
      levelDb = HearingTable.levels(snrDb, width);
    }
  }
}
