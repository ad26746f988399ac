package hark.ensemble;

import java.util.function.IntToDoubleFunction;

/**
 * What a member lets a station meet in a window at each node.
 *
 * @param detect chance that at least one burst is noticed, by node, a failed sitting counted; empty
 *     when nothing can be noticed
 * @param strongest mean level of the strongest burst at a node, dB over noise; NaN when none is
 *     sent; looked up only where it is asked for
 * @param pitch density of a measured frequency at a node
 */
record Reception(double[] detect, IntToDoubleFunction strongest, Pitches pitch) {
  /** Of a station that hears nothing. */
  static final Reception DEAF = new Reception(new double[0], node -> Double.NaN, (p, node) -> 0);

  /** Answers the density of a measured frequency. */
  @FunctionalInterface
  interface Pitches {
    /** Density at a node, 1/Hz. */
    double density(Pitch pitch, int node);
  }

  double detected(int node) {
    return detect.length == 0 ? 0 : detect[node];
  }

  double strongestDb(int node) {
    return strongest.applyAsDouble(node);
  }

  double density(Pitch measured, int node) {
    return pitch.density(measured, node);
  }
}
