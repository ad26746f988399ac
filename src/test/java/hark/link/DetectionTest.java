package hark.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class DetectionTest {
  @Test
  void fastNormalCurveStaysWithinItsStatedError() {
    NormalDistribution exact = new NormalDistribution();
    for (double x = -10; x <= 10; x += 0.0007) {
      double truth = exact.cumulativeProbability(x);
      assertEquals(truth, NormalCurve.below(x), 4e-9, "at " + x);
      if (x > -8) {
        assertEquals(1, NormalCurve.below(x) / truth, 2e-5, "relative at " + x);
      }
    }
    assertTrue(Double.isNaN(NormalCurve.below(Double.NaN)));
    assertEquals(0, NormalCurve.below(Double.NEGATIVE_INFINITY));
    assertEquals(1, NormalCurve.below(Double.POSITIVE_INFINITY));
  }

  @Test
  void decoderReadsHalfOfTheBurstsAtItsRequiredSignal() {
    assertEquals(0.5, Detection.probability(Way.DECODER, 10, 10), 1e-12);
  }

  @ParameterizedTest
  @EnumSource(Way.class)
  void fadedProbabilityIsTheMeanOverFading(Way way) {
    SplittableRandom random = new SplittableRandom(7);
    NormalDistribution normal = new NormalDistribution();
    int draws = 200_000;
    double sum = 0;
    for (int i = 0; i < draws; i++) {
      double level = 6 + 4 * normal.inverseCumulativeProbability(random.nextDouble(1e-12, 1));
      sum += Detection.probability(way, level, 10);
    }
    double fiveStandardErrors = 5 * 0.5 / Math.sqrt(draws);
    assertEquals(sum / draws, Detection.fadedProbability(way, 6, 10, 4), fiveStandardErrors);
  }

  @Test
  void waterfallNeverNoticesLessThanTheEar() {
    for (double snr = -20; snr <= 30; snr += 0.5) {
      assertTrue(
          Detection.probability(Way.WATERFALL, snr, 10) >= Detection.probability(Way.EAR, snr, 10));
    }
    assertTrue(Detection.offsetDb(Way.RECORDING) < Detection.offsetDb(Way.WATERFALL));
    assertTrue(Detection.offsetDb(Way.EAR) < Detection.offsetDb(Way.DECODER));
  }

  @ParameterizedTest
  @EnumSource(Way.class)
  void noWayHearsBetterThanTheEnergyDetectorForTheBurstItIsStatedFor(Way way) {
    // 1.5 s of 1200 Hz, decoder at 10 dB, one false alarm in a million (Urkowitz)
    double bound = EnergyDetector.requiredSnrDb(1e-6, 1800, 0.5);
    assertEquals(-9.35, bound, 0.01);
    assertTrue(10 + Detection.offsetDb(way) > bound + 6);
    assertEquals(10 + Detection.offsetDb(way), Detector.of(way, 10, 1.5, 1200).thresholdDb());
  }

  @Test
  void shortBurstsAreBoundedByTheEnergyDetector() {
    Detector detector = Detector.of(Way.RECORDING, 12, 0.1, 100);
    assertEquals(EnergyDetector.requiredSnrDb(1e-6, 10, 0.5), detector.thresholdDb(), 1e-12);
    assertEquals(0.5, detector.probability(detector.thresholdDb()), 1e-12);
    assertTrue(
        detector.fadedProbability(detector.thresholdDb() - 3, 4)
            > detector.probability(detector.thresholdDb() - 3));
  }

  @Test
  void energyIsNeverHarderToNoticeThanTheFrameIsToRead() {
    assertEquals(2, Detector.of(Way.EAR, 2, 0.02, 100).thresholdDb());
  }

  @Test
  void detectorRefusesWhatIsNotANumber() {
    assertThrows(IllegalArgumentException.class, () -> new Detector(Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> new Detector(1, 0));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, -1})
  void mistuningLosesTheBurstAcrossOneBandwidth(double side) {
    assertEquals(1, Detection.inWindow(side * 4000, 5000, 1200));
    assertEquals(0.5, Detection.inWindow(side * 5000, 5000, 1200));
    assertEquals(0.25, Detection.inWindow(side * 5300, 5000, 1200), 1e-12);
    assertEquals(0, Detection.inWindow(side * 5600, 5000, 1200));
  }

  @Test
  void commandsSucceedHalfOfTheTimeAtSensitivity() {
    assertEquals(0.5, Uplink.successProbability(-110, -110), 1e-12);
    assertTrue(Uplink.successProbability(-105, -110) > 0.999);
    assertTrue(Uplink.successProbability(-115, -110) < 0.001);
    assertEquals(0.5, Uplink.fadedSuccessProbability(-110, -110, 6), 1e-12);
    // by hand: 59 dBm - 145.21 dB - 3 dB + 0 dBi
    assertEquals(-89.21, Uplink.receivedDbm(59, 437e6, 1e6, 3, 0), 0.06);
  }

  @Test
  void exposureDistancesAreThoseOfThePublishedLimits() {
    // 47 CFR 1.1310: f/1500 mW/cm²; 50 W into 14 dBi at 437 MHz. The factor 2.56 is from memory.
    double eirpWatts = Math.pow(10, (Uplink.eirpDbm(50, 14) - 30) / 10);
    assertEquals(1256, eirpWatts, 0.5);
    double free = RfExposure.distanceMeters(RfExposure.Limit.FCC, 437e6, eirpWatts, 1);
    assertEquals(5.9, free, 0.05);
    double ground =
        RfExposure.distanceMeters(
            RfExposure.Limit.FCC, 437e6, eirpWatts, RfExposure.GROUND_REFLECTION);
    assertEquals(9.4, ground, 0.05);
    // ICNIRP 1998: f/200 W/m² from 400 to 2000 MHz
    assertEquals(
        2.185, RfExposure.densityWattsPerSquareMeter(RfExposure.Limit.ICNIRP_1998, 437e6), 1e-12);
  }
}
