package hark.orbit;

import hark.problem.BadInput;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.orekit.files.ccsds.ndm.odm.oem.OemSegment;
import org.orekit.files.general.EphemerisFile.EphemerisSegment;
import org.orekit.propagation.BoundedPropagator;
import org.orekit.time.AbsoluteDate;
import org.orekit.utils.TimeStampedPVCoordinates;

/** Rows at even steps from the segments of an OEM. */
final class StateRow {
  /** States may lie apart by a revolution's so-manieth part; between others nothing is known. */
  private static final double LEAST_A_REVOLUTION = 18;

  private StateRow() {}

  static StatePath of(List<OemSegment> segments, EarthModel earth, String fileName) {
    AbsoluteDate start = segments.get(0).getStart();
    Instant epoch = start.toInstant(earth.scales());
    refuseShort(segments, fileName);
    refuseGaps(segments, earth, fileName);
    List<BoundedPropagator> pieces =
        segments.stream().map(EphemerisSegment::getPropagator).toList();
    double[] first = state(pieces.get(0), start, earth);
    double step = StatePath.step(first);
    AbsoluteDate stop = segments.get(segments.size() - 1).getStop();
    List<double[]> rows = new ArrayList<>();
    int piece = 0;
    for (int i = 0; i * step <= stop.durationFrom(start); i++) {
      AbsoluteDate date = start.shiftedBy(i * step);
      while (piece + 1 < pieces.size() && date.isAfter(pieces.get(piece).getMaxDate())) {
        piece++;
      }
      rows.add(state(pieces.get(piece), date, earth));
    }
    return new StatePath(epoch, step, rows, DragBody.USUAL, StatePath.Known.USUAL, earth);
  }

  private static double[] state(BoundedPropagator piece, AbsoluteDate date, EarthModel earth) {
    AbsoluteDate inside =
        date.isBefore(piece.getMinDate())
            ? piece.getMinDate()
            : date.isAfter(piece.getMaxDate()) ? piece.getMaxDate() : date;
    return StateForces.six(piece.getPVCoordinates(inside, earth.teme()));
  }

  private static void refuseShort(List<OemSegment> segments, String fileName) {
    for (OemSegment segment : segments) {
      int states = segment.getCoordinates().size();
      if (states < segment.getInterpolationSamples()) {
        throw BadInput.of(
            "a row has "
                + states
                + " state(s), going between them takes "
                + segment.getInterpolationSamples(),
            fileName,
            "ask for a longer row, or give one state as an OPM");
      }
    }
  }

  private static void refuseGaps(List<OemSegment> segments, EarthModel earth, String fileName) {
    List<TimeStampedPVCoordinates> all = new ArrayList<>();
    segments.forEach(segment -> all.addAll(segment.getCoordinates()));
    double[] first = StateForces.six(all.get(0));
    OrbitShape shape = OrbitShape.of(first);
    double axis = (shape.perigeeMeters() + shape.apogeeMeters()) / 2;
    double period = 2 * Math.PI * Math.sqrt(axis * axis * axis / OrbitShape.MU);
    double most = period / LEAST_A_REVOLUTION;
    for (int i = 1; i < all.size(); i++) {
      double gap = all.get(i).getDate().durationFrom(all.get(i - 1).getDate());
      if (gap > most) {
        throw BadInput.of(
            String.format(
                java.util.Locale.ROOT,
                "its states lie %.0f s apart after %s; nothing is known in between",
                gap,
                all.get(i - 1).getDate().toInstant(earth.scales())),
            fileName,
            String.format(
                java.util.Locale.ROOT,
                "ask for steps of %.0f s at most, or give one state as an OPM",
                Math.floor(most / 10) * 10));
      }
    }
  }
}
