package hark.ensemble;

import hark.evidence.Source;

/**
 * Word that one object is ours, or is not.
 *
 * @param object index of the candidate
 * @param ifIt chance of the word when that object is ours
 * @param ifNot chance of the word when another is
 */
record Verdict(int entry, int object, double ifIt, double ifNot) implements NodeClue {
  /**
   * Word from a source, among so many candidates. A source that errs names any of the others alike.
   */
  static Verdict of(int entry, int object, boolean confirmed, Source source, int candidates) {
    double right = right(source);
    double wrong = (1 - right) / Math.max(1, candidates - 1);
    return confirmed
        ? new Verdict(entry, object, right, wrong)
        : new Verdict(entry, object, 1 - right, right);
  }

  /**
   * How often each source is right. Judged: a neighbour knows its own and rules one out; a curve
   * can be that of a neighbour's beacon; the first identifications after a shared launch are often
   * exchanged.
   */
  private static double right(Source source) {
    return switch (source) {
      case NEIGHBOUR -> 0.97;
      case DOPPLER -> 0.95;
      case CATALOGUE, OPERATOR -> 0.9;
      case HEARSAY -> 0.8;
    };
  }

  @Override
  public double likelihood(HearingNodes nodes, int node) {
    return nodes.object()[node] == object ? ifIt : ifNot;
  }
}
