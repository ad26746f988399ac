package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.link.Way;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What possibilities let a station hear. */
class ParticlesTest {
  /** Ways that share aim and band, aim alone, and neither. */
  private static final List<Listening> WAYS =
      List.of(
          new Listening(Way.RECORDING, 10_000, 0, 0, 0, 0),
          new Listening(Way.DECODER, 10_000, 0, 0, 0, 0),
          new Listening(Way.DECODER, 500, 0, 0, 0, 0),
          new Listening(Way.DECODER, 500, 20, 0, 0, 0),
          new Listening(Way.DECODER, 500, 0, 0, 6, 0));

  @Test
  void severalWaysAtOnceHearWhatEachHearsAlone() {
    SmallCase small = new SmallCase();
    small.horizonDays = 2;
    Diagnosis diagnosis = small.with(workers -> Diagnosis.of(small.input(), workers));
    Particles particles = diagnosis.particles(200);
    double[] sums = new double[WAYS.size()];
    for (SkyWindow window : diagnosis.windows()) {
      float[][] together = particles.chances(window, WAYS);
      for (int w = 0; w < sums.length; w++) {
        Particles.Hearing alone = particles.hearing(window, WAYS.get(w));
        for (int p = 0; p < particles.count(); p++) {
          assertEquals((float) alone.chance(p), together[w][p], "way " + w + ", particle " + p);
          sums[w] += together[w][p];
        }
      }
    }
    assertEquals(sums.length, Arrays.stream(sums).distinct().count(), "ways differ");
    assertTrue(sums[0] > 0);
  }
}
