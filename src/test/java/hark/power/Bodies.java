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
  public Optional<PowerModel.Inrush> inrush = Optional.empty();
  public boolean ordersSurviveReset;

  /** Instead of six equal faces, when set. */
  public List<Face> faces;

  public PowerModel.CellNature nature = PowerModel.CellNature.IDEAL;

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
        restartsOnReset,
        inrush,
        ordersSurviveReset);
  }

  public PowerModel model() {
    return model(socAtSeparation, cellAreaSquareMeters);
  }

  /** The body with another charge at separation and other cells on each face. */
  public PowerModel model(double soc, double cellArea) {
    List<Face> cubeFaces = new ArrayList<>();
    double[][] normals = {{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}, {0, 0, 1}, {0, 0, -1}};
    for (double[] normal : normals) {
      cubeFaces.add(new Face("face", normal, cellArea, false, "A"));
    }
    return new PowerModel(
        new PowerModel.Attitude(attitude, rateDegPerSecond, orientation),
        new PowerModel.Arrays(0.29, 0.08, this.faces == null ? cubeFaces : this.faces, nature),
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

  /**
   * The same shadows with the Sun's path: in the plane of the orbit turned out of it by beta, the
   * Sun moving by a degree a day among the stars, its distance that of 1 au.
   */
  public static Illumination orbitsWithPath(double days, double sinBeta) {
    return new Illumination(edges(0, (int) (days * DAY / ORBIT_SECONDS) + 2), path(days, sinBeta));
  }

  /** Full sun with the Sun's path. */
  public static Illumination fullSunWithPath(double days, double sinBeta) {
    return new Illumination(new double[4][0], path(days, sinBeta));
  }

  private static SunPath path(double days, double sinBeta) {
    double step = 300;
    int count = (int) (days * DAY / step) + 2;
    double[] irradiance = new double[count];
    double[][] direction = new double[3][count];
    double[] phase = new double[count];
    double[] across = new double[count];
    for (int i = 0; i < count; i++) {
      double t = i * step;
      double middleOfShadow = ORBIT_SECONDS - SHADOW_SECONDS / 2;
      double along = Math.toRadians(360 / 365.25 * t / DAY);
      irradiance[i] = SOLAR_CONSTANT;
      direction[0][i] = Math.cos(along);
      direction[1][i] = Math.sin(along);
      phase[i] = 2 * Math.PI * (t - middleOfShadow) / ORBIT_SECONDS + Math.PI;
      across[i] = sinBeta;
    }
    return new SunPath(step, irradiance, direction, phase, across);
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
    return new Illumination(edges(first, last), SOLAR_CONSTANT);
  }

  private static double[][] edges(int first, int last) {
    double[][] edges = new double[4][last - first];
    for (int i = 0; i < last - first; i++) {
      double entry = (first + i + 1) * ORBIT_SECONDS - SHADOW_SECONDS;
      edges[0][i] = entry;
      edges[1][i] = entry + 10;
      edges[2][i] = entry + SHADOW_SECONDS - 10;
      edges[3][i] = entry + SHADOW_SECONDS;
    }
    return edges;
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
