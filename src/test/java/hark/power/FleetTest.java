package hark.power;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.power.SimulationRequest.TimedChange;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Many bodies at once: no body minds the others, and gliding is going alone, only faster. */
class FleetTest {
  private static final double DAYS = 6;
  private static final Illumination LIGHT = Bodies.orbitsWithPath(DAYS + 1, 0.3);

  /** Bodies from well fed to dying, some with something wrong. */
  private static List<Simulation.Job> jobs(long seed, double[] probes) {
    return jobs(seed, probes, true);
  }

  /**
   * @param varied whether they also turn in every way, and are too cold to charge now and then:
   *     there gliding takes means that going alone does not
   */
  private static List<Simulation.Job> jobs(long seed, double[] probes, boolean varied) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Simulation.Job> jobs = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      Bodies body = new Bodies();
      body.loads = new PowerModel.Loads(0.005, 0.6, 0.7, 1 + 1.6 * random.nextDouble());
      body.behaviour = CellBehaviour.LITHIUM_ION;
      body.charging =
          i % 2 == 0
              ? body.charging
              : new PowerModel.Charging(PowerModel.Scheme.CC_CV, 0.85, 1, 8.4, 0.06, 8.2);
      if (varied) {
        body.chargeMinC = 0; // the inhibit switches where it is cold
        body.thermal = new PowerModel.Thermal(2000, 0.11, 0.6, 0.8, 95, 0.12);
        body.attitude = PowerModel.AttitudeMode.values()[i / 3 % 4];
        body.rateDegPerSecond = i < 12 ? 0.2 : 3;
      }
      PowerModel model =
          body.model(0.2 + 0.7 * random.nextDouble(), 0.003 + 0.006 * random.nextDouble());
      List<TimedChange> changes = new ArrayList<>();
      if (i % 3 == 0) {
        OnboardChange hang = new OnboardChange.ComputerHung(0.5, Set.of());
        changes.add(Bodies.at(random.nextDouble() * DAYS * Bodies.DAY, hang));
      }
      if (i % 8 == 5) {
        changes.add(Bodies.at(Bodies.DAY, new OnboardChange.BatteryOpen()));
      }
      jobs.add(
          new Simulation.Job(
              model,
              new SimulationRequest(DAYS * Bodies.DAY, 0, 600, changes, probes, new double[0])));
    }
    return jobs;
  }

  @Test
  void aBodyDoesNotMindTheBodiesBesideIt() {
    List<Simulation.Job> jobs = jobs(1, new double[0]);
    List<BodyHistory> together = Simulation.runAll(jobs, LIGHT);
    for (int i = 0; i < jobs.size(); i++) {
      BodyHistory alone = Simulation.run(jobs.get(i).model(), LIGHT, jobs.get(i).request());
      assertArrayEquals(alone.soc(), together.get(i).soc(), 0, "body " + i);
      assertEquals(alone.transitions(), together.get(i).transitions());
      assertEquals(alone.segments(), together.get(i).segments());
    }
  }

  @Test
  void lookingDoesNotDisturb() {
    double[] times = {1234.5, 90_000.25, 3 * Bodies.DAY + 17};
    List<BodyHistory> seen = Simulation.runAll(jobs(2, times), LIGHT);
    List<BodyHistory> unseen = Simulation.runAll(jobs(2, new double[0]), LIGHT);
    for (int i = 0; i < seen.size(); i++) {
      assertEquals(3, seen.get(i).probes().size());
      assertArrayEquals(unseen.get(i).soc(), seen.get(i).soc(), 0, "body " + i);
      assertEquals(unseen.get(i).segments(), seen.get(i).segments());
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {3, 4, 5})
  void glidingIsGoingAloneOnlyFaster(long seed) {
    double roundingOverDays = 1e-6;
    for (Simulation.Job job : jobs(seed, new double[0], false)) {
      BodyHistory glided = Simulation.run(job.model(), LIGHT, job.request());
      Machine machine = new Machine(job.model(), LIGHT, job.request(), null);
      machine.begin();
      machine.advanceTo(DAYS * Bodies.DAY);
      BodyHistory walked = machine.close();
      assertEquals(walked.transitions().size(), glided.transitions().size());
      for (int t = 0; t < walked.transitions().size(); t++) {
        BodyHistory.Transition expected = walked.transitions().get(t);
        BodyHistory.Transition found = glided.transitions().get(t);
        assertEquals(expected.to(), found.to());
        assertEquals(expected.seconds(), found.seconds(), 2 * PowerPhysics.EDGE_SECONDS);
      }
      for (int g = 0; g < walked.soc().length; g++) {
        assertEquals(walked.soc()[g], glided.soc()[g], 100 * roundingOverDays, "grid " + g);
      }
    }
  }

  @Test
  void mostOfAHealthyBodysWayIsGlided() {
    Bodies body = new Bodies();
    SimulationRequest request = jobs(1, new double[0]).get(1).request();
    Machine machine = new Machine(body.model(), LIGHT, request, null);
    machine.begin();
    Fleet fleet = new Fleet(new Machine[] {machine}, LIGHT);
    fleet.fly(request);
    assertTrue(fleet.glidedShare() > 0.95, "share " + fleet.glidedShare());
  }
}
