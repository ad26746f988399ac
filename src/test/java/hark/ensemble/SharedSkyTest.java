package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

/** Campaigns of one mission share the sky; nothing else may come of it. */
class SharedSkyTest {
  private final SmallCase smallCase = new SmallCase();

  @Test
  void aSharedSkyGivesTheSameDiagnosisAsOneOfItsOwn() {
    DiagnosisInput input = smallCase.input();
    ExecutorService executor = Executors.newFixedThreadPool(2);
    try {
      Workers workers = new Workers(executor, 2);
      Sky sky = Sky.of(input);
      Diagnosis.of(input, sky, workers);
      Diagnosis again = Diagnosis.of(input, sky, workers);
      Diagnosis alone = Diagnosis.of(input, workers);
      assertArrayEquals(alone.setWeights(), again.setWeights());
      assertArrayEquals(alone.objects(), again.objects());
      assertArrayEquals(alone.chargeNow()[0], again.chargeNow()[0]);
      assertEquals(1, sum(alone.chargeNow()[1]) + alone.remainder(), 1e-9);
    } finally {
      executor.shutdown();
    }
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  @Test
  void aSkyOfAnotherTimeIsRefused() {
    DiagnosisInput input = smallCase.input();
    DiagnosisInput later =
        new DiagnosisInput(
            input.separation(),
            input.now().plus(Duration.ofHours(1)),
            input.end(),
            input.body(),
            input.beacons(),
            input.receiver(),
            input.candidates(),
            input.stations(),
            input.causes(),
            List.of(),
            input.earth(),
            input.bodiesPerSet(),
            input.seed());
    assertThrows(IllegalArgumentException.class, () -> Sky.of(input).requireSame(later));
  }
}
