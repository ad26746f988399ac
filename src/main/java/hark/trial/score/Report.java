package hark.trial.score;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What campaigns with a known truth say of the diagnosis.
 *
 * @param setGain mean gain of the logarithmic score over the prior, explanations, and its error
 * @param causeGain the same for yes-or-no beliefs of all causes together
 * @param larger campaigns whose truth has more events than the diagnosis names
 * @param floored campaigns whose true set had no weight worth counting
 * @param drawn truths drawn for all campaigns
 * @param neverHeard campaigns in which nothing was heard at all
 * @param behind effective bodies behind the truths' explanations: a tenth of the campaigns have
 *     fewer than the first, half fewer than the second
 * @param misfit share of campaigns whose misfit is below {@value #MISFIT}
 * @param misfitHeard the same among those in which something was heard
 */
public record Report(
    Subject subject,
    int campaigns,
    long drawn,
    int neverHeard,
    int larger,
    int floored,
    Mean setGain,
    Mean causeGain,
    double entries,
    double[] behind,
    double misfit,
    double misfitHeard,
    List<Figure> figures,
    List<Closeness> cases) {
  /** A diagnosis that reports less than this says that nothing explains the evidence well. */
  public static final double MISFIT = 0.05;

  /** What was tried, and the names of things. */
  public record Subject(
      String mission,
      double days,
      long seed,
      String truth,
      int members,
      List<String> causes,
      List<String> numbers,
      List<String> objects,
      List<String> stations) {}

  /** A mean and its standard error. */
  public record Mean(double value, double error) {
    static Mean of(double[] values) {
      double sum = 0;
      double squares = 0;
      for (double value : values) {
        sum += value;
        squares += value * value;
      }
      int n = Math.max(1, values.length);
      double mean = sum / n;
      double variance = Math.max(0, squares / n - mean * mean);
      return new Mean(mean, Math.sqrt(variance / n));
    }
  }

  /** Makes the report. */
  public static Report of(Subject subject, List<Outcome> outcomes, List<Closeness> cases) {
    List<Outcome> heard = outcomes.stream().filter(o -> o.heard() > 0).toList();
    return new Report(
        subject,
        outcomes.size(),
        outcomes.stream().mapToLong(Outcome::drawn).sum(),
        outcomes.size() - heard.size(),
        (int) outcomes.stream().filter(Outcome::isLarger).count(),
        (int) outcomes.stream().filter(Outcome::floored).count(),
        mean(outcomes, Outcome::setGain),
        mean(outcomes, Outcome::causeGain),
        mean(outcomes, Outcome::entries).value(),
        behind(outcomes),
        misfit(outcomes),
        misfit(heard),
        Figures.of(outcomes, subject),
        cases);
  }

  private static double[] behind(List<Outcome> outcomes) {
    double[] rising =
        outcomes.stream()
            .filter(o -> !o.isLarger())
            .mapToDouble(Outcome::behind)
            .sorted()
            .toArray();
    int n = rising.length;
    return n == 0 ? new double[2] : new double[] {rising[n / 10], rising[n / 2]};
  }

  private static Mean mean(List<Outcome> outcomes, ToDoubleFunction<Outcome> number) {
    return Mean.of(outcomes.stream().mapToDouble(number).toArray());
  }

  private static double misfit(List<Outcome> outcomes) {
    return mean(outcomes, o -> o.misfit() < MISFIT ? 1 : 0).value();
  }

  /** Figures outside their bands. */
  public List<Figure> outside() {
    return figures.stream().filter(figure -> !figure.inside()).toList();
  }

  /** Sum of the gains of the fixed cases over that of the large sample; NaN without cases. */
  public double gainAgainstLarge() {
    double usual = cases.stream().mapToDouble(Closeness::causeGain).sum();
    double large = cases.stream().mapToDouble(Closeness::largeCauseGain).sum();
    return cases.isEmpty() ? Double.NaN : usual / large;
  }

  /** The same by event sets. */
  public double setGainAgainstLarge() {
    double usual = cases.stream().mapToDouble(Closeness::setGain).sum();
    double large = cases.stream().mapToDouble(Closeness::largeSetGain).sum();
    return cases.isEmpty() ? Double.NaN : usual / large;
  }
}
