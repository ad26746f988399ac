package hark.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.orbit.ElementSet;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

class WhoseTest {
  private static NeighbourCase.Setting neighbours(double spacing, int passes) {
    return new NeighbourCase.Setting(12, spacing, 1.5, 1, 60, passes, 30);
  }

  /** The simulator shares no code with the fit; with all unknowns known the two must agree. */
  @Test
  void withoutNoiseTheTrueMotionFitsToAFewHertz() {
    NeighbourCase.Setting quiet = new NeighbourCase.Setting(3, 20, 1.5, 0, 0.01, 1, 30);
    NeighbourCase drawn = NeighbourCase.draw(quiet, 3);
    WhoseAnswer.Found truth = Whose.of(drawn.question).found().get(drawn.truth);
    assertTrue(truth.rmsHz() < 0.3, "rms " + truth.rmsHz());
    double hundredthOfASecond = 0.01;
    assertEquals(drawn.lateSeconds, truth.lateSeconds(), hundredthOfASecond);
  }

  @Test
  void neighboursTwentySecondsApartAreToldFromOnePass() {
    WhoseFigures.Figures figures = WhoseFigures.run(neighbours(20, 1), 30, 70_000);
    assertEquals(1, figures.rightAndSure(), 1e-9);
  }

  @Test
  void neighboursASecondApartAreNotToldAndItSaysSo() {
    WhoseFigures.Figures figures = WhoseFigures.run(neighbours(1, 2), 20, 80_000);
    assertEquals(1, figures.abstains(), 1e-9);
    assertTrue(figures.meanPosteriorOfTruth() > 1.0 / 12, "better than the prior");
  }

  /** Weights are calibrated when their mean equals the share of cases in which they are true. */
  @Test
  void theTruthCarriesTheWeightItIsGiven() {
    int cases = 60;
    double expected = 0;
    double variance = 0;
    double found = 0;
    for (int i = 0; i < cases; i++) {
      NeighbourCase drawn = NeighbourCase.draw(neighbours(3, 1), 90_000 + i);
      WhoseAnswer answer = Whose.of(drawn.question);
      double top = answer.likeliest().posterior();
      expected += top;
      variance += top * (1 - top);
      found += answer.likeliest() == answer.found().get(drawn.truth) ? 1 : 0;
    }
    double threeSigma = 3 * Math.sqrt(variance);
    assertEquals(expected, found, threeSigma);
  }

  @Test
  void theSpreadOfTheOffsetIsTheOneTheErrorsHave() {
    WhoseFigures.Figures figures = WhoseFigures.run(neighbours(20, 1), 60, 60_000);
    double threeSigmaOfSixtyCases = 0.3;
    assertEquals(1, figures.offsetErrorOverSpread(), threeSigmaOfSixtyCases);
  }

  /**
   * The bound of Cramér and Rao with the same priors, from derivatives of the simulator: with
   * normal priors and noise the inverse of the information is the least variance any estimate has
   * on average.
   */
  @Test
  void theSpreadOfTheOffsetIsNearTheCramerRaoBound() {
    NeighbourCase drawn = NeighbourCase.draw(neighbours(20, 1), 4);
    WhoseAnswer.Found truth = Whose.of(drawn.question).found().get(drawn.truth);
    double bound = cramerRaoSeconds(drawn);
    assertEquals(bound, truth.lateSdSeconds(), 0.05 * bound);
  }

  private static double cramerRaoSeconds(NeighbourCase drawn) {
    DopplerCurve curve = drawn.question.curves().get(0);
    ElementSet elements = drawn.question.suspects().get(drawn.truth).elements();
    List<double[]> rows = new ArrayList<>();
    List<DopplerPoint> points = curve.points();
    Instant first = points.get(0).time();
    double middle =
        Duration.between(first, points.get(points.size() - 1).time()).toMillis() / 2000.0;
    for (DopplerPoint point : points) {
      double step = 0.05;
      double late = exact(elements, point.time(), step) - exact(elements, point.time(), -step);
      double slope = late / (2 * step);
      double t = Duration.between(first, point.time()).toMillis() / 1000.0 - middle;
      // late, carrier, drift, clock: a clock that runs ahead makes the object look late but for the
      // turning Earth, which is too little to matter here
      rows.add(new double[] {slope * 1.5 / 60, 600.0 / 60, t * 0.3 / 60, slope / 60});
    }
    RealMatrix information = MatrixUtils.createRealIdentityMatrix(4);
    RealMatrix jacobian = MatrixUtils.createRealMatrix(rows.toArray(new double[0][]));
    information = information.add(jacobian.transposeMultiply(jacobian));
    return 1.5 * Math.sqrt(MatrixUtils.inverse(information).getEntry(0, 0));
  }

  private static double exact(ElementSet elements, Instant time, double late) {
    CurveSimulator.Setting still =
        new CurveSimulator.Setting(late, 0, NeighbourCase.NOMINAL_HZ, 0, 0, 1);
    return new CurveSimulator(elements).frequencyHz(NeighbourCase.NORTH, time, 0, still);
  }

  /**
   * With the lateness fixed, all else enters as good as in proportion, so that Laplace's formula is
   * exact; the sum over a fine grid of latenesses is the reference.
   */
  @Test
  void theEvidenceIsTheIntegralItStandsFor() {
    NeighbourCase drawn =
        NeighbourCase.draw(new NeighbourCase.Setting(4, 3, 1.5, 1, 60, 2, 30), 11);
    WhoseQuestion question = drawn.question;
    Points points = Points.of(question, KeptPoints.all(question.curves()));
    double[] laplace = new double[question.suspects().size()];
    double[] exact = new double[laplace.length];
    for (int k = 0; k < laplace.length; k++) {
      Suspect suspect = question.suspects().get(k);
      Motion.Late late = new Motion.Late(suspect, question.earth(), points.start());
      laplace[k] = SuspectFit.late(late, question, points).logEvidence();
      exact[k] = integrated(late, question, points);
    }
    double normalLaplace = SuspectFit.LogSum.of(laplace);
    double normalExact = SuspectFit.LogSum.of(exact);
    for (int k = 0; k < laplace.length; k++) {
      double halfAPercent = 0.005;
      assertEquals(
          Math.exp(exact[k] - normalExact), Math.exp(laplace[k] - normalLaplace), halfAPercent);
    }
  }

  private static double integrated(Motion.Late late, WhoseQuestion question, Points points) {
    int steps = 60;
    double reach = 6;
    double[] logs = new double[2 * steps + 1];
    for (int i = 0; i < logs.length; i++) {
      double z = reach * (i - steps) / steps;
      Motion fixed = fixed(late, z);
      double density = Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI) * reach / steps;
      logs[i] =
          Math.log(density) + SuspectFit.near(fixed, question, points, new double[0]).logEvidence();
    }
    return SuspectFit.LogSum.of(logs);
  }

  private static Motion fixed(Motion.Late late, double z) {
    return new Motion() {
      @Override
      public int size() {
        return 0;
      }

      @Override
      public Path path(double[] none) {
        return late.path(new double[] {z});
      }
    };
  }

  @Test
  void aCarrierOfSomethingElseFitsNone() {
    NeighbourCase drawn = NeighbourCase.draw(neighbours(20, 1), 5);
    DopplerCurve real = drawn.question.curves().get(0);
    List<DopplerPoint> still =
        real.points().stream()
            .map(point -> new DopplerPoint(point.time(), NeighbourCase.NOMINAL_HZ, Double.NaN))
            .toList();
    WhoseAnswer answer = Whose.of(with(drawn.question, new DopplerCurve("North", still, "")));
    assertEquals(WhoseAnswer.Verdict.FITS_NONE, answer.verdict());
  }

  @Test
  void aPointThatNobodyExplainsIsSetAsideAndNamed() {
    NeighbourCase drawn = NeighbourCase.draw(neighbours(20, 1), 6);
    List<DopplerPoint> points = new ArrayList<>(drawn.question.curves().get(0).points());
    DopplerPoint old = points.get(3);
    DopplerPoint bad = new DopplerPoint(old.time(), old.frequencyHz() + 4000, Double.NaN);
    points.set(3, bad);
    WhoseAnswer answer = Whose.of(with(drawn.question, new DopplerCurve("North", points, "")));
    assertEquals(List.of(bad), answer.setAside());
    assertEquals(WhoseAnswer.Verdict.FOUND, answer.verdict());
    assertEquals(answer.found().get(drawn.truth), answer.likeliest());
  }

  @Test
  void withoutAGivenSpreadItIsFoundFromTheCurve() {
    NeighbourCase drawn = NeighbourCase.draw(neighbours(20, 3), 7);
    WhoseQuestion q = drawn.question;
    WhoseQuestion open =
        new WhoseQuestion(
            q.suspects(),
            q.curves(),
            q.listeners(),
            q.carrier(),
            new WhoseQuestion.Noise(200, 3),
            q.earth());
    WhoseAnswer answer = Whose.of(open);
    assertEquals(60, answer.scaleHz(), 20);
    assertEquals(answer.found().get(drawn.truth), answer.likeliest());
  }

  private static WhoseQuestion with(WhoseQuestion q, DopplerCurve curve) {
    return new WhoseQuestion(
        q.suspects(), List.of(curve), q.listeners(), q.carrier(), q.noise(), q.earth());
  }
}
