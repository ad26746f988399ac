package hark.ensemble;

import hark.power.Illumination;
import java.util.List;

/**
 * A population with all evidence weighed, before anything is looked ahead.
 *
 * @param nodes hearings of each group of bodies
 */
record Weighed(
    DiagnosisInput input,
    Sky sky,
    List<Clue> clues,
    Population population,
    HearingNodes[] nodes,
    Ear ear,
    Weighing weighing) {
  static Weighed of(DiagnosisInput input, Sky sky, Workers workers) {
    sky.requireSame(input);
    Clues read = new Clues(input, sky);
    List<Clue> clues = read.all();
    Population.Setting setting =
        Population.Setting.upToNow(
            input, sky.illumination(), OnsetProposal.of(input), read.probeSeconds());
    Growth growth = new Growth(input, setting);
    growth.begin();
    growth.simulate(workers);
    Population population = growth.population();
    Ear ear = new Ear(input.beacons(), input.body().typical());
    HearingNodes[] nodes = new HearingProposal(input, clues, ear).choose(workers);
    Weigher weigher = new Weigher(input, ear, population.bodies.size());
    Weighing weighing = new Weighing(input.stations().size(), population, clues, nodes, weigher);
    weighing.run(workers);
    Refinement refinement = new Refinement(input, growth, weighing, clues);
    for (int round = 1; !clues.isEmpty() && round <= Refinement.ROUNDS; round++) {
      if (!refinement.next(round, population, weighing.prefix[clues.size()])) {
        break;
      }
      growth.simulate(workers);
      population = growth.population();
      Weigher again = new Weigher(input, ear, population.bodies.size());
      weighing = weighing.extended(population, again, workers);
    }
    return new Weighed(input, sky, clues, population, nodes, ear, weighing.released());
  }

  Illumination light() {
    return sky.illumination();
  }

  /** Likelihood of all evidence by member. */
  double[] likelihood() {
    return weighing.prefix[clues.size()].clone();
  }

  /** Share of each object in the hearings of a member. */
  double[] objectShares(int member) {
    double[] shares = new double[input.candidates().size()];
    HearingNodes group = nodes[population.members.get(member).hearings(nodes.length)];
    for (int n = 0; n < group.count(); n++) {
      shares[group.object()[n]] += weighing.nodeShare[member][n];
    }
    return shares;
  }
}
