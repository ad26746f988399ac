package hark.signal;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.hipparchus.special.Erf;

/**
 * What start and end of a contact say by themselves: a signal is heard some time after its object
 * rose and no longer when it has set. The wait at either end is taken as exponential, the edge
 * itself as soft as skyline and clock leave it. Weak where candidates rise seconds apart, decisive
 * where one was not up. Pure.
 */
public final class ContactTimes {
  /** Fades and weak first minutes: so long on average, beside the wait for a burst. Judged. */
  private static final double USUAL_WAIT_SECONDS = 60;

  /** Something else was taken for the signal, at any time of a day. Judged. */
  private static final double STRANGE = 1e-3 / (86400.0 * 86400.0);

  private static final int STEPS_EACH_SIDE = 60;
  private static final double REACH_SD = 5;

  private ContactTimes() {}

  /** First and last sound. */
  public record Contact(Instant first, Instant last) {
    /** Refuses an end before the start. */
    public Contact {
      if (last.isBefore(first)) {
        throw new IllegalArgumentException("a contact ends before it begins: " + last);
      }
    }
  }

  /**
   * When an object is over the skyline, as its elements have it.
   *
   * @param aosSdSeconds softness of the first edge: how long the object takes to climb through what
   *     is not known of the skyline
   * @param losSdSeconds of the last
   */
  public record View(Instant aos, Instant los, double aosSdSeconds, double losSdSeconds) {}

  /**
   * Natural logarithm of the chance of start and end, per square second, with lateness summed out.
   *
   * @param views of the object over the station near the contact; none when it was not up
   * @param lateSdSeconds spread of its lateness, the station's clock included
   * @param burstSeconds between bursts
   */
  public static double logLikelihood(
      Contact contact, List<View> views, double lateSdSeconds, double burstSeconds) {
    double wait = USUAL_WAIT_SECONDS + burstSeconds;
    double sum = 0;
    for (View view : views) {
      double risen = seconds(view.aos(), contact.first());
      double left = seconds(contact.last(), view.los());
      double weights = 0;
      double inside = 0;
      for (int k = -STEPS_EACH_SIDE; k <= STEPS_EACH_SIDE; k++) {
        double z = REACH_SD * k / STEPS_EACH_SIDE;
        double late = z * lateSdSeconds;
        double weight = Math.exp(-0.5 * z * z);
        weights += weight;
        inside +=
            weight
                * waited(risen - late, wait, view.aosSdSeconds())
                * waited(left + late, wait, view.losSdSeconds());
      }
      sum += inside / weights;
    }
    return Math.log(STRANGE + sum);
  }

  private static double seconds(Instant from, Instant to) {
    return Duration.between(from, to).toMillis() / 1e3;
  }

  /** Density of an exponential wait behind an edge that is soft by a normal spread. */
  private static double waited(double seconds, double mean, double s) {
    double exponent = s * s / (2 * mean * mean) - seconds / mean;
    double tail = Erf.erfc((s / mean - seconds / s) / Math.sqrt(2));
    return Math.exp(exponent) * tail / (2 * mean);
  }

  /** Weights after the contacts, from those before and each suspect's logarithms. */
  public static double[] posterior(double[] prior, double[] logLikelihood) {
    double[] logs = new double[prior.length];
    for (int k = 0; k < logs.length; k++) {
      logs[k] = Math.log(prior[k]) + logLikelihood[k];
    }
    double sum = SuspectFit.LogSum.of(logs);
    double[] posterior = new double[logs.length];
    for (int k = 0; k < logs.length; k++) {
      posterior[k] = Math.exp(logs[k] - sum);
    }
    return posterior;
  }
}
