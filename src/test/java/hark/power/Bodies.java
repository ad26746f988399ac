package hark.power;

import hark.power.PowerModel.BusState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** An ordinary two-unit body for tests, and ways to vary it. Every number is invented. */
public final class Bodies {
  public static final double ORBIT_SECONDS = 5700;
  public static final double SHADOW_SECONDS = 2100;
  public static final double DAY = 86_400;
  public static final double SOLAR_CONSTANT = 1361;

  public PowerModel.AttitudeMode attitude = PowerModel.AttitudeMode.TUMBLING;
  public double rateDegPerSecond = 3;
  public Orientation orientation = Orientation.PLAIN;
  public PowerModel.Charging charging =
      new PowerModel.Charging(PowerModel.Scheme.MPPT, 0.85, 1.5, 8.4);
  public int parallel = 2;
  public double cellCapacityAh = 3.2;
  public double cellResistanceOhm = 0.045;
  public double socAtSeparation = 0.75;
  public PowerModel.Protection protection =
      new PowerModel.Protection(2.6, 3.0, PowerModel.ClosesOn.CHARGE);
  public double chargeMinC = -20;
  public Optional<PowerModel.Heater> heater = Optional.empty();
  public CellBehaviour behaviour = CellBehaviour.IDEAL;
  public PowerModel.Thresholds thresholds = new PowerModel.Thresholds(6.2, 7.0, 7.2, 7.5);
  public PowerModel.Loads loads = new PowerModel.Loads(0.005, 0.6, 0.7, 1.5);
  public boolean deadStart = true;
  public OptionalDouble watchdogSeconds = OptionalDouble.empty();
  public Optional<PowerModel.CommandLoss> commandLoss = Optional.empty();
  public boolean restartsOnReset;

  /** Instead of the parts above, when set. */
  public PowerModel.Battery wholeBattery;

  /** Instead of the parts above, when set. */
  public PowerModel.Bus wholeBus;

  public PowerModel.Thermal thermal = new PowerModel.Thermal(2000, 0.11, 0.85, 0.8, 180, 0.15);
  public List<PowerModel.Beacon> beacons =
      List.of(new PowerModel.Beacon("main", Set.of(BusState.SAFE, BusState.NOMINAL), 30, 1.5, 2.0));
  public PowerModel.Receiver receiver =
      new PowerModel.Receiver(Set.of(BusState.SAFE, BusState.NOMINAL), 1);
  public double quietSeconds = 2700;
  public double cellAreaSquareMeters = 0.0060;

  /** Two cells in series of the stock chemistry. */
  private PowerModel.Battery battery(double soc) {
    return new PowerModel.Battery(
        2,
        parallel,
        cellCapacityAh,
        cellResistanceOhm,
        OpenCircuit.liIonNca(),
        soc,
        protection,
        chargeMinC,
        50,
        heater,
        behaviour);
  }

  private PowerModel.Bus bus() {
    return new PowerModel.Bus(
        thresholds,
        300,
        new PowerModel.DeadStart(deadStart, 1.0),
        loads,
        30,
        watchdogSeconds,
        commandLoss,
        1800,
        restartsOnReset);
  }

  public PowerModel model() {
    return model(socAtSeparation, cellAreaSquareMeters);
  }

  /** The body with another charge at separation and other cells on each face. */
  public PowerModel model(double soc, double cellArea) {
    List<Face> faces = new ArrayList<>();
    double[][] normals = {{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}, {0, 0, 1}, {0, 0, -1}};
    for (double[] normal : normals) {
      faces.add(new Face("face", normal, cellArea, false, "A"));
    }
    return new PowerModel(
        new PowerModel.Attitude(attitude, rateDegPerSecond, orientation),
        new PowerModel.Arrays(0.29, 0.08, faces),
        charging,
        wholeBattery == null ? battery(soc) : wholeBattery,
        wholeBus == null ? bus() : wholeBus,
        thermal,
        beacons,
        receiver,
        quietSeconds);
  }

  /** One shadow an orbit, after the sunlit arc; penumbra of ten seconds. */
  public static Illumination orbits(double days) {
    return shadows(0, (int) (days * DAY / ORBIT_SECONDS) + 2);
  }

  /** Full sun first, shadows from an orbit on. */
  public static Illumination orbitsFrom(int first, double days) {
    return shadows(first, (int) (days * DAY / ORBIT_SECONDS) + 2);
  }

  /** Shadows up to an orbit, then full sun. */
  public static Illumination orbitsUntil(int last) {
    return shadows(0, last);
  }

  private static Illumination shadows(int first, int last) {
    double[][] edges = new double[4][last - first];
    for (int i = 0; i < last - first; i++) {
      double entry = (first + i + 1) * ORBIT_SECONDS - SHADOW_SECONDS;
      edges[0][i] = entry;
      edges[1][i] = entry + 10;
      edges[2][i] = entry + SHADOW_SECONDS - 10;
      edges[3][i] = entry + SHADOW_SECONDS;
    }
    return new Illumination(edges, SOLAR_CONSTANT);
  }

  public static Illumination fullSun() {
    return new Illumination(new double[4][0], SOLAR_CONSTANT);
  }

  public static SimulationRequest request(double days, List<SimulationRequest.TimedChange> events) {
    return new SimulationRequest(days * DAY, 0, 300, events, new double[0], new double[0]);
  }

  public static SimulationRequest.TimedChange at(double seconds, OnboardChange change) {
    return new SimulationRequest.TimedChange(seconds, change);
  }
}
