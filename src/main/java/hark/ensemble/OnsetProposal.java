package hark.ensemble;

import hark.evidence.Evidence;
import java.util.Arrays;

/**
 * Where an event's onset is drawn, and the weight that makes up for it. Onsets of events that may
 * happen at any time are proposed where they can matter, after the last reception and around the
 * first silences, while a tenth of the prior is kept over its whole range. Seconds since
 * separation.
 */
final class OnsetProposal {
  /** Events happen within so many days of separation. */
  static final double SPAN_SECONDS = 30 * 86400.0;

  private static final double KEPT_PRIOR = 0.1;

  /** Shares before and after the last time that matters, where nothing else is known. */
  private static final double[] UNTIL = {0.9, 0.1};

  private final double[] edges;
  private final double[] density;
  private final double[] cumulative;

  /**
   * A proposal from the times that matter.
   *
   * @param lastHeardSeconds last reception; the end of quiet time when nothing was ever heard
   * @param silences starts of the windows listened to in vain after it, rising
   * @param nowSeconds the present
   */
  OnsetProposal(double lastHeardSeconds, double[] silences, double nowSeconds) {
    double now = inside(nowSeconds, 4);
    double heard = Math.min(inside(lastHeardSeconds, 1), now - 2);
    double first =
        between(heard + 1, silences.length > 0 ? silences[0] : 0.5 * (heard + now), now - 1);
    double third =
        between(first + 0.5, silences.length > 2 ? silences[2] : 0.5 * (first + now), now - 0.5);
    edges = new double[] {0, heard, first, third, now, SPAN_SECONDS};
    // shares judged by how often such an onset explains a silence; any positive shares give the
    // right answer
    double[] share = {0.15, 0.40, 0.15, 0.18, 0.12};
    density = new double[share.length];
    cumulative = new double[edges.length];
    fill(share);
  }

  private OnsetProposal(double untilSeconds) {
    edges = new double[] {0, inside(untilSeconds, 1), SPAN_SECONDS};
    density = new double[UNTIL.length];
    cumulative = new double[edges.length];
    fill(UNTIL);
  }

  /**
   * Evenly up to a time, thinner after it, whatever the evidence is.
   *
   * @param untilSeconds the last time that anybody will ask about
   */
  static OnsetProposal evenUntil(double untilSeconds) {
    return new OnsetProposal(untilSeconds);
  }

  private void fill(double[] share) {
    for (int k = 0; k < share.length; k++) {
      double width = edges[k + 1] - edges[k];
      density[k] = (1 - KEPT_PRIOR) * share[k] / width + KEPT_PRIOR / SPAN_SECONDS;
      cumulative[k + 1] = cumulative[k] + density[k] * width;
    }
  }

  /** The proposal that the record asks for. */
  static OnsetProposal of(DiagnosisInput input) {
    double heard =
        Diagnosis.lastHeard(input)
            .map(input::seconds)
            .orElse(input.body().typical().quietSeconds());
    double[] silences =
        input.evidence().stream()
            .filter(entry -> entry.evidence() instanceof Evidence.NothingHeard)
            .mapToDouble(entry -> input.seconds(entry.evidence().at()))
            .filter(seconds -> seconds > heard)
            .sorted()
            .toArray();
    return new OnsetProposal(heard, silences, input.seconds(input.now()));
  }

  private static double inside(double seconds, double margin) {
    return between(margin, seconds, SPAN_SECONDS - margin);
  }

  private static double between(double low, double value, double high) {
    return Math.max(low, Math.min(high, value));
  }

  /**
   * The onset at quantile {@code u}, s.
   *
   * @param even share of onsets drawn evenly over the whole span instead, 0…1
   */
  double onset(double u, double even) {
    if (u < even) {
      return SPAN_SECONDS * u / even;
    }
    double target = (u - even) / (1 - even) * cumulative[cumulative.length - 1];
    int found = Arrays.binarySearch(cumulative, target);
    int k = Math.min(density.length - 1, Math.max(0, found >= 0 ? found : -found - 2));
    return edges[k] + (target - cumulative[k]) / density[k];
  }

  /** Density of {@link #onset}, per second. */
  double density(double onsetSeconds, double even) {
    int k = density.length - 1;
    while (k > 0 && onsetSeconds < edges[k]) {
      k--;
    }
    double guided = density[k] / cumulative[cumulative.length - 1];
    return (1 - even) * guided + even / SPAN_SECONDS;
  }

  /**
   * Density of the prior given that the event happens, per second.
   *
   * @param probability of the event within the span, for a constant hazard; 0 for an even spread
   */
  static double prior(double onsetSeconds, double probability) {
    if (probability <= 0) {
      return 1 / SPAN_SECONDS;
    }
    double rate = -Math.log1p(-probability) / SPAN_SECONDS;
    return rate * Math.exp(-rate * onsetSeconds) / probability;
  }
}
