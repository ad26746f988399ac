package hark.orbit;

import java.util.function.DoubleUnaryOperator;

/** Root finding for smooth functions of time. Every loop is capped. */
public final class Roots {
  private static final int MOST_STEPS = 100;

  private Roots() {}

  /**
   * A sign change between two times, by the Illinois rule with bisection as a guard.
   *
   * @param f smooth; its signs at the ends differ
   * @param tolerance width at which to stop
   */
  public static double between(DoubleUnaryOperator f, double from, double to, double tolerance) {
    return between(
        f, new double[] {from, f.applyAsDouble(from), to, f.applyAsDouble(to)}, tolerance);
  }

  /** As above, with the values at the ends known: {@code {from, f(from), to, f(to)}}. */
  public static double between(DoubleUnaryOperator f, double[] ends, double tolerance) {
    double a = ends[0];
    double fa = ends[1];
    double b = ends[2];
    double fb = ends[3];
    double last = a;
    for (int i = 0; i < MOST_STEPS && Math.abs(b - a) > tolerance; i++) {
      boolean slow = i % 8 == 7; // the rule can creep; halve now and then
      double m = slow ? (a + b) / 2 : b - fb * (b - a) / (fb - fa);
      double fm = f.applyAsDouble(m);
      if (fm == 0 || (!slow && i > 0 && Math.abs(m - last) < tolerance)) {
        return m;
      }
      last = m;
      if (Math.signum(fm) == Math.signum(fb)) {
        fa /= 2;
      } else {
        a = b;
        fa = fb;
      }
      b = m;
      fb = fm;
    }
    return b;
  }

  /** Time of the least value between two times, by golden section. */
  public static double least(DoubleUnaryOperator f, double from, double to, double tolerance) {
    double ratio = (Math.sqrt(5) - 1) / 2;
    double a = from;
    double b = to;
    double c = b - ratio * (b - a);
    double d = a + ratio * (b - a);
    double fc = f.applyAsDouble(c);
    double fd = f.applyAsDouble(d);
    for (int i = 0; i < MOST_STEPS && b - a > tolerance; i++) {
      if (fc < fd) {
        b = d;
        d = c;
        fd = fc;
        c = b - ratio * (b - a);
        fc = f.applyAsDouble(c);
      } else {
        a = c;
        c = d;
        fc = fd;
        d = a + ratio * (b - a);
        fd = f.applyAsDouble(d);
      }
    }
    return (a + b) / 2;
  }
}
