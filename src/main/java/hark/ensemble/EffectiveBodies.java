package hark.ensemble;

import java.util.HashMap;
import java.util.Map;

/** How many different bodies stand behind a weight; members and hearings of one body count once. */
final class EffectiveBodies {
  private EffectiveBodies() {}

  /** (Σw)²/Σw² over the bodies of each event set; 0 for a set without weight. */
  static double[] bySet(Population population, double[] memberWeight) {
    int sets = population.sets.size();
    Map<Long, Double> weights = new HashMap<>();
    for (int m = 0; m < memberWeight.length; m++) {
      Member member = population.members.get(m);
      long place = (long) member.body() * sets + member.set();
      weights.merge(place, memberWeight[m], Double::sum);
    }
    double[] sums = new double[sets];
    double[] squares = new double[sets];
    weights.forEach(
        (place, weight) -> {
          int set = (int) (place % sets);
          sums[set] += weight;
          squares[set] += weight * weight;
        });
    for (int s = 0; s < sets; s++) {
      sums[s] = squares[s] > 0 ? sums[s] * sums[s] / squares[s] : 0;
    }
    return sums;
  }
}
