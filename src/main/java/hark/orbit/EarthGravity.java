package hark.orbit;

import org.orekit.forces.gravity.potential.NormalizedSphericalHarmonicsProvider;
import org.orekit.forces.gravity.potential.TideSystem;
import org.orekit.time.AbsoluteDate;

/**
 * The Earth's gravity to degree and order 8. What is left out moves an object at 400 km by some
 * tens of metres.
 *
 * <p>Source: EGM96, Lemoine et al., <i>The Development of the Joint NASA GSFC and NIMA Geopotential
 * Model EGM96</i>, NASA/TP-1998-206861, fully normalised coefficients as distributed (tide free).
 */
final class EarthGravity implements NormalizedSphericalHarmonicsProvider {
  private static final int DEGREE = 8;
  private static final double MU = 3.986004415e14;
  private static final double RADIUS_METERS = 6378136.3;

  /** Degree, order, C, S. */
  private static final String TABLE =
      """
      2 0 -0.484165371736e-03 0
      2 1 -0.186987635955e-09 0.119528012031e-08
      2 2 0.243914352398e-05 -0.140016683654e-05
      3 0 0.957254173792e-06 0
      3 1 0.202998882184e-05 0.248513158716e-06
      3 2 0.904627768605e-06 -0.619025944205e-06
      3 3 0.721072657057e-06 0.141435626958e-05
      4 0 0.539873863789e-06 0
      4 1 -0.536321616971e-06 -0.473440265853e-06
      4 2 0.350694105785e-06 0.662671572540e-06
      4 3 0.990771803829e-06 -0.200928369177e-06
      4 4 -0.188560802735e-06 0.308853169333e-06
      5 0 0.685323475630e-07 0
      5 1 -0.621012128528e-07 -0.944226127525e-07
      5 2 0.652438297612e-06 -0.323349612668e-06
      5 3 -0.451955406071e-06 -0.214847190624e-06
      5 4 -0.295301647654e-06 0.496658876769e-07
      5 5 0.174971983203e-06 -0.669384278219e-06
      6 0 -0.149957994714e-06 0
      6 1 -0.760879384947e-07 0.262890545501e-07
      6 2 0.481732442832e-07 -0.373728201347e-06
      6 3 0.571730990516e-07 0.902694517163e-08
      6 4 -0.862142660109e-07 -0.471408154267e-06
      6 5 -0.267133325490e-06 -0.536488432483e-06
      6 6 0.967616121092e-08 -0.237192006935e-06
      7 0 0.909789371450e-07 0
      7 1 0.279872910488e-06 0.954336911867e-07
      7 2 0.329743816488e-06 0.930667596042e-07
      7 3 0.250398657706e-06 -0.217198608738e-06
      7 4 -0.275114355257e-06 -0.123800392323e-06
      7 5 0.193765507243e-08 0.177377719872e-07
      7 6 -0.358856860645e-06 0.151789817739e-06
      7 7 0.109185148045e-08 0.244415707993e-07
      8 0 0.496711667324e-07 0
      8 1 0.233422047893e-07 0.590060493411e-07
      8 2 0.802978722615e-07 0.654175425859e-07
      8 3 -0.191877757009e-07 -0.863454445021e-07
      8 4 -0.244600105471e-06 0.700233016934e-07
      8 5 -0.255352403037e-07 0.891462164788e-07
      8 6 -0.657361610961e-07 0.309238461807e-06
      8 7 0.672811580072e-07 0.747440473633e-07
      8 8 -0.124092493016e-06 0.120533165603e-06
      """;

  private final double[][] c = new double[DEGREE + 1][DEGREE + 1];
  private final double[][] s = new double[DEGREE + 1][DEGREE + 1];

  EarthGravity() {
    c[0][0] = 1;
    for (String line : TABLE.lines().toList()) {
      String[] cells = line.split(" ", 4);
      int degree = Integer.parseInt(cells[0]);
      int order = Integer.parseInt(cells[1]);
      c[degree][order] = Double.parseDouble(cells[2]);
      s[degree][order] = Double.parseDouble(cells[3]);
    }
  }

  @Override
  public int getMaxDegree() {
    return DEGREE;
  }

  @Override
  public int getMaxOrder() {
    return DEGREE;
  }

  @Override
  public double getMu() {
    return MU;
  }

  @Override
  public double getAe() {
    return RADIUS_METERS;
  }

  @Override
  public AbsoluteDate getReferenceDate() {
    return null; // constant in time
  }

  @Override
  public TideSystem getTideSystem() {
    return TideSystem.TIDE_FREE;
  }

  @Override
  public NormalizedSphericalHarmonics onDate(AbsoluteDate date) {
    return new NormalizedSphericalHarmonics() {
      @Override
      public AbsoluteDate getDate() {
        return date;
      }

      @Override
      public double getNormalizedCnm(int degree, int order) {
        return c[degree][order];
      }

      @Override
      public double getNormalizedSnm(int degree, int order) {
        return s[degree][order];
      }
    };
  }
}
