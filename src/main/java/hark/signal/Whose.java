package hark.signal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Whose curves are these? Each suspect is fitted with one lateness, a carrier and a drift for each
 * pass and a clock error for each station, all with their priors; its evidence is what remains when
 * those are integrated out (Laplace), and the suspects' weights follow by Bayes.
 *
 * <p>Pure and deterministic. Not modelled: a transmitter that jumps in frequency within a pass, and
 * two objects in one curve.
 */
public final class Whose {
  /** Points that every suspect misses by more than this are set aside. */
  private static final double OUTLIER_SD = 5;

  /** No more than so many points are set aside: more are no longer a few bad ones. */
  private static final int MOST_SET_ASIDE = 8;

  /** And no more than one in so many. */
  private static final int LEAST_KEPT_FOR_EACH = 5;

  /** A suspect that weighs less need not explain a point. */
  private static final double HARDLY = 1e-3;

  private final WhoseQuestion question;
  private final List<boolean[]> kept;

  private Whose(WhoseQuestion question) {
    this.question = question;
    this.kept = KeptPoints.all(question.curves());
  }

  /** Answers. */
  public static WhoseAnswer of(WhoseQuestion question) {
    return new Whose(question).answer();
  }

  private WhoseAnswer answer() {
    Points points = Points.of(question, kept);
    List<SuspectFit> fits = fits(points);
    double[] posterior = posterior(fits);
    int most = Math.min(MOST_SET_ASIDE, points.count() / LEAST_KEPT_FOR_EACH);
    for (int round = 0; round < most && setAside(points, fits, posterior); round++) {
      points = Points.of(question, kept);
      fits = fits(points);
      posterior = posterior(fits);
    }
    List<WhoseAnswer.Found> found = new ArrayList<>();
    for (int k = 0; k < fits.size(); k++) {
      found.add(found(k, fits.get(k), posterior[k]));
    }
    return new WhoseAnswer(
        found, setAside(), tail(points, fits, posterior), scale(fits, posterior));
  }

  private List<SuspectFit> fits(Points points) {
    return question.suspects().stream()
        .map(
            suspect ->
                SuspectFit.late(
                    new Motion.Late(suspect, question.earth(), points.start()), question, points))
        .toList();
  }

  private double[] posterior(List<SuspectFit> fits) {
    double[] logs = new double[fits.size()];
    for (int k = 0; k < logs.length; k++) {
      logs[k] = Math.log(question.suspects().get(k).prior()) + fits.get(k).logEvidence();
    }
    double sum = SuspectFit.LogSum.of(logs);
    return Arrays.stream(logs).map(log -> Math.exp(log - sum)).toArray();
  }

  /**
   * Sets aside the one point that every suspect that counts misses most; true when there was any.
   * One at a time, because a bad point drags the fit away from its neighbours.
   */
  private boolean setAside(Points points, List<SuspectFit> fits, double[] posterior) {
    int worst = -1;
    double worstMiss = OUTLIER_SD;
    for (int i = 0; i < points.count(); i++) {
      double least = Double.POSITIVE_INFINITY;
      for (int k = 0; k < fits.size(); k++) {
        double r = fits.get(k).best().residualHz()[i] / fits.get(k).sigmaHz()[i];
        least = posterior[k] < HARDLY ? least : Math.min(least, Math.abs(r));
      }
      if (least > worstMiss) {
        worst = i;
        worstMiss = least;
      }
    }
    if (worst >= 0) {
      drop(worst);
    }
    return worst >= 0;
  }

  private void drop(int point) {
    int at = 0;
    for (boolean[] flags : kept) {
      for (int i = 0; i < flags.length; i++) {
        if (flags[i] && at++ == point) {
          flags[i] = false;
          return;
        }
      }
    }
  }

  private List<DopplerPoint> setAside() {
    List<DopplerPoint> out = new ArrayList<>();
    for (int c = 0; c < kept.size(); c++) {
      for (int i = 0; i < kept.get(c).length; i++) {
        if (!kept.get(c)[i]) {
          out.add(question.curves().get(c).points().get(i));
        }
      }
    }
    return out;
  }

  private WhoseAnswer.Found found(int k, SuspectFit fit, double posterior) {
    Suspect suspect = question.suspects().get(k);
    CurveFit best = fit.best();
    CurveModel model = fit.model();
    int curves = question.curves().size();
    double[] carrier = new double[curves];
    double[] drift = new double[curves];
    for (int c = 0; c < curves; c++) {
      carrier[c] = model.carrierHz(best.z(), c);
      drift[c] = model.driftHzPerSecond(best.z(), c);
    }
    double[] clock = new double[question.listeners().size()];
    for (int s = 0; s < clock.length; s++) {
      clock[s] = model.clockSeconds(best.z(), s);
    }
    double sd = suspect.lateSdSeconds();
    return new WhoseAnswer.Found(
        suspect.objectId(),
        suspect.prior(),
        posterior,
        best.rmsHz(),
        best.z()[0] * sd,
        best.sd(0) * sd,
        carrier,
        drift,
        clock,
        spread(best.residualHz()));
  }

  /** Residuals by curve and point; NaN where a point was set aside. */
  private List<double[]> spread(double[] residual) {
    List<double[]> byCurve = new ArrayList<>();
    int at = 0;
    for (boolean[] flags : kept) {
      double[] row = new double[flags.length];
      for (int i = 0; i < row.length; i++) {
        row[i] = flags[i] ? residual[at++] : Double.NaN;
      }
      byCurve.add(row);
    }
    return byCurve;
  }

  private static int likeliest(double[] posterior) {
    int best = 0;
    for (int k = 0; k < posterior.length; k++) {
      best = posterior[k] > posterior[best] ? k : best;
    }
    return best;
  }

  /**
   * How badly the likeliest suspect fits, as the chance of worse residuals with the spreads as
   * given; with none given, with twice the spread believed usual.
   */
  private double tail(Points points, List<SuspectFit> fits, double[] posterior) {
    CurveFit best = fits.get(likeliest(posterior)).best();
    double usual = question.noise().medianHz() * question.noise().factor();
    double sum = 0;
    for (int i = 0; i < points.count(); i++) {
      double sigma = points.sigmaHz()[i];
      double r = best.residualHz()[i] / (Double.isNaN(sigma) ? usual : sigma);
      sum += r * r;
    }
    for (double z : best.z()) {
      sum += z * z; // priors count as so many more points, and take as many degrees away
    }
    return 1 - new ChiSquaredDistribution(points.count()).cumulativeProbability(sum);
  }

  private static double scale(List<SuspectFit> fits, double[] posterior) {
    return fits.get(likeliest(posterior)).scaleHz();
  }
}
