package hark.power;

/** Refusals shared by the records of this room. Each refuses NaN. */
final class Check {
  private Check() {}

  static void finite(String what, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(what + " " + value + " is not a number");
    }
  }

  static void positive(String what, double value) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(what + " " + value + " is not positive");
    }
  }

  static void notNegative(String what, double value) {
    if (!(value >= 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(what + " " + value + " is negative or not a number");
    }
  }

  /** A share, 0…1. */
  static void share(String what, double value) {
    if (!(value >= 0 && value <= 1)) {
      throw new IllegalArgumentException(what + " " + value + " is outside [0, 1]");
    }
  }

  /** Three parts with a length; answers the unit vector. */
  static double[] direction(String what, double[] vector) {
    if (vector.length != 3) {
      throw new IllegalArgumentException(what + " has " + vector.length + " parts instead of 3");
    }
    double length = Math.hypot(Math.hypot(vector[0], vector[1]), vector[2]);
    positive("length of the " + what, length);
    return new double[] {vector[0] / length, vector[1] / length, vector[2] / length};
  }

  static void ordered(String what, double low, String than, double high) {
    if (!(low <= high)) {
      throw new IllegalArgumentException(what + " " + low + " is above " + than + " " + high);
    }
  }

  static void rising(String what, double[] values) {
    for (int i = 0; i < values.length; i++) {
      if (!(values[i] >= (i == 0 ? 0 : values[i - 1])) || values[i] == Double.POSITIVE_INFINITY) {
        throw new IllegalArgumentException(
            what + " " + values[i] + " s is negative or before the one in front of it");
      }
    }
  }
}
