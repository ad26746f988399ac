package hark.orbit;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.orekit.bodies.CelestialBodies;
import org.orekit.bodies.CelestialBody;
import org.orekit.frames.Frame;
import org.orekit.time.AbsoluteDate;
import org.orekit.time.FieldAbsoluteDate;

/** The Earth, and no other body: readers of orbit messages ask for the centre by name. */
final class EarthOnly implements CelestialBodies {
  private final CelestialBody earth;

  EarthOnly(EarthModel model) {
    earth = new Earth(model);
  }

  private static CelestialBody unknown(String name) {
    throw new UnsupportedOperationException("where " + name + " is, is not bundled");
  }

  @Override
  public CelestialBody getEarth() {
    return earth;
  }

  @Override
  public CelestialBody getSolarSystemBarycenter() {
    return unknown("the solar system's barycentre");
  }

  @Override
  public CelestialBody getSun() {
    return unknown("the Sun");
  }

  @Override
  public CelestialBody getMercury() {
    return unknown("Mercury");
  }

  @Override
  public CelestialBody getVenus() {
    return unknown("Venus");
  }

  @Override
  public CelestialBody getEarthMoonBarycenter() {
    return unknown("the barycentre of Earth and Moon");
  }

  @Override
  public CelestialBody getMoon() {
    return unknown("the Moon");
  }

  @Override
  public CelestialBody getMars() {
    return unknown("Mars");
  }

  @Override
  public CelestialBody getJupiter() {
    return unknown("Jupiter");
  }

  @Override
  public CelestialBody getSaturn() {
    return unknown("Saturn");
  }

  @Override
  public CelestialBody getUranus() {
    return unknown("Uranus");
  }

  @Override
  public CelestialBody getNeptune() {
    return unknown("Neptune");
  }

  @Override
  public CelestialBody getPluto() {
    return unknown("Pluto");
  }

  @Override
  public CelestialBody getBody(String name) {
    return "EARTH".equalsIgnoreCase(name) ? earth : unknown(name);
  }

  /** The centre of everything here. */
  private record Earth(EarthModel model) implements CelestialBody {
    @Override
    public Frame getInertiallyOrientedFrame() {
      return model.frames().getGCRF();
    }

    @Override
    public Frame getBodyOrientedFrame() {
      return model.frames().getGTOD(true);
    }

    @Override
    public String getName() {
      return "Earth";
    }

    @Override
    public double getGM() {
      return OrbitShape.MU;
    }

    @Override
    public Vector3D getPosition(AbsoluteDate date, Frame frame) {
      return getInertiallyOrientedFrame()
          .getStaticTransformTo(frame, date)
          .transformPosition(Vector3D.ZERO);
    }

    @Override
    public <T extends CalculusFieldElement<T>> FieldVector3D<T> getPosition(
        FieldAbsoluteDate<T> date, Frame frame) {
      throw new UnsupportedOperationException("no derivatives are taken here");
    }
  }
}
