package hark.assessment;

import hark.assessment.ReviewCase.Shift;
import hark.ensemble.DiagnosisInput;
import hark.plan.Reach;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What the chance found would be under other assumptions: priors of the leading causes, hours, the
 * stations' health. Another prior moves weight between possibilities that have the cause and those
 * that have not, and nothing within either; so two means and the moved weight say all of it.
 */
final class CaseShifts {
  private static final int MOST_CAUSES = 4;
  private static final double LEAST_CAUSE = 0.02;

  private final DiagnosisInput input;
  private final Assessment assessment;
  private final Reach reach;
  private final CaseCurve curve;

  CaseShifts(DiagnosisInput input, Assessment assessment, Reach reach, CaseCurve curve) {
    this.input = input;
    this.assessment = assessment;
    this.reach = reach;
    this.curve = curve;
  }

  /** Widest first. */
  List<Shift> all() {
    List<Shift> shifts = new ArrayList<>();
    assessment.causes().stream()
        .sorted(Comparator.comparingDouble(Assessment.CauseView::posterior).reversed())
        .filter(cause -> cause.posterior() >= LEAST_CAUSE)
        .limit(MOST_CAUSES)
        .forEach(cause -> shifts.add(prior(cause)));
    shifts.add(hours());
    for (int s = 0; s < input.stations().size(); s++) {
      shifts.add(station(s));
    }
    shifts.sort(Comparator.comparingDouble(Shift::width).reversed());
    return List.copyOf(shifts);
  }

  private Shift prior(Assessment.CauseView cause) {
    return new Shift(
        "prior of " + cause.title(),
        "halved",
        moved(cause, cause.ifPriorHalved()),
        "doubled",
        moved(cause, cause.ifPriorDoubled()));
  }

  private double moved(Assessment.CauseView cause, double posterior) {
    int index = index(cause.id());
    double difference = reach.foundWith()[index] - reach.foundWithout()[index];
    double change = (posterior - cause.posterior()) * difference;
    return shifted(Double.isFinite(change) ? change : 0);
  }

  private int index(String id) {
    for (int c = 0; c < input.causes().size(); c++) {
      if (input.causes().get(c).id().equals(id)) {
        return c;
      }
    }
    throw new IllegalStateException("no cause " + id);
  }

  private Shift hours() {
    double planned = assessment.plan().costHours();
    return new Shift(
        "people's hours",
        "half of them",
        shifted(curve.at(planned / 2) - curve.at(planned)),
        "twice as many",
        shifted(curve.at(2 * planned) - curve.at(planned)));
  }

  private Shift station(int s) {
    Reach.OfStation station = reach.stations().get(s);
    return new Shift(
        input.stations().get(s).name(),
        "deaf",
        shifted(station.fails() - reach.found()),
        "proven to work",
        shifted(station.works() - reach.found()));
  }

  private double shifted(double change) {
    return Math.max(0, Math.min(1, assessment.plan().heardByHorizon() + change));
  }
}
