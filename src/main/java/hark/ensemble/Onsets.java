package hark.ensemble;

import hark.power.Illumination;
import java.util.List;

/**
 * Onsets of the events of a set, and the weight that makes up for where they were drawn. The first
 * event of a set is drawn where it can matter; a second one half evenly over its whole span,
 * because mostly only one of two explains a silence. When both change the electrical system there
 * are few bodies: half of the groups turn the two round, and the weight is that of the mixture (the
 * balance heuristic of Veach and Guibas, 1995).
 */
final class Onsets {
  private static final double SECOND_EVEN = 0.5;

  private final List<Cause> causes;
  private final OnsetProposal proposal;
  private final Illumination light;
  private final double quietSeconds;

  Onsets(List<Cause> causes, OnsetProposal proposal, Illumination light, double quietSeconds) {
    this.causes = causes;
    this.proposal = proposal;
    this.light = light;
    this.quietSeconds = quietSeconds;
  }

  /**
   * Onsets, s since separation.
   *
   * @param set indices of causes, those that change the electrical system first
   * @param draw index of the body's draw
   */
  double[] of(List<Integer> set, Draws draws, int draw) {
    double[] onsets = new double[set.size()];
    for (int slot = 0; slot < onsets.length; slot++) {
      Cause cause = causes.get(set.get(slot));
      double even = even(set, slot, Draws.groupOf(draw));
      onsets[slot] =
          switch (cause.onset()) {
            case SEPARATION -> 0;
            case UNIFORM, HAZARD -> proposal.onset(draws.at(draw, 2 * slot), even);
            case FIRST_ECLIPSE -> light.nextEntryAfter(0);
            case FIRST_TRANSMISSION -> quietSeconds;
          };
    }
    return onsets;
  }

  /** Share of a slot's onsets that are drawn evenly over the whole span; quantiles below it. */
  double even(List<Integer> set, int slot, int group) {
    boolean turned = bothPowerful(set) && group % 2 == 1;
    return (slot == 1) == turned ? 0 : SECOND_EVEN;
  }

  /** True when both of two events change the electrical system. */
  boolean bothPowerful(List<Integer> set) {
    return set.size() == 2 && set.stream().map(causes::get).allMatch(EventSet::changesPower);
  }

  /** Prior density of the onsets over the density they were drawn from. */
  double importance(List<Integer> set, double[] onsets) {
    double prior = 1;
    double straight = 1;
    double turned = 1;
    for (int slot = 0; slot < onsets.length; slot++) {
      Cause cause = causes.get(set.get(slot));
      if (cause.beginsAnyTime()) {
        double hazard = cause.onset() == Cause.Onset.HAZARD ? cause.probability() : 0;
        prior *= OnsetProposal.prior(onsets[slot], hazard);
        straight *= proposal.density(onsets[slot], slot == 0 ? 0 : SECOND_EVEN);
        turned *= proposal.density(onsets[slot], slot == 1 ? 0 : SECOND_EVEN);
      }
    }
    return prior / (bothPowerful(set) ? 0.5 * (straight + turned) : straight);
  }
}
