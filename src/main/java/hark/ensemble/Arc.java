package hark.ensemble;

/**
 * Angles from sines and cosines. {@link Math#asin} leaves the compiled code at each call, and
 * tables of hearings ask tens of millions of times: the same rational function is evaluated in
 * place.
 */
final class Arc {
  /** Of (asin x − x)/x³ for x below ½: fdlibm, e_asin.c, Sun Microsystems 1993. */
  private static final double[] TOP = {
    0.16666666666666666,
    -0.3255658186224009,
    0.20121253213486293,
    -0.04005553450067941,
    0.0007915349942898145,
    3.479331075960212E-5
  };

  private static final double[] BELOW = {
    1, -2.403394911734414, 2.0209457602335057, -0.6882839716054533, 0.07703815055590194
  };

  private Arc() {}

  /** Angle of a sine in [−1, 1], rad; what lies outside counts as the end. */
  static double ofSine(double sine) {
    double size = Math.min(1, Math.abs(sine));
    double angle =
        size < 0.5 ? small(size) : 0.5 * Math.PI - 2 * small(Math.sqrt(0.5 * (1 - size)));
    return sine < 0 ? -angle : angle;
  }

  /** Angle of a cosine in [−1, 1], rad; what lies outside counts as the end. */
  static double ofCosine(double cosine) {
    return cosine > 0.5
        ? 2 * small(Math.sqrt(Math.max(0, 0.5 * (1 - cosine))))
        : 0.5 * Math.PI - ofSine(cosine);
  }

  private static double small(double x) {
    double t = x * x;
    double high = TOP[3] + t * (TOP[4] + t * TOP[5]);
    double top = t * (TOP[0] + t * (TOP[1] + t * (TOP[2] + t * high)));
    double below = BELOW[0] + t * (BELOW[1] + t * (BELOW[2] + t * (BELOW[3] + t * BELOW[4])));
    return x + x * (top / below);
  }
}
