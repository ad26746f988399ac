package hark.ensemble;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Does any member explain the evidence? A posterior predictive check: each entry is compared with
 * what the members that still count expect of it, heard or not, and the telemetered voltage. The
 * tail probability is the share of imagined records, drawn from those expectations, that are at
 * least as surprising as the real one. Small means: look for what the model lacks. A fault that was
 * unlikely beforehand is no misfit.
 */
final class Misfit {
  private static final int IMAGINED = 4000;

  private Misfit() {}

  /** Predictive tail probability, 0…1; 1 without evidence. */
  static double tail(
      Population population,
      Weighing weighing,
      double[] memberWeight,
      List<Clue> clues,
      long seed) {
    double[] chance = new double[clues.size()];
    for (int c = 0; c < chance.length; c++) {
      chance[c] =
          clues.get(c) instanceof Volts volts
              ? voltageTail(population, memberWeight, volts)
              : expected(memberWeight, weighing.outcome[c], weighing.prefix[c]);
    }
    double real = 0;
    for (double p : chance) {
      real -= Math.log(Math.max(1e-300, p));
    }
    SplittableRandom random = new SplittableRandom(seed + 0x5eed);
    int atLeast = 0;
    for (int draw = 0; draw < IMAGINED; draw++) {
      double imagined = 0;
      for (int c = 0; c < chance.length; c++) {
        double u = random.nextDouble();
        boolean continuous = clues.get(c) instanceof Volts;
        imagined -= Math.log(continuous ? u : u < chance[c] ? chance[c] : 1 - chance[c]);
      }
      atLeast += imagined >= real - 1e-12 ? 1 : 0;
    }
    return (double) atLeast / IMAGINED;
  }

  private static double expected(double[] memberWeight, double[] outcome, double[] before) {
    double sum = 0;
    double total = 0;
    for (int m = 0; m < before.length; m++) {
      if (before[m] > 0) {
        sum += memberWeight[m] * outcome[m] / before[m];
        total += memberWeight[m];
      }
    }
    return total > 0 ? Math.min(1, sum / total) : 0;
  }

  /** Two-sided tail of the telemetered voltage among the members' voltages. */
  private static double voltageTail(Population population, double[] memberWeight, Volts clue) {
    double total = 0;
    double below = 0;
    for (int m = 0; m < memberWeight.length; m++) {
      Body body = population.bodies.get(population.members.get(m).body());
      double volts = body.history().probes().get(clue.probe()).volts();
      if (Double.isNaN(volts)) {
        continue;
      }
      double sd = clue.spread(body);
      double weight = memberWeight[m];
      total += weight;
      below += weight * hark.link.NormalCurve.below((clue.volts() - volts) / sd);
    }
    double share = total > 0 ? below / total : 0;
    return Math.max(1e-300, 2 * Math.min(share, 1 - share));
  }
}
