package hark.assessment;

import hark.ensemble.BodyList;
import hark.ensemble.BodyPrior;
import hark.ensemble.BodyRun;
import hark.ensemble.Diagnosis;
import hark.ensemble.SmallCase;
import hark.ensemble.Uncertain;
import hark.power.Bodies;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** The small invented mission of the ensemble's tests, ready to be asked about its energy. */
final class EnergyCase {
  final SmallCase small = new SmallCase();
  final Diagnosis diagnosis = small.diagnose();
  final BodyList list = diagnosis.bodyList();
  final OrbitStarts orbits = OrbitStarts.of(list, diagnosis.eclipses());
  final Flown flown = fly(list.models());
  final BodyRun asIs = flown.run();

  private Flown fly(BodyList.Models models) {
    BodyList.Sample sample = list.sample(EnergyDesk.MOST_BODIES);
    return small.with(workers -> Flown.of(list, sample, models, orbits, workers));
  }

  /** What becomes of it when the body is built another way and has other cells. */
  WhatIf whatIf(Consumer<Bodies> change, double areaFactor) {
    Bodies others = new Bodies();
    change.accept(others);
    List<Uncertain> numbers = small.input().body().numbers();
    BodyPrior prior =
        new BodyPrior(
            small.input().body().keys(),
            numbers,
            values -> others.model(values[0], values[1] * areaFactor));
    return new Comparison(list, flown, fly(list.models(prior))).of(Map.of("a.b_W", "1"));
  }
}
