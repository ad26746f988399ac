package hark.assessment;

import hark.assessment.Assessment.EnergyPoint;
import hark.assessment.Assessment.Shadow;
import hark.assessment.Assessment.States;
import hark.ensemble.BodyList;
import hark.ensemble.Diagnosis;
import hark.ensemble.EnergyFan;
import hark.orbit.Eclipse;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The battery's part of an assessment. */
record EnergyView(List<EnergyPoint> energy, List<Shadow> shadows, double cutoffSoc) {
  /** Past shadows are kept this long, for looking back along the time axis. */
  private static final Duration SHADOWS_BEFORE = Duration.ofDays(8);

  static EnergyView of(Diagnosis diagnosis, List<EnergyFan.Point> fan) {
    List<EnergyPoint> energy =
        fan.stream()
            .map(
                point ->
                    point(
                        point,
                        diagnosis.input().instant(point.seconds()),
                        diagnosis.sunlitAt(point.seconds())))
            .toList();
    return new EnergyView(energy, shadows(diagnosis), diagnosis.cutoffSoc());
  }

  private static List<Shadow> shadows(Diagnosis diagnosis) {
    Instant first = diagnosis.input().now().minus(SHADOWS_BEFORE);
    List<Shadow> list = new ArrayList<>();
    for (Eclipse eclipse : diagnosis.eclipses()) {
      if (eclipse.penumbraExit().isAfter(first)) {
        list.add(new Shadow(eclipse.penumbraEntry(), eclipse.penumbraExit()));
      }
    }
    return list;
  }

  static List<EnergyPoint> points(BodyList list, List<EnergyFan.Point> fan) {
    return fan.stream()
        .map(
            point ->
                point(
                    point,
                    list.input().instant(point.seconds()),
                    list.light().fractionAt(point.seconds())))
        .toList();
  }

  private static EnergyPoint point(EnergyFan.Point point, Instant time, double sunlit) {
    return new EnergyPoint(
        time,
        point.soc()[0],
        point.soc()[1],
        point.soc()[2],
        point.soc()[3],
        point.soc()[4],
        point.transmitting(),
        sunlit,
        states(point.states()));
  }

  static States states(double[] shares) {
    return new States(shares[0], shares[1], shares[2], shares[3]);
  }
}
