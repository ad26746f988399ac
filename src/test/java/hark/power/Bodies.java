package hark.power;

import hark.power.PowerModel.BusState;
import hark.power.PowerModel.Face;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** An ordinary two-unit body for tests, and ways to vary it. Every number is invented. */
public final class Bodies {
  static final double ORBIT_SECONDS = 5700;
  static final double SHADOW_SECONDS = 2100;
  static final double DAY = 86_400;
  static final double SOLAR_CONSTANT = 1361;

  public PowerModel.AttitudeMode attitude = PowerModel.AttitudeMode.TUMBLING;
  public PowerModel.Charging charging =
      new PowerModel.Charging(PowerModel.Scheme.MPPT, 0.85, 1.5, 8.4);
  public PowerModel.Battery battery =
      new PowerModel.Battery(
          2,
          2,
          3.2,
          0.045,
          OpenCircuit.liIonNca(),
          0.75,
          new PowerModel.Protection(2.6, 3.0, PowerModel.ClosesOn.CHARGE),
          -20,
          50,
          Optional.empty());
  public PowerModel.Bus bus =
      new PowerModel.Bus(
          new PowerModel.Thresholds(6.2, 7.0, 7.2, 7.5),
          300,
          new PowerModel.DeadStart(true, 1.0),
          new PowerModel.Loads(0.005, 0.6, 0.7, 1.5),
          30,
          OptionalDouble.empty(),
          Optional.empty(),
          1800,
          false);
  PowerModel.Thermal thermal = new PowerModel.Thermal(2000, 0.11, 0.85, 0.8, 180, 0.15);
  List<PowerModel.Beacon> beacons =
      List.of(new PowerModel.Beacon("main", Set.of(BusState.SAFE, BusState.NOMINAL), 30, 1.5, 2.0));
  PowerModel.Receiver receiver =
      new PowerModel.Receiver(Set.of(BusState.SAFE, BusState.NOMINAL), 1);
  public double quietSeconds = 2700;
  public double cellAreaSquareMeters = 0.0060;

  public PowerModel model() {
    List<Face> faces = new ArrayList<>();
    double[][] normals = {{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}, {0, 0, 1}, {0, 0, -1}};
    for (double[] normal : normals) {
      faces.add(new Face("face", normal, cellAreaSquareMeters, false, "A"));
    }
    return new PowerModel(
        new PowerModel.Attitude(attitude, 3),
        new PowerModel.Arrays(0.29, 0.08, faces),
        charging,
        battery,
        bus,
        thermal,
        beacons,
        receiver,
        quietSeconds);
  }

  /** One shadow an orbit, the first after the sunlit arc; penumbra of ten seconds. */
  public static Illumination orbits(double days) {
    int count = (int) (days * DAY / ORBIT_SECONDS) + 2;
    double[][] edges = new double[4][count];
    for (int i = 0; i < count; i++) {
      double entry = (i + 1) * ORBIT_SECONDS - SHADOW_SECONDS;
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
