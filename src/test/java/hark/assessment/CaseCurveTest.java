package hark.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hark.assessment.Assessment.GoingOn;
import hark.assessment.ReviewCase.Step;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CaseCurveTest {
  private static final CaseCurve CURVE =
      new CaseCurve(List.of(new GoingOn(0, 0), new GoingOn(4, 0.4), new GoingOn(10, 0.46)));

  @Test
  void betweenItsPointsItIsStraightAndAfterThemLevel() {
    assertEquals(0, CURVE.at(0));
    assertEquals(0.2, CURVE.at(2), 1e-12);
    assertEquals(0.43, CURVE.at(7), 1e-12);
    assertEquals(0.46, CURVE.at(100), 1e-12);
    assertEquals(0, new CaseCurve(List.of()).at(5));
  }

  @Test
  void stepsEndWhereTheCurveEnds() {
    List<Step> steps = CURVE.steps(6, 5);
    assertEquals(2, steps.size());
    assertEquals(6, steps.get(0).toHours());
    assertEquals(10, steps.get(1).toHours());
    assertEquals(0.46, steps.get(0).adds() + steps.get(1).adds(), 1e-12);
    assertEquals(1, CURVE.steps(6, 1).size());
  }

  @Test
  void littleBeginsWhereThatManyHoursAddLessThanTheGain() {
    OptionalDouble from = CURVE.littleFrom(0.045, 5);
    // 0.01 an hour from 4 h on, and nothing after 10 h: five hours from 5.5 h on add 0.045
    assertEquals(5.5, from.orElseThrow(), 0.26);
    assertEquals(OptionalDouble.of(0), CURVE.littleFrom(0.9, 5));
    assertEquals(OptionalDouble.empty(), new CaseCurve(List.of()).littleFrom(0.01, 10));
  }
}
