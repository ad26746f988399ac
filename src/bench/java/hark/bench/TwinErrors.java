package hark.bench;

import hark.power.Bodies;
import hark.trial.PlainHistory;
import hark.trial.TwinComparison;
import hark.trial.TwinComparison.Edge;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Errors of one length of steps over all bodies of the bench. */
final class TwinErrors {
  /** More boots a day than this is a storm. */
  private static final double STORM_BOOTS_A_DAY = 20;

  private final double days;
  private final double gridSeconds;

  TwinErrors(double days, double gridSeconds) {
    this.days = days;
    this.gridSeconds = gridSeconds;
  }

  private final List<Double> together = new ArrayList<>();
  private final List<Double> fastPhases = new ArrayList<>();
  private final List<Double> plainPhases = new ArrayList<>();
  private final double[] fastOn = new double[2];
  private final double[] plainOn = new double[2];
  private int all;

  @SuppressWarnings("EnumOrdinal") // the history promises ordinals
  void add(TwinComparison pair, PlainHistory truth) {
    boolean storm = truth.boots() > STORM_BOOTS_A_DAY * days;
    int which = storm ? 1 : 0;
    fastOn[which] += pair.fastOn();
    plainOn[which] += pair.plainOn();
    phases(pair.fastEdges(), fastPhases);
    phases(pair.plainEdges(), plainPhases);
    if (storm) {
      return;
    }
    int changes = 0;
    boolean one = true;
    for (int g = 0; g < pair.fast().soc().length; g++) {
      boolean same = pair.fast().states()[g] == truth.states().get(g).ordinal();
      // once a switch has come orbits apart, the two lives are two lives
      changes = same ? 0 : changes + 1;
      one &= changes * gridSeconds < 1800;
      all++;
      if (one) {
        together.add(Math.abs(pair.fast().soc()[g] - truth.soc()[g]));
      }
    }
  }

  private static void phases(List<Edge> edges, List<Double> into) {
    edges.forEach(edge -> into.add(edge.seconds() % Bodies.ORBIT_SECONDS));
  }

  double quantile(double share) {
    double[] sorted = together.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    return sorted[(int) Math.min(sorted.length - 1, share * sorted.length)];
  }

  double togetherShare() {
    return (double) together.size() / all;
  }

  double onExcess(boolean storm) {
    int which = storm ? 1 : 0;
    return fastOn[which] / plainOn[which] - 1;
  }

  /** Greatest distance of the two distributions of edges over the orbit (Kolmogorov, Smirnov). */
  double edgeDistance() {
    double[] a = fastPhases.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    double[] b = plainPhases.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    double worst = 0;
    for (double phase = 0; phase <= Bodies.ORBIT_SECONDS; phase += 10) {
      worst = Math.max(worst, Math.abs(below(a, phase) - below(b, phase)));
    }
    return worst;
  }

  private static double below(double[] sorted, double value) {
    return (double) Arrays.stream(sorted).filter(x -> x <= value).count() / sorted.length;
  }
}
