package hark.ensemble;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Hearings drawn whatever the evidence is, more of them where silence would be bad luck (a weak
 * transmitter, an object far off its prediction) with weights that make up for it. Each object has
 * the same numbers, so that differences between objects are those of geometry. All groups together
 * are stratified in each number, and each group is by itself.
 */
final class PlainNodes {
  private static final double WIDER = 2;
  private static final double LOW = 3;

  private final DiagnosisInput input;
  private final int groups;
  private final int each;

  /** So many groups of hearings with so many nodes for each object. */
  PlainNodes(DiagnosisInput input, int groups, int each) {
    this.input = input;
    this.groups = groups;
    this.each = each;
  }

  HearingNodes[] draw() {
    SplittableRandom random = new SplittableRandom(input.seed() * 7_368_787L + 13);
    int stations = input.stations().size();
    double[][][] numbers = new double[3 + 2 * stations][][];
    for (int d = 0; d < numbers.length; d++) {
      numbers[d] = stratified(random.split());
    }
    HearingNodes[] nodes = new HearingNodes[groups];
    for (int g = 0; g < groups; g++) {
      nodes[g] = HearingNodes.room(input.candidates().size() * each, stations);
      for (int n = 0; n < nodes[g].count(); n++) {
        fill(nodes[g], n, g, numbers);
      }
      settle(nodes[g]);
    }
    return nodes;
  }

  private void fill(HearingNodes nodes, int n, int group, double[][][] numbers) {
    int object = n / each;
    int k = n % each;
    nodes.object()[n] = object;
    double z = alongTrack(numbers[0][group][k]);
    double power = power(numbers[1][group][k]);
    nodes.weight()[n] = 1 / (alongTrackDensity(z) * powerDensity(power));
    nodes.alongTrackZ()[n] = z;
    nodes.powerQuantile()[n] = power;
    nodes.frequencyQuantile()[n] = numbers[2][group][k];
    for (int s = 0; s < nodes.clockZ().length; s++) {
      nodes.clockZ()[s][n] = Uncertain.StandardNormal.quantile(numbers[3 + 2 * s][group][k]);
      nodes.azimuthZ()[s][n] = Uncertain.StandardNormal.quantile(numbers[4 + 2 * s][group][k]);
    }
  }

  /** Every object keeps its prior. */
  private void settle(HearingNodes nodes) {
    for (int first = 0; first < nodes.count(); first += each) {
      double sum = Arrays.stream(nodes.weight(), first, first + each).sum();
      for (int n = first; n < first + each; n++) {
        nodes.weight()[n] *= input.candidates().get(nodes.object()[n]).prior() / sum;
      }
    }
  }

  /** Half from the prior, half twice as wide. */
  private static double alongTrack(double u) {
    return u < 0.5
        ? Uncertain.StandardNormal.quantile(2 * u)
        : WIDER * Uncertain.StandardNormal.quantile(2 * u - 1);
  }

  /** Density over the prior's. */
  private static double alongTrackDensity(double z) {
    double wide = Normal.density(z / WIDER, 0, 1) / WIDER;
    return 0.5 + 0.5 * wide / Normal.density(z, 0, 1);
  }

  /** Half evenly, half low: weak transmitters are rare and explain silence. */
  private static double power(double u) {
    return u < 0.5 ? 2 * u : Draws.inside(Math.pow(2 * u - 1, LOW));
  }

  /** Density over the prior's, which is even. */
  private static double powerDensity(double quantile) {
    return 0.5 + 0.5 * Math.pow(quantile, 1 / LOW - 1) / LOW;
  }

  /** One number of every node, {@code [group][node]}. */
  private double[][] stratified(SplittableRandom random) {
    double[][] u = new double[groups][each];
    int[][] places = new int[groups][];
    for (int g = 0; g < groups; g++) {
      places[g] = Draws.permutation(each, random);
    }
    for (int coarse = 0; coarse < each; coarse++) {
      int[] fine = Draws.permutation(groups, random);
      for (int g = 0; g < groups; g++) {
        double stratum = coarse * groups + fine[g] + random.nextDouble();
        u[g][places[g][coarse]] = Draws.inside(stratum / (groups * each));
      }
    }
    return u;
  }
}
