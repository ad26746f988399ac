package hark.mission;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The values a number may have. Outside of [{@code min}, {@code max}] is an error; outside of the
 * usual range is worth a warning; a value that would fit the usual range in another unit is
 * suspected of being written in it.
 *
 * @param min least value, in the unit of the key
 * @param max greatest value
 * @param usualMin below this a warning is given
 * @param usualMax above this a warning is given
 * @param slips units that are easily mistaken for the right one
 */
public record Span(double min, double max, double usualMin, double usualMax, List<Slip> slips) {
  /** A mistaken unit: {@code value · factor} is the value in the right one. */
  public record Slip(String unit, double factor) {}

  /** Any finite number. */
  public static final Span ANY = of(-Double.MAX_VALUE, Double.MAX_VALUE);

  /** From {@code min} to {@code max}, both allowed. */
  public static Span of(double min, double max) {
    return new Span(min, max, min, max, List.of());
  }

  /** The same with a narrower range outside of which a warning is given. */
  public Span usually(double low, double high) {
    return new Span(min, max, low, high, slips);
  }

  /** The same, watching for one more unit. */
  public Span orIn(String unit, double factor) {
    List<Slip> more = new ArrayList<>(slips);
    more.add(new Slip(unit, factor));
    return new Span(min, max, usualMin, usualMax, List.copyOf(more));
  }

  /** True for a value within the limits. */
  public boolean holds(double value) {
    return value >= min && value <= max;
  }

  /** True for a value nobody need be asked about. */
  public boolean isUsual(double value) {
    return value >= usualMin && value <= usualMax;
  }

  /** The nearest value within the limits. */
  public double clamp(double value) {
    return Math.max(min, Math.min(max, value));
  }

  /** The unit the value was probably written in, when it makes sense in no other. */
  public Optional<Slip> suspect(double value) {
    return slips.stream().filter(slip -> isUsual(value * slip.factor())).findFirst();
  }

  /** The limits in words. */
  public String words() {
    if (min == -Double.MAX_VALUE && max == Double.MAX_VALUE) {
      return "a number";
    }
    return "a number from " + print(min) + " to " + print(max);
  }

  /** A number as a person would write it. */
  static String print(double value) {
    if (value == Math.rint(value) && Math.abs(value) < 1e9) {
      return Long.toString((long) value);
    }
    return String.format(Locale.ROOT, "%.6g", value)
        .replaceAll("(\\.\\d*?)0+(e|$)", "$1$2")
        .replaceAll("\\.(e|$)", "$1");
  }
}
