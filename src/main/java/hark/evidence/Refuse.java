package hark.evidence;

import java.time.Instant;
import java.util.OptionalDouble;

/** Refusals shared by the records of this room. */
final class Refuse {
  private Refuse() {}

  static void backwards(Instant from, Instant to) {
    if (to.isBefore(from)) {
      throw new IllegalArgumentException("a window from " + from + " to " + to);
    }
  }

  static void notFinite(String what, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(what + " " + value + " is not a number");
    }
  }

  static void notFinite(String what, OptionalDouble value) {
    value.ifPresent(v -> notFinite(what, v));
  }

  static void notPositive(String what, OptionalDouble value) {
    if (value.isPresent() && !(value.getAsDouble() > 0 && Double.isFinite(value.getAsDouble()))) {
      throw new IllegalArgumentException(what + " " + value.getAsDouble() + " is not positive");
    }
  }

  static void negative(String what, OptionalDouble value) {
    if (value.isPresent() && !(value.getAsDouble() >= 0 && Double.isFinite(value.getAsDouble()))) {
      throw new IllegalArgumentException(what + " " + value.getAsDouble() + " is negative");
    }
  }

  static void outside(String what, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          what + " " + value + " is outside [" + least + ", " + most + "]");
    }
  }

  static void blank(String what, String text) {
    if (text.isBlank()) {
      throw new IllegalArgumentException(what + " is empty");
    }
  }
}
