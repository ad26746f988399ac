package hark.plan;

/**
 * Weighted possibilities of one half of the ensemble: what each lets every window hear under every
 * move. Weights may be negative: a possibility that received a command is one row more, and the
 * same one without it is one row less.
 */
final class Rows {
  /** Chance to hear by row of the source, for a working station and no slip. */
  @FunctionalInterface
  interface Heard {
    /** By row; null when this move hears nothing. */
    float[] at(int window, int move);

    /** How much more is heard once a question is settled, by row; null when nothing more. */
    default float[] better(Procedure.Question question, int window) {
      return null;
    }
  }

  private final double[] weight;
  private final double[][] works;
  private final Heard heard;
  private final int first;
  private final int stride;
  private final int count;

  /** All rows of a source. */
  Rows(double[] weight, double[][] works, Heard heard) {
    this(weight, works, heard, 0, 1);
  }

  /** Every {@code stride}-th row of a source from {@code first}. */
  Rows(double[] weight, double[][] works, Heard heard, int first, int stride) {
    this.weight = weight;
    this.works = works;
    this.heard = heard;
    this.first = first;
    this.stride = stride;
    count = Math.max(0, (weight.length - first + stride - 1) / stride);
  }

  int count() {
    return count;
  }

  /** Place of a row in the source. */
  int place(int row) {
    return first + row * stride;
  }

  double weight(int row) {
    return weight[place(row)];
  }

  double[] works(int row) {
    return works[place(row)];
  }

  /** By place in the source; null when this move hears nothing. */
  float[] heard(int window, int move) {
    return heard.at(window, move);
  }

  /** By place in the source; null when nothing more is heard. */
  float[] better(Procedure.Question question, int window) {
    return heard.better(question, window);
  }

  /** The same possibilities with other weights, by place in the source. */
  Rows weighed(double[] other) {
    return new Rows(other, works, heard, first, stride);
  }
}
