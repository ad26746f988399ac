package hark.orbit;

import org.orekit.bodies.CelestialBodies;
import org.orekit.data.DataContext;
import org.orekit.forces.gravity.potential.GravityFields;
import org.orekit.frames.Frames;
import org.orekit.models.earth.GeoMagneticFields;
import org.orekit.time.TimeScales;

/** What Orekit's readers of CCSDS messages may know: time scales, frames, the Earth, no more. */
final class MessageContext implements DataContext {
  private final EarthModel earth;

  MessageContext(EarthModel earth) {
    this.earth = earth;
  }

  @Override
  public TimeScales getTimeScales() {
    return earth.scales();
  }

  @Override
  public Frames getFrames() {
    return earth.frames();
  }

  @Override
  public CelestialBodies getCelestialBodies() {
    return new EarthOnly(earth);
  }

  @Override
  public GravityFields getGravityFields() {
    throw new UnsupportedOperationException("no gravity fields are bundled");
  }

  @Override
  public GeoMagneticFields getGeoMagneticFields() {
    throw new UnsupportedOperationException("no magnetic fields are bundled");
  }
}
