package hark.ensemble;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * A number known only so well. Every form answers with its quantile, so that draws can be shared
 * and stratified.
 */
public sealed interface Uncertain {
  /**
   * The value that is not exceeded with probability {@code u}.
   *
   * @param u strictly between 0 and 1
   */
  double quantile(double u);

  /** The mean of the distribution. */
  double mean();

  /** True when there is nothing to draw. */
  default boolean isFixed() {
    return this instanceof Fixed;
  }

  /** A plain number. */
  static Uncertain of(double value) {
    return new Fixed(value);
  }

  /** A number taken as exact. */
  record Fixed(double value) implements Uncertain {
    /** Refuses what is not a finite number. */
    public Fixed {
      requireFinite(value, "value");
    }

    @Override
    public double quantile(double u) {
      return value;
    }

    @Override
    public double mean() {
      return value;
    }
  }

  /** {@code {mean, sd}}: normal. */
  record Normal(double mean, double sd) implements Uncertain {
    /** Refuses a spread that is not positive. */
    public Normal {
      requireFinite(mean, "mean");
      requirePositive(sd, "sd");
    }

    @Override
    public double quantile(double u) {
      return mean + sd * StandardNormal.quantile(u);
    }
  }

  /** {@code {min, max}}: uniform. */
  record Uniform(double min, double max) implements Uncertain {
    /** Refuses an empty or inverted range. */
    public Uniform {
      requireFinite(min, "min");
      requireFinite(max, "max");
      if (!(max > min)) {
        throw new IllegalArgumentException("max " + max + " is not above min " + min);
      }
    }

    @Override
    public double quantile(double u) {
      return min + (max - min) * u;
    }

    @Override
    public double mean() {
      return 0.5 * (min + max);
    }
  }

  /**
   * {@code {median, factor}}: lognormal; about two thirds lie within {@code median/factor …
   * median·factor}.
   */
  record LogNormal(double median, double factor) implements Uncertain {
    /** Refuses a median that is not positive or a factor not above 1. */
    public LogNormal {
      requirePositive(median, "median");
      if (!(factor > 1) || !Double.isFinite(factor)) {
        throw new IllegalArgumentException("factor " + factor + " is not above 1");
      }
    }

    @Override
    public double quantile(double u) {
      return median * Math.exp(Math.log(factor) * StandardNormal.quantile(u));
    }

    @Override
    public double mean() {
      double sigma = Math.log(factor);
      return median * Math.exp(0.5 * sigma * sigma);
    }
  }

  private static void requireFinite(double value, String name) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " " + value + " is not a number");
    }
  }

  private static void requirePositive(double value, String name) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " " + value + " is not positive");
    }
  }

  /** The standard normal quantile, shared by the forms above. */
  final class StandardNormal {
    private static final NormalDistribution STANDARD = new NormalDistribution();

    private StandardNormal() {}

    /** Inverse of the standard normal distribution function at {@code u} in (0, 1). */
    public static double quantile(double u) {
      return STANDARD.inverseCumulativeProbability(u);
    }
  }
}
