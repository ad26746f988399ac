package hark.trial.campaign;

import hark.ensemble.Cause;

/** Causes that are likelier and earlier than their files say. */
public final class Certain {
  /** As good as one; a cause's probability is below it. */
  public static final double CERTAIN = 1 - 1e-12;

  private Certain() {}

  /** The same cause with another probability and onset. */
  public static Cause cause(Cause cause, double probability, Cause.Onset onset) {
    return new Cause(
        cause.id(),
        cause.title(),
        cause.branch(),
        probability,
        onset,
        cause.effects(),
        cause.clearsOn(),
        cause.mechanism(),
        cause.signature(),
        cause.sources());
  }
}
