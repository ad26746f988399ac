package hark.ensemble;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Does any member explain the evidence? A posterior predictive check: each entry is compared with
 * what the members that still count expect of it, heard or not, and the numbers told. The tail
 * probability is the share of imagined records, drawn from those expectations, that are at least as
 * surprising as the real one. Small means: look for what the model lacks. A fault that was unlikely
 * beforehand is no misfit.
 */
final class Misfit {
  private static final int IMAGINED = 4000;
  private static final double LEAST = 1e-300;

  private Misfit() {}

  /** Predictive tail probability of the whole record, 0…1; 1 without evidence. */
  static double tail(
      Population population,
      Weighing weighing,
      double[] memberWeight,
      List<Clue> clues,
      long seed) {
    double[] chance = byClue(population, weighing, memberWeight, clues);
    double real = 0;
    for (double p : chance) {
      real -= Math.log(Math.max(LEAST, p));
    }
    SplittableRandom random = new SplittableRandom(seed + 0x5eed);
    int atLeast = 0;
    for (int draw = 0; draw < IMAGINED; draw++) {
      double imagined = 0;
      for (int c = 0; c < chance.length; c++) {
        double u = random.nextDouble();
        imagined -=
            Math.log(isNumber(clues.get(c)) ? u : u < chance[c] ? chance[c] : 1 - chance[c]);
      }
      atLeast += imagined >= real - 1e-12 ? 1 : 0;
    }
    return (double) atLeast / IMAGINED;
  }

  /**
   * What was expected of each clue by the members that count, all evidence weighed: the chance of
   * its outcome, or for numbers the two-sided tail. Of several numbers in one frame the least
   * likely counts, times their number.
   */
  static double[] byClue(
      Population population, Weighing weighing, double[] memberWeight, List<Clue> clues) {
    double[] chance = new double[clues.size()];
    for (int c = 0; c < chance.length; c++) {
      chance[c] =
          isNumber(clues.get(c))
              ? numbersTail(population, memberWeight, (BodyClue) clues.get(c))
              : expected(memberWeight, weighing.outcome[c], weighing.prefix[c]);
    }
    return chance;
  }

  private static boolean isNumber(Clue clue) {
    return clue instanceof BodyClue told && told.numbers() > 0;
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

  private static double numbersTail(Population population, double[] memberWeight, BodyClue clue) {
    double least = 1;
    for (int number = 0; number < clue.numbers(); number++) {
      least = Math.min(least, tail(population, memberWeight, clue, number));
    }
    return Math.min(1, clue.numbers() * least);
  }

  /** Two-sided tail of one number among the members' own. */
  private static double tail(
      Population population, double[] memberWeight, BodyClue clue, int number) {
    double total = 0;
    double below = 0;
    for (int m = 0; m < memberWeight.length; m++) {
      if (memberWeight[m] > 0) {
        Member member = population.members.get(m);
        double share = clue.below(number, member, population.bodies.get(member.body()));
        total += Double.isNaN(share) ? 0 : memberWeight[m];
        below += Double.isNaN(share) ? 0 : memberWeight[m] * share;
      }
    }
    double share = total > 0 ? below / total : 0;
    return Math.max(LEAST, 2 * Math.min(share, 1 - share));
  }
}
