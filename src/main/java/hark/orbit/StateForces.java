package hark.orbit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.orekit.attitudes.FrameAlignedProvider;
import org.orekit.bodies.OneAxisEllipsoid;
import org.orekit.errors.OrekitException;
import org.orekit.forces.drag.DragForce;
import org.orekit.forces.drag.IsotropicDrag;
import org.orekit.forces.gravity.HolmesFeatherstoneAttractionModel;
import org.orekit.frames.FieldTransform;
import org.orekit.frames.Frame;
import org.orekit.frames.Transform;
import org.orekit.frames.TransformProvider;
import org.orekit.models.earth.atmosphere.HarrisPriester;
import org.orekit.orbits.CartesianOrbit;
import org.orekit.orbits.OrbitType;
import org.orekit.propagation.SpacecraftState;
import org.orekit.propagation.numerical.NumericalPropagator;
import org.orekit.time.AbsoluteDate;
import org.orekit.time.FieldAbsoluteDate;
import org.orekit.utils.ExtendedPositionProvider;
import org.orekit.utils.PVCoordinates;

/**
 * Moves a state under gravity (EGM96 to degree 8) and the air's pull (Harris and Priester's density
 * for mean activity of the Sun, bulge included). TEME is taken as at rest, which it leaves by 5 m a
 * day. Not modelled: Sun and Moon as masses, sunlight's pressure, tides.
 */
final class StateForces {
  private static final double LEAST_STEP = 1e-3;
  private static final double LONGEST_STEP = 300;
  private static final double METERS_KEPT = 0.01;
  private static final double METERS_PER_SECOND_KEPT = 1e-5;

  private final EarthModel earth;
  private final Instant epoch;
  private final AbsoluteDate epochDate;
  private final double epochUnixSeconds;
  private final Frame turning;

  StateForces(Instant epoch, EarthModel earth) {
    this.earth = earth;
    this.epoch = epoch;
    this.epochDate = earth.date(epoch);
    this.epochUnixSeconds = Trajectory.between(Instant.EPOCH, epoch);
    this.turning = new Frame(earth.teme(), new Turning(), "Earth by sidereal time", false);
  }

  Instant epoch() {
    return epoch;
  }

  /**
   * States at even steps, the given one first; fewer than asked when the object falls below 100 km.
   *
   * @param seconds of the state, from the epoch
   * @param step s; negative goes back in time
   */
  List<double[]> rows(double seconds, double[] state, DragBody body, double step, int count) {
    List<double[]> rows = new ArrayList<>();
    rows.add(state.clone());
    AbsoluteDate start = epochDate.shiftedBy(seconds);
    NumericalPropagator propagator = propagator(start, state, body);
    propagator.setStepHandler(
        Math.abs(step),
        now -> {
          boolean first = Math.abs(now.getDate().durationFrom(start)) < 0.5 * Math.abs(step);
          if (!first && rows.size() < count) {
            rows.add(six(now.getPVCoordinates(earth.teme())));
          }
        });
    try {
      // a little further, so that rounding does not lose the last row
      propagator.propagate(start, start.shiftedBy(step * (count - 1 + 1e-6)));
    } catch (OrekitException e) {
      // below the table of densities: the path ends where it was last known
    }
    return rows;
  }

  private NumericalPropagator propagator(AbsoluteDate start, double[] state, DragBody body) {
    EarthGravity gravity = new EarthGravity();
    double[] absolute = new double[7];
    java.util.Arrays.fill(absolute, 0, 3, METERS_KEPT);
    java.util.Arrays.fill(absolute, 3, 6, METERS_PER_SECOND_KEPT);
    absolute[6] = 1;
    NumericalPropagator propagator =
        new NumericalPropagator(
            new DormandPrince853Integrator(LEAST_STEP, LONGEST_STEP, absolute, new double[7]),
            FrameAlignedProvider.of(earth.teme()));
    propagator.setOrbitType(OrbitType.CARTESIAN);
    propagator.addForceModel(new HolmesFeatherstoneAttractionModel(turning, gravity));
    if (body.dragCoefficient() * body.areaSquareMeters() > 0) {
      OneAxisEllipsoid ground =
          new OneAxisEllipsoid(EarthModel.EQUATORIAL_RADIUS_METERS, EarthModel.FLATTENING, turning);
      propagator.addForceModel(
          new DragForce(
              new HarrisPriester(new SunPlace(), ground),
              new IsotropicDrag(body.areaSquareMeters(), body.dragCoefficient())));
    }
    PVCoordinates pv =
        new PVCoordinates(
            new Vector3D(state[0], state[1], state[2]), new Vector3D(state[3], state[4], state[5]));
    propagator.setInitialState(
        new SpacecraftState(new CartesianOrbit(pv, earth.teme(), start, gravity.getMu()))
            .withMass(body.massKg()));
    return propagator;
  }

  static double[] six(PVCoordinates pv) {
    Vector3D p = pv.getPosition();
    Vector3D v = pv.getVelocity();
    return new double[] {p.getX(), p.getY(), p.getZ(), v.getX(), v.getY(), v.getZ()};
  }

  private double unixSeconds(AbsoluteDate date) {
    return epochUnixSeconds + date.durationFrom(epochDate);
  }

  /** The Earth's turn by mean sidereal time, the one {@link EarthRotation} has. */
  private final class Turning implements TransformProvider {
    @Override
    public Transform getTransform(AbsoluteDate date) {
      double angle = EarthRotation.gmst(unixSeconds(date) - EarthRotation.J2000_UNIX_SECONDS);
      Rotation turn = new Rotation(Vector3D.PLUS_K, angle, RotationConvention.FRAME_TRANSFORM);
      return new Transform(date, turn, new Vector3D(EarthRotation.RATE, Vector3D.PLUS_K));
    }

    @Override
    public <T extends CalculusFieldElement<T>> FieldTransform<T> getTransform(
        FieldAbsoluteDate<T> date) {
      throw new UnsupportedOperationException("no derivatives are taken here");
    }
  }

  /** The Sun for the bulge of the air. */
  private final class SunPlace implements ExtendedPositionProvider {
    @Override
    public Vector3D getPosition(AbsoluteDate date, Frame frame) {
      double[] meters = new double[3];
      Sun.position(unixSeconds(date), meters);
      Vector3D inTeme = new Vector3D(meters[0], meters[1], meters[2]);
      return earth.teme().getStaticTransformTo(frame, date).transformPosition(inTeme);
    }

    @Override
    public <T extends CalculusFieldElement<T>> FieldVector3D<T> getPosition(
        FieldAbsoluteDate<T> date, Frame frame) {
      throw new UnsupportedOperationException("no derivatives are taken here");
    }
  }
}
