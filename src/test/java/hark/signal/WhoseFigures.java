package hark.signal;

import java.io.PrintStream;
import java.util.stream.IntStream;

/**
 * How often {@link Whose} is right on simulated curves, how well its weights are calibrated, and
 * how near its spreads come to the Cramér–Rao bound. A program, not a test: the figures it prints
 * stand in the documentation.
 */
public final class WhoseFigures {
  private WhoseFigures() {}

  /** Counts over many cases. */
  record Figures(
      int cases,
      double rightAndSure,
      double wrongAndSure,
      double abstains,
      double meanLogScore,
      double meanPosteriorOfTruth,
      double offsetErrorOverSpread) {}

  /**
   * Runs cases with consecutive seeds.
   *
   * @return shares, the mean natural logarithm of the weight given to the truth, and the root mean
   *     square of offset error over the spread reported (1 when spreads are true)
   */
  static Figures run(NeighbourCase.Setting set, int cases, long firstSeed) {
    double[][] rows =
        IntStream.range(0, cases)
            .parallel()
            .mapToObj(i -> row(NeighbourCase.draw(set, firstSeed + i)))
            .toArray(double[][]::new);
    double[] mean = new double[6];
    for (double[] row : rows) {
      for (int k = 0; k < mean.length; k++) {
        mean[k] += row[k] / cases;
      }
    }
    return new Figures(cases, mean[0], mean[1], mean[2], mean[3], mean[4], Math.sqrt(mean[5]));
  }

  private static double[] row(NeighbourCase drawn) {
    WhoseAnswer answer = Whose.of(drawn.question);
    WhoseAnswer.Found truth = answer.found().get(drawn.truth);
    boolean sure = answer.verdict() == WhoseAnswer.Verdict.FOUND;
    boolean right = answer.likeliest() == truth;
    double miss = (truth.lateSeconds() - drawn.lateSeconds) / truth.lateSdSeconds();
    return new double[] {
      sure && right ? 1 : 0,
      sure && !right ? 1 : 0,
      sure ? 0 : 1,
      Math.log(Math.max(1e-12, truth.posterior())),
      truth.posterior(),
      miss * miss
    };
  }

  /** Prints the table of the documentation. */
  public static void main(String[] args) {
    PrintStream out = System.out;
    int cases = args.length > 0 ? Integer.parseInt(args[0]) : 200;
    out.println(
        "| spacing s | noise Hz | passes | right, sure | wrong, sure | abstains | ln score"
            + " | weight of truth | offset error / spread |");
    out.println("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    for (double spacing : new double[] {1, 3, 10, 20}) {
      for (double noise : new double[] {60, 100}) {
        for (int passes : new int[] {1, 3}) {
          NeighbourCase.Setting set =
              new NeighbourCase.Setting(12, spacing, 1.5, 1, noise, passes, 30);
          long start = System.nanoTime();
          Figures f = run(set, cases, 1_000);
          out.printf(
              "| %.0f | %.0f | %d | %.3f | %.3f | %.3f | %.3f | %.3f | %.2f | %.1f |%n",
              spacing,
              noise,
              passes,
              f.rightAndSure(),
              f.wrongAndSure(),
              f.abstains(),
              f.meanLogScore(),
              f.meanPosteriorOfTruth(),
              f.offsetErrorOverSpread(),
              (System.nanoTime() - start) / 1e9);
        }
      }
    }
  }
}
