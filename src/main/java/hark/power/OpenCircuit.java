package hark.power;

import java.util.List;

/**
 * Open-circuit voltage of a pack against its state of charge, piecewise linear, both ways. Outside
 * 0…1 the first and the last piece go on, so that an emptied cell falls on instead of holding its
 * last voltage.
 */
public final class OpenCircuit {
  private static final int BUCKETS = 64;

  private final double[] soc;
  private final double[] volts;
  private final double[] slope;

  /** Integral of volts over state of charge up to each row, V. */
  private final double[] integral;

  /** The piece in which each 64th of the range begins: makes the look-up a step or two. */
  private final int[] pieceOfBucket = new int[BUCKETS + 1];

  /**
   * @param rows (state of charge 0…1, volts a cell), rising in both, the first at 0 and the last at
   *     1
   * @param series cells in series, which multiply the volts
   */
  public OpenCircuit(List<double[]> rows, int series) {
    requireTable(rows);
    int n = rows.size();
    soc = rows.stream().mapToDouble(row -> row[0]).toArray();
    volts = rows.stream().mapToDouble(row -> row[1] * series).toArray();
    slope = new double[n - 1];
    integral = new double[n];
    for (int i = 0; i + 1 < n; i++) {
      double width = soc[i + 1] - soc[i];
      slope[i] = (volts[i + 1] - volts[i]) / width;
      integral[i + 1] = integral[i] + width * (volts[i] + volts[i + 1]) / 2;
    }
    int piece = 0;
    for (int b = 0; b <= BUCKETS; b++) {
      while (piece + 2 < n && soc[piece + 1] <= (double) b / BUCKETS) {
        piece++;
      }
      pieceOfBucket[b] = piece;
    }
  }

  /**
   * Volts a cell of chemistry {@code li_ion_nca}, a 4.2 V cell: the open-circuit table of the
   * Modelica Standard Library's battery example, there given as a fraction of 4.2 V.
   */
  public static List<double[]> liIonNca() {
    double[] charge = {0, .05, .10, .20, .30, .40, .50, .60, .70, .80, .90, 1};
    double[] share = {
      .595, .744, .761, .786, .804, .818, .835, .855, .888, .926, .964, 1,
    };
    double[][] rows = new double[charge.length][];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = new double[] {charge[i], 4.2 * share[i]};
    }
    return List.of(rows);
  }

  /** Refuses a table that is too short, not rising, not finite or does not span 0…1. */
  static void requireTable(List<double[]> rows) {
    if (rows.size() < 2) {
      throw new IllegalArgumentException("an open-circuit table needs two rows or more");
    }
    for (int i = 0; i < rows.size(); i++) {
      double[] row = rows.get(i);
      boolean good = row.length == 2 && row[1] > 0 && row[1] < Double.POSITIVE_INFINITY;
      boolean rising = i == 0 || (row[0] > rows.get(i - 1)[0] && row[1] > rows.get(i - 1)[1]);
      if (!good || !rising) {
        throw new IllegalArgumentException(
            "row " + (i + 1) + " of the open-circuit table does not rise in charge and volts");
      }
    }
    double first = rows.get(0)[0];
    double last = rows.get(rows.size() - 1)[0];
    if (first != 0 || last != 1) {
      throw new IllegalArgumentException(
          "the open-circuit table spans " + first + " … " + last + " instead of 0 … 1");
    }
  }

  /** Pack voltage without load at a state of charge, V. */
  public double voltsAt(double stateOfCharge) {
    return voltsIn(pieceAt(stateOfCharge), stateOfCharge);
  }

  /** State of charge at which the pack shows this voltage without load. */
  public double socAt(double packVolts) {
    int piece = 0;
    while (piece + 1 < slope.length && packVolts >= volts[piece + 1]) {
      piece++;
    }
    return soc[piece] + (packVolts - volts[piece]) / slope[piece];
  }

  /** Energy in the pack for each coulomb of its capacity, from empty to a state of charge, J/C. */
  double joulePerCoulomb(double stateOfCharge) {
    int piece = pieceAt(stateOfCharge);
    double into = stateOfCharge - soc[piece];
    return integral[piece] + into * (volts[piece] + voltsIn(piece, stateOfCharge)) / 2;
  }

  /** Index of the linear piece that holds a state of charge. */
  int pieceAt(double stateOfCharge) {
    int bucket = (int) (stateOfCharge * BUCKETS);
    int piece = pieceOfBucket[Math.max(0, Math.min(BUCKETS, bucket))];
    while (piece + 1 < slope.length && stateOfCharge >= soc[piece + 1]) {
      piece++;
    }
    return piece;
  }

  /** As {@link #pieceAt(double)}, begun at a piece near by. */
  int pieceNear(int near, double stateOfCharge) {
    int piece = near;
    while (piece + 1 < slope.length && stateOfCharge >= soc[piece + 1]) {
      piece++;
    }
    while (piece > 0 && stateOfCharge < soc[piece]) {
      piece--;
    }
    return piece;
  }

  /** Pack voltage on a piece, V. */
  double voltsIn(int piece, double stateOfCharge) {
    return volts[piece] + slope[piece] * (stateOfCharge - soc[piece]);
  }

  /** Voltage that a piece would have at a state of charge of 0, V. */
  double offsetOf(int piece) {
    return volts[piece] - slope[piece] * soc[piece];
  }

  /** Lowest state of charge of a piece; the first goes on below. */
  double lowOf(int piece) {
    return piece == 0 ? -Lanes.FAR : soc[piece];
  }

  /** State of charge at which a piece ends; the last goes on above. */
  double highOf(int piece) {
    return piece + 1 == slope.length ? Lanes.FAR : soc[piece + 1];
  }

  /** Volts a unit of state of charge on a piece. */
  double slopeOf(int piece) {
    return slope[piece];
  }

  /** Voltage of the full pack without load, V. */
  double fullVolts() {
    return volts[volts.length - 1];
  }
}
