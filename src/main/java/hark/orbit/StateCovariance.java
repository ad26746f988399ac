package hark.orbit;

import hark.problem.BadInput;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.RealMatrix;
import org.orekit.files.ccsds.definitions.FrameFacade;
import org.orekit.files.ccsds.ndm.odm.CartesianCovariance;
import org.orekit.utils.TimeStampedPVCoordinates;

/**
 * What a message's covariance says of the place along the track and of the semi-major axis, taken
 * for a near-circular orbit: δa = 2 δr + 2 δv / n, with δr outward and δv along the track.
 */
final class StateCovariance {
  private StateCovariance() {}

  static StatePath.Known read(
      CartesianCovariance block, TimeStampedPVCoordinates pv, EarthModel earth, String fileName) {
    Vector3D radial = pv.getPosition().normalize();
    Vector3D normal = pv.getMomentum().normalize();
    Vector3D along = Vector3D.crossProduct(normal, radial);
    FrameFacade frame = block.getReferenceFrame();
    double n = pv.getVelocity().getNorm() / pv.getPosition().getNorm();
    if (frame.asOrbitRelativeFrame() != null) {
      // RTN, RSW and their like: outward, along, across
      if (!frame.getName().matches("(?i)RTN|RSW|QSW.*|RIC")) {
        throw BadInput.of(
            "its covariance is in frame " + frame.getName() + ", which is not read",
            fileName,
            "give it in RTN or in the frame of the state, or leave it out");
      }
      radial = Vector3D.PLUS_I;
      along = Vector3D.PLUS_J;
    } else {
      var turn = earth.teme().getStaticTransformTo(block.getFrame(), pv.getDate());
      radial = turn.transformVector(radial);
      along = turn.transformVector(along);
    }
    RealMatrix c = block.getCovarianceMatrix();
    double[] place = {along.getX(), along.getY(), along.getZ(), 0, 0, 0};
    double[] axis = {
      2 * radial.getX(),
      2 * radial.getY(),
      2 * radial.getZ(),
      2 / n * along.getX(),
      2 / n * along.getY(),
      2 / n * along.getZ()
    };
    double alongMeters = spread(c, place);
    double axisMeters = spread(c, axis);
    if (!(alongMeters > 0 && axisMeters >= 0)) {
      throw BadInput.of(
          "its covariance is not one: a variance is not above zero",
          fileName,
          "export the message again, or leave the covariance out");
    }
    return new StatePath.Known(alongMeters, axisMeters);
  }

  private static double spread(RealMatrix c, double[] w) {
    double sum = 0;
    for (int i = 0; i < w.length; i++) {
      for (int j = 0; j < w.length; j++) {
        sum += w[i] * w[j] * c.getEntry(i, j);
      }
    }
    return Math.sqrt(sum);
  }
}
