package hark.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.power.PowerModel.Scheme;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Array energy equals loads, losses and what is stored, over sixty days. */
class EnergyBooksTest {
  private static final double ONE_IN_A_THOUSAND = 1e-3;

  private static void assertCloses(EnergyBooks books) {
    double turnover = books.arrays() + Math.abs(books.stored());
    assertTrue(books.arrays() > 0 && books.loads() > 0, books.toString());
    assertTrue(books.offered() > books.arrays() * (1 - 1e-9), "no more than there was: " + books);
    assertEquals(0, books.gap(), ONE_IN_A_THOUSAND * turnover, books.toString());
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void theBooksCloseForAnyBody(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Bodies body = new Bodies();
    Scheme scheme = Scheme.values()[random.nextInt(3)];
    body.charging =
        new PowerModel.Charging(
            scheme,
            random.nextDouble(0.7, 1),
            random.nextDouble(0.1, 1.5),
            random.nextDouble(8, 8.4));
    body.parallel = 1 + random.nextInt(3);
    body.cellCapacityAh = random.nextDouble(0.2, 3.5);
    body.cellResistanceOhm = random.nextDouble(0, 0.3);
    body.socAtSeparation = random.nextDouble(0.1, 1);
    body.cellAreaSquareMeters *= random.nextDouble(0.3, 3);
    body.chargeMinC = 0;
    body.behaviour = CellBehaviour.LITHIUM_ION;
    body.protection = new PowerModel.Protection(2.6, 3.0, PowerModel.ClosesOn.CHARGE, 0.05);
    body.nature = new PowerModel.CellNature(-0.002, 0.02, true);
    body.rateDegPerSecond = random.nextDouble(0.1, 3);
    body.heater = Optional.of(new PowerModel.Heater(0.5, 2, 6));
    List<SimulationRequest.TimedChange> changes =
        List.of(
            Bodies.at(5 * Bodies.DAY, new OnboardChange.StringsOpen(1)),
            Bodies.at(10 * Bodies.DAY, new OnboardChange.CapacityFactor(0.8)),
            Bodies.at(15 * Bodies.DAY, new OnboardChange.ExtraLoad(0.3, true)),
            Bodies.at(
                20 * Bodies.DAY,
                new OnboardChange.ComputerHung(0.2, Set.of(OnboardChange.Clearing.POWER_CYCLE))));
    SimulationRequest request = Bodies.request(60, changes);
    assertCloses(Simulation.energy(body.model(), Bodies.orbits(60), request));
  }

  @Test
  void energyThatLeavesWithAnOpenedBatteryIsBooked() {
    SimulationRequest request =
        Bodies.request(3, List.of(Bodies.at(Bodies.DAY, new OnboardChange.BatteryOpen())));
    EnergyBooks books = Simulation.energy(new Bodies().model(), Bodies.orbits(3), request);
    assertCloses(books);
    double fullJoule = 4 * 3.2 * 3600 * 3.6;
    assertEquals(0.8 * fullJoule, books.removed(), 0.2 * fullJoule);
  }

  @Test
  void aDirectArrayGivesLessToALowBattery() {
    Bodies body = new Bodies();
    SimulationRequest request = Bodies.request(1, List.of());
    body.socAtSeparation = 0.2;
    EnergyBooks tracked = Simulation.energy(body.model(), Bodies.orbits(1), request);
    body.charging = new PowerModel.Charging(Scheme.DIRECT, 0.85, 1.5, 8.4);
    EnergyBooks direct = Simulation.energy(body.model(), Bodies.orbits(1), request);
    double share = direct.arrays() / tracked.arrays();
    assertTrue(share > 6.6 / 8.4 && share < 7.6 / 8.4, "array energy by voltage, " + share);
  }

  /**
   * Mean over all directions by Cauchy's formula, a quarter of the cells; each penumbra counts
   * half.
   */
  @Test
  void whatTheArraysOfferIsSunlitTimeTimesMeanProjectionHoweverFullTheBatteryIs() {
    double orbits = 30;
    double end = orbits * Bodies.ORBIT_SECONDS;
    SimulationRequest request =
        new SimulationRequest(end, 0, 300, List.of(), new double[0], new double[0]);
    double sunlit = orbits * (Bodies.ORBIT_SECONDS - Bodies.SHADOW_SECONDS + 10);
    double cells = 6 * 0.0060;
    double offered = Bodies.SOLAR_CONSTANT * cells / 4 * 0.29 * (1 - 0.08) * sunlit;
    Bodies full = new Bodies();
    full.socAtSeparation = 1;
    full.loads = new PowerModel.Loads(0.005, 0.1, 0.1, 0.1);
    Bodies empty = new Bodies();
    empty.socAtSeparation = 0.2;
    empty.loads = new PowerModel.Loads(0.005, 0.6, 2.5, 2.5);
    double onePartInTenThousand = 1e-4;
    for (Bodies body : List.of(full, empty)) {
      EnergyBooks books = Simulation.energy(body.model(), Bodies.orbits(3), request);
      assertEquals(offered, books.offered(), onePartInTenThousand * offered);
    }
    EnergyBooks left = Simulation.energy(full.model(), Bodies.orbits(3), request);
    assertTrue(left.arrays() < 0.5 * left.offered(), "a full battery takes little: " + left);
    assertEquals(left.offered() - left.arrays() + left.stored(), left.margin(), 0.01 * offered);
    EnergyBooks spent = Simulation.energy(empty.model(), Bodies.orbits(3), request);
    assertEquals(spent.offered(), spent.arrays(), 0.02 * offered, "an empty one takes all");
  }

  @Test
  void arraysThatAreCutOffOfferNothing() {
    SimulationRequest request =
        Bodies.request(1, List.of(Bodies.at(0, new OnboardChange.ChargePathOpen(false))));
    EnergyBooks books = Simulation.energy(new Bodies().model(), Bodies.orbits(1), request);
    assertEquals(0, books.offered());
    assertTrue(books.margin() < 0, "the battery pays: " + books);
  }
}
