package hark.assessment;

import hark.assessment.EnergyReport.OrbitBalance;
import hark.ensemble.BodyList;
import hark.ensemble.BodyRun;
import hark.ensemble.EnergyFan;
import hark.ensemble.Workers;
import java.util.List;

/** Bodies simulated again, with their fan and the balance of their orbits. */
record Flown(BodyRun run, List<EnergyFan.Point> fan, List<OrbitBalance> balance) {
  static Flown of(
      BodyList list,
      BodyList.Sample sample,
      BodyList.Models models,
      OrbitStarts orbits,
      Workers workers) {
    BodyRun run = BodyRun.of(list, sample, models, orbits.seconds(), workers);
    return new Flown(
        run, run.fan(workers), orbits.balance(run, new StateNeeds(list, sample, models)));
  }
}
