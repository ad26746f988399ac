package hark.assessment;

import hark.assessment.Assessment.EnergyPoint;
import hark.assessment.WhatIf.Change;
import hark.assessment.WhatIf.Side;
import hark.ensemble.BodyList;
import hark.ensemble.BodyRun;
import hark.ensemble.EnergyFan;
import hark.ensemble.Workers;
import java.util.List;
import java.util.Map;

/** Two runs of the same bodies side by side. */
final class Comparison {
  static final String BASIS =
      "The same possibilities, with the same draws, events and weights, simulated again from"
          + " separation with the other numbers; what was heard is not weighed again.";

  private final BodyList list;
  private final OrbitStarts orbits;
  private final BodyRun before;
  private final BodyRun after;

  Comparison(BodyList list, OrbitStarts orbits, BodyRun before, BodyRun after) {
    this.list = list;
    this.orbits = orbits;
    this.before = before;
    this.after = after;
  }

  WhatIf of(Map<String, String> overrides, Workers workers) {
    List<EnergyFan.Point> was = before.fan(workers);
    List<EnergyFan.Point> is = after.fan(workers);
    Change change = new Change(side(was), side(is));
    return new WhatIf(
        Map.copyOf(overrides),
        before.sample().count(),
        points(was),
        points(is),
        orbits.balance(before),
        orbits.balance(after),
        change,
        WhatIfWords.sentence(overrides, change),
        BASIS);
  }

  private List<EnergyPoint> points(List<EnergyFan.Point> fan) {
    return fan.stream().map(point -> EnergyDesk.point(list, point)).toList();
  }

  private Side side(List<EnergyFan.Point> fan) {
    double now = list.input().seconds(list.input().now());
    List<EnergyFan.Point> ahead = fan.stream().filter(p -> p.seconds() >= now).toList();
    double[] states = new double[4];
    double transmitting = 0;
    for (EnergyFan.Point point : ahead) {
      for (int s = 0; s < states.length; s++) {
        states[s] += point.states()[s] / ahead.size();
      }
      transmitting += point.transmitting() / ahead.size();
    }
    double[] last = ahead.get(ahead.size() - 1).soc();
    return new Side(last[2], last[0], EnergyDesk.states(states), transmitting);
  }
}
