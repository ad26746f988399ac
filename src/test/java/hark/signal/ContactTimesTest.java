package hark.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Start and end of contacts drawn by the rule they are weighed by, and by plain cases. */
class ContactTimesTest {
  private static final Instant AOS = Instant.parse("2026-10-06T09:39:00Z");

  private static ContactTimes.View view(double late) {
    return new ContactTimes.View(plus(AOS, late), plus(AOS, late + 540), 4, 4);
  }

  private static Instant plus(Instant time, double seconds) {
    return time.plusMillis(Math.round(1000 * seconds));
  }

  private static double log(double first, double last, double late) {
    return ContactTimes.logLikelihood(
        new ContactTimes.Contact(plus(AOS, first), plus(AOS, last)), List.of(view(late)), 2, 30);
  }

  @Test
  void itIsADensityOfStartAndEnd() {
    double sum = 0;
    double step = 5;
    for (double first = -30; first < 1200; first += step) {
      for (double last = 570; last > -700; last -= step) {
        if (last >= first) {
          sum += Math.exp(log(first, last, 0)) * step * step;
        }
      }
    }
    // what is missing would begin after its end: two waits of 90 s mean together more than 540 s
    double bothWaits = (1 + 6) * Math.exp(-6);
    assertEquals(1 - bothWaits, sum, 0.02);
  }

  @Test
  void whoWasNotUpIsRuledOutAndWhoRoseLittleLaterIsNot() {
    double heard = log(20, 500, 0);
    assertTrue(heard - log(20, 500, 120) > 5, "rose 100 s after the first sound");
    assertTrue(heard - log(20, 500, -120) > 5, "had set 80 s before the last");
    assertTrue(Math.abs(heard - log(20, 500, 5)) < 0.3, "5 s say next to nothing");
    double away =
        ContactTimes.logLikelihood(
            new ContactTimes.Contact(plus(AOS, 20), plus(AOS, 500)), List.of(), 2, 30);
    assertTrue(heard - away > 10);
  }

  @Test
  void overManyContactsWeightsAreTrue() {
    SplittableRandom random = new SplittableRandom(7);
    double[] prior = {0.25, 0.25, 0.25, 0.25};
    double score = 0;
    double brier = 0;
    int cases = 2000;
    for (int i = 0; i < cases; i++) {
      int truth = random.nextInt(4);
      double late = 30 * truth + 2 * gaussian(random);
      double first = late + 4 * gaussian(random) - 90 * Math.log(1 - random.nextDouble());
      double last = late + 540 + 4 * gaussian(random) + 90 * Math.log(1 - random.nextDouble());
      if (last < first) {
        continue;
      }
      double[] logs = new double[4];
      for (int k = 0; k < 4; k++) {
        logs[k] = log(first, last, 30 * k);
      }
      double[] posterior = ContactTimes.posterior(prior, logs);
      score += posterior[truth];
      for (double p : posterior) {
        brier += p * p;
      }
    }
    // for true weights the mean weight of the truth is the mean of the weights' squares
    assertEquals(brier / cases, score / cases, 0.02);
    assertTrue(score / cases > 0.27, "more than nothing is learned: " + score / cases);
  }

  private static double gaussian(SplittableRandom random) {
    return Math.sqrt(-2 * Math.log(1 - random.nextDouble()))
        * Math.cos(2 * Math.PI * random.nextDouble());
  }
}
