package hark.assessment;

import hark.assessment.Assessment.GoingOn;
import hark.assessment.ReviewCase.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Reads weight found off a curve against hours: straight between its points, level after them. */
record CaseCurve(List<GoingOn> points) {
  private static final double FINE_HOURS = 0.25;

  /** Where the curve ends, h. */
  double lastHours() {
    return points.isEmpty() ? 0 : points.get(points.size() - 1).costHours();
  }

  /** Weight found with so many hours. */
  double at(double hours) {
    GoingOn before = new GoingOn(0, 0);
    for (GoingOn point : points) {
      if (point.costHours() >= hours) {
        double width = point.costHours() - before.costHours();
        double share = width <= 0 ? 1 : (hours - before.costHours()) / width;
        return before.heard() + share * (point.heard() - before.heard());
      }
      before = point;
    }
    return before.heard();
  }

  /** Steps of so many hours, at most so many, until the curve ends. */
  List<Step> steps(double hours, int most) {
    List<Step> steps = new ArrayList<>();
    for (double from = 0; steps.size() < most && from < lastHours(); from += hours) {
      double to = Math.min(from + hours, lastHours());
      steps.add(new Step(from, to, Math.max(0, at(to) - at(from))));
    }
    return steps;
  }

  /** From where on so many hours add less than a gain; empty without a curve. */
  OptionalDouble littleFrom(double gain, double perHours) {
    if (points.isEmpty()) {
      return OptionalDouble.empty();
    }
    for (double from = 0; from <= lastHours(); from += FINE_HOURS) {
      if (at(from + perHours) - at(from) < gain) {
        return OptionalDouble.of(from);
      }
    }
    return OptionalDouble.empty();
  }
}
