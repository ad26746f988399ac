package hark.assessment;

import hark.assessment.WhatIf.Change;
import hark.assessment.WhatIf.Side;
import hark.ensemble.BodyList;
import hark.ensemble.EnergyFan;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Two runs of the same bodies side by side. */
final class Comparison {
  static final String BASIS =
      "The same possibilities, with the same draws, events and weights, simulated again from"
          + " separation with the other numbers; what was heard is not weighed again.";

  private final BodyList list;
  private final Flown before;
  private final Flown after;

  Comparison(BodyList list, Flown before, Flown after) {
    this.list = list;
    this.before = before;
    this.after = after;
  }

  WhatIf of(Map<String, String> overrides) {
    Change change = new Change(side(before.fan()), side(after.fan()));
    return new WhatIf(
        Collections.unmodifiableMap(new LinkedHashMap<>(overrides)),
        before.run().sample().count(),
        EnergyView.points(list, before.fan()),
        EnergyView.points(list, after.fan()),
        before.balance(),
        after.balance(),
        change,
        WhatIfWords.sentence(overrides, change),
        BASIS);
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
    return new Side(last[2], last[0], EnergyView.states(states), transmitting);
  }
}
