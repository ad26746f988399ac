package hark.bench;

import hark.ensemble.BodyPrior;
import hark.ensemble.Uncertain;
import hark.mission.Missions;
import hark.mission.ResourceFolder;
import hark.power.OnboardChange;
import hark.power.OnboardChange.Clearing;
import hark.power.PowerModel;
import hark.power.SimulationRequest;
import hark.power.SimulationRequest.TimedChange;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/** A body of the energy bench and what happens to it. */
record EnergyCase(PowerModel model, List<TimedChange> changes) {
  private static final double DAY = 86_400;
  private static final double GRID = 600;
  private static final BodyPrior BODY = Missions.read(ResourceFolder.of("hark/demo")).body();

  SimulationRequest request(double days, double step) {
    double[] none = new double[0];
    return new SimulationRequest(days * DAY, 0, GRID, changes, none, none, step);
  }

  /** The same body turning in another way. */
  EnergyCase turning(PowerModel.AttitudeMode mode, double degPerSecond) {
    PowerModel.Attitude as =
        new PowerModel.Attitude(mode, degPerSecond, model.attitude().orientation());
    return new EnergyCase(
        new PowerModel(
            as,
            model.arrays(),
            model.charging(),
            model.battery(),
            model.bus(),
            model.thermal(),
            model.beacons(),
            model.receiver(),
            model.quietSeconds()),
        changes);
  }

  /** A draw of the demo's body. */
  private static PowerModel body(SplittableRandom random) {
    List<Uncertain> numbers = BODY.numbers();
    double[] values = new double[numbers.size()];
    for (int k = 0; k < values.length; k++) {
      values[k] = numbers.get(k).quantile(0.02 + 0.96 * random.nextDouble());
    }
    return BODY.build().apply(values);
  }

  /** Well bodies and bodies with something wrong from some hours on, in turn. */
  static List<EnergyCase> cases(int count) {
    Set<Clearing> removed = Set.of(Clearing.POWER_REMOVED);
    List<List<OnboardChange>> kinds =
        List.of(
            List.of(),
            List.of(),
            List.of(new OnboardChange.ArrayFactor(0.5)),
            List.of(new OnboardChange.ArrayFactor(0.3)),
            List.of(new OnboardChange.ExtraLoad(0.8, false)),
            List.of(new OnboardChange.BatteryOpen()),
            List.of(new OnboardChange.StringsOpen(1)),
            List.of(new OnboardChange.HoldOffLost(), new OnboardChange.ArrayFactor(0.35)),
            List.of(new OnboardChange.TemperatureShift(-20)),
            List.of(new OnboardChange.ChargePathOpen(false)),
            List.of(new OnboardChange.ComputerHung(0.8, removed)),
            List.of(new OnboardChange.CapacityFactor(0.4)));
    List<EnergyCase> cases = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      SplittableRandom random = new SplittableRandom(i);
      List<TimedChange> changes = new ArrayList<>();
      for (OnboardChange change : kinds.get(i % kinds.size())) {
        changes.add(new TimedChange(30_000, change));
      }
      cases.add(new EnergyCase(body(random), changes));
    }
    return cases;
  }
}
