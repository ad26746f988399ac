package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.link.Way;
import hark.power.Face;
import hark.power.OnboardCommand;
import hark.power.PowerModel;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** A release command frees what is stowed, on the electrical side too. */
class ReleaseTest {
  private static final double HALF_A_DAY = 43_200;

  /** Every cell sits on a panel that is covered while it is stowed: no power until released. */
  private static PowerModel folded(PowerModel model) {
    List<Face> panels =
        model.arrays().faces().stream()
            .map(f -> new Face(f.name(), f.normal(), f.cellAreaSquareMeters(), true, f.string()))
            .toList();
    return new PowerModel(
        model.attitude(),
        new PowerModel.Arrays(0.29, 0.08, panels),
        model.charging(),
        model.battery(),
        model.bus(),
        model.thermal(),
        model.beacons(),
        model.receiver(),
        model.quietSeconds());
  }

  private static Cause stowed(Set<Cause.ClearsOn> clears) {
    return new Cause(
        "panels",
        "panels",
        "power",
        0.9,
        Cause.Onset.SEPARATION,
        List.of(new Effect.PanelsStowed()),
        clears,
        "invented",
        "invented",
        List.of());
  }

  private static <T> T ask(Set<Cause.ClearsOn> clears, Function<Diagnosis, T> question) {
    SmallCase small = new SmallCase();
    small.now = Instant.parse("2026-10-06T10:00:00Z");
    small.horizonDays = 3;
    small.causes = List.of(stowed(clears));
    DiagnosisInput in = small.input();
    BodyPrior prior =
        new BodyPrior(
            in.body().keys(), in.body().numbers(), v -> folded(in.body().build().apply(v)));
    DiagnosisInput input =
        new DiagnosisInput(
            in.separation(),
            in.now(),
            in.end(),
            prior,
            in.beacons(),
            in.receiver(),
            in.candidates(),
            in.stations(),
            in.causes(),
            in.evidence(),
            in.earth(),
            in.bodiesPerSet(),
            in.seed());
    return small.with(workers -> question.apply(Diagnosis.of(input, workers)));
  }

  /** A particle whose set has the cause, or has none. */
  private static int particle(Diagnosis diagnosis, Particles particles, boolean harmed) {
    for (int p = 0; p < particles.count(); p++) {
      if (diagnosis.sets().get(particles.set(p)).causes().isEmpty() != harmed) {
        return p;
      }
    }
    throw new AssertionError("no such particle");
  }

  @Test
  void stuckPanelsUnfoldAndTheBeaconLivesOn() {
    double[] heard =
        ask(
            Set.of(Cause.ClearsOn.COMMAND),
            diagnosis -> {
              Particles particles = diagnosis.particles(300);
              int stuck = particle(diagnosis, particles, true);
              assertFalse(particles.leavesAlone(stuck, OnboardCommand.RELEASE));
              List<SkyWindow> windows = diagnosis.windows();
              SkyWindow first =
                  windows.stream().filter(w -> w.station() == 0).findFirst().orElseThrow();
              double sent = particles.commandLink(first).seconds();
              Particles.Branch freed =
                  particles.branches(List.of(stuck), sent, OnboardCommand.RELEASE).get(0);
              double without = 0;
              double with = 0;
              for (SkyWindow later : windows) {
                if (later.from() > sent + 4 * HALF_A_DAY) {
                  Listening decoder = new Listening(Way.DECODER, 3000, 0, 0, 0, 0);
                  Particles.Hearing hearing = particles.hearing(later, decoder);
                  without += hearing.chance(stuck);
                  with += hearing.chance(stuck, freed);
                }
              }
              return new double[] {without, with};
            });
    assertEquals(0, heard[0], "the battery is empty after two days without arrays");
    assertTrue(heard[1] > 0.5, "heard " + heard[1] + " times after the release");
  }

  @Test
  void panelsThatNoCommandFreesAndHealthyBodiesAreLeftAlone() {
    boolean alone =
        ask(
            Set.of(),
            diagnosis -> {
              Particles particles = diagnosis.particles(300);
              int stuck = particle(diagnosis, particles, true);
              int healthy = particle(diagnosis, particles, false);
              return particles.leavesAlone(stuck, OnboardCommand.RELEASE)
                  && particles.leavesAlone(healthy, OnboardCommand.RELEASE);
            });
    assertTrue(alone);
  }
}
