package hark.orbit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.orekit.bodies.GeodeticPoint;
import org.orekit.bodies.OneAxisEllipsoid;
import org.orekit.frames.Frame;
import org.orekit.frames.TopocentricFrame;
import org.orekit.propagation.analytical.tle.TLEPropagator;
import org.orekit.propagation.events.ElevationDetector;
import org.orekit.propagation.events.handlers.RecordAndContinue;
import org.orekit.utils.IERSConventions;

/** The outside twin of the pass search: Orekit's own elevation detector on Orekit's own frames. */
public final class DetectorPasses {
  private static final double THRESHOLD_SECONDS = 1e-4;

  private final EarthModel earth = EarthModel.bundled();
  private final OneAxisEllipsoid ellipsoid;

  /** Prepares the frames once; that is not part of what is measured. */
  public DetectorPasses() {
    Frame fixed = earth.frames().getITRF(IERSConventions.IERS_2010, true);
    this.ellipsoid =
        new OneAxisEllipsoid(EarthModel.EQUATORIAL_RADIUS_METERS, EarthModel.FLATTENING, fixed);
  }

  /** Times at which the object crosses an elevation, s since the epoch of its elements. */
  public List<Double> crossings(
      ElementSet set, double[] place, double elevationDeg, double days, double checkSeconds) {
    GeodeticPoint point =
        new GeodeticPoint(Math.toRadians(place[0]), Math.toRadians(place[1]), place[2]);
    RecordAndContinue record = new RecordAndContinue();
    ElevationDetector detector =
        new ElevationDetector(
                checkSeconds, THRESHOLD_SECONDS, new TopocentricFrame(ellipsoid, point, "site"))
            .withConstantElevation(Math.toRadians(elevationDeg))
            .withHandler(record);
    TLEPropagator propagator = TLEPropagator.selectExtrapolator(set.toTle(earth), earth.teme());
    propagator.addEventDetector(detector);
    Instant end = set.epoch().plusSeconds(Math.round(days * 86400));
    propagator.propagate(earth.date(set.epoch()), earth.date(end));
    List<Double> times = new ArrayList<>();
    for (RecordAndContinue.Event event : record.getEvents()) {
      times.add(event.getState().getDate().durationFrom(earth.date(set.epoch())));
    }
    return times;
  }
}
