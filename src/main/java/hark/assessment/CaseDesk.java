package hark.assessment;

import hark.assessment.ReviewCase.Effort;
import hark.assessment.ReviewCase.LastDate;
import hark.assessment.ReviewCase.Part;
import hark.assessment.ReviewCase.Watch;
import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.mission.Mission;
import hark.orbit.SunYear;
import hark.plan.PlanOutcome;
import hark.plan.Reach;
import hark.problem.BadInput;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Makes the case for going on from an assessment. Nothing is worked out before somebody asks; then
 * it takes a few seconds, most of them for following returns over a year. The same question has the
 * same answer. Safe for several threads.
 */
public final class CaseDesk {
  /** What counts as little gain when nobody says otherwise, 0…1. */
  public static final double USUAL_GAIN = 0.01;

  /** …for so many hours. */
  private static final double STEP_HOURS = 10;

  private static final int STEPS = 2;
  private static final int LOOK_DAYS = 365;
  private static final int MONTH_DAYS = 30;
  private static final double LEAST_CATCH = 0.005;
  private static final int MOST_CATCHES = 4;

  private final Mission mission;
  private final Diagnosis diagnosis;
  private final PlanOutcome plan;
  private final Assessment assessment;
  private final EnergyDesk energy;
  private final int threads;
  private Assessment looked;
  private Reach reach;

  CaseDesk(
      Mission mission,
      Diagnosis diagnosis,
      PlanOutcome plan,
      Assessment assessment,
      EnergyDesk energy,
      int threads) {
    this.mission = mission;
    this.diagnosis = diagnosis;
    this.plan = plan;
    this.assessment = assessment;
    this.energy = energy;
    this.threads = threads;
  }

  /** The case with the usual measure of little gain. */
  public ReviewCase made() {
    return made(USUAL_GAIN);
  }

  /**
   * The case.
   *
   * @param gain what counts as little for ten hours, 0…1
   * @throws BadInput when it is outside (0, 1)
   */
  public synchronized ReviewCase made(double gain) {
    if (!(gain > 0 && gain < 1)) {
      throw BadInput.of(
          "a gain of " + gain + " is outside (0, 1)", "--gain", "give a share such as 0.01");
    }
    if (reach == null) {
      reach = Threads.with(threads, workers -> Reach.of(diagnosis, plan, workers));
      looked = assessment.with(energy.longLook(LOOK_DAYS));
    }
    return assembled(gain);
  }

  private ReviewCase assembled(double gain) {
    DiagnosisInput input = diagnosis.input();
    CaseCurve curve = new CaseCurve(assessment.goingOn());
    CaseDates dates = new CaseDates(mission, input, looked, year(input));
    List<ReviewCase.Step> steps = curve.steps(STEP_HOURS, STEPS);
    Effort effort = effort(gain, curve, dates);
    List<ReviewCase.Dated> dated = dates.all();
    List<ReviewCase.Unheard> unheard = CaseUnheard.of(diagnosis, looked, reach);
    Optional<Watch> watch = reach.watch().map(this::watch);
    return new ReviewCase(
        assessment.mission(),
        assessment.now(),
        input.end(),
        assessment.silence(),
        assessment.crewHoursPerWeek(),
        assessment.plan().costHours(),
        assessment.plan().heardByHorizon(),
        reach.error(),
        reach.found(),
        curve.points(),
        steps,
        effort,
        dated,
        last(dates),
        unheard,
        assessment.remainder(),
        watch,
        new CaseShifts(input, assessment, reach, curve).all(),
        assumptions(input),
        new CaseArguments(assessment, steps, effort, dated, unheard, watch).all());
  }

  private static Optional<SunYear> year(DiagnosisInput input) {
    try {
      return Optional.of(YearView.year(input)).filter(found -> !found.days().isEmpty());
    } catch (BadInput tooEccentric) {
      return Optional.empty();
    }
  }

  /** An orbit too eccentric for the estimate has none. */
  private Optional<LastDate> last(CaseDates dates) {
    return YearView.elements(diagnosis.input()).eccentricity() > SunYear.MOST_ECCENTRIC
        ? Optional.empty()
        : Optional.of(dates.last());
  }

  private Effort effort(double gain, CaseCurve curve, CaseDates dates) {
    double[] weights = diagnosis.setWeights();
    double everywhere = 0;
    for (int s = 0; s < weights.length; s++) {
      everywhere += weights[s] * reach.sets().get(s).everywhere();
    }
    double later = dates.returningBefore(assessment.now().plus(MONTH_DAYS, ChronoUnit.DAYS));
    double perWeek = assessment.plan().costHours() * 7 / assessment.horizonDays();
    return new Effort(
        gain,
        STEP_HOURS,
        curve.littleFrom(gain, STEP_HOURS),
        perWeek * MONTH_DAYS / 7,
        Math.max(0, Math.min(1, everywhere + later) - reach.found()));
  }

  private Watch watch(Reach.Watch kept) {
    DiagnosisInput input = diagnosis.input();
    List<Part> catches = new ArrayList<>();
    for (Assessment.CauseView cause : assessment.causes()) {
      for (int c = 0; c < input.causes().size(); c++) {
        double found = kept.foundWith()[c];
        if (input.causes().get(c).id().equals(cause.id()) && Double.isFinite(found)) {
          catches.add(new Part(cause.title(), cause.posterior() * found));
        }
      }
    }
    return new Watch(
        input.stations().get(kept.station()).name(),
        kept.unattended(),
        kept.windows(),
        kept.hours() * 7 / assessment.horizonDays(),
        kept.found(),
        catches.stream()
            .filter(part -> part.weight() >= LEAST_CATCH)
            .sorted(Comparator.comparingDouble(Part::weight).reversed())
            .limit(MOST_CATCHES)
            .toList());
  }

  private List<String> assumptions(DiagnosisInput input) {
    List<String> list = new ArrayList<>();
    list.add(
        "Priors are beliefs at separation, stated as judgement; everything else follows from the"
            + " mission file and the journal.");
    list.add(
        "At most two things are wrong at once; three and more weigh "
            + Words.percent(assessment.remainder())
            + " if they fit as pairs do on average.");
    list.add(
        "Stations work as believed with "
            + Words.list(
                assessment.stations().stream()
                    .map(each -> Words.percent(each.works()) + " (" + each.station() + ")")
                    .toList())
            + " after the record so far.");
    list.add(
        "The crew has "
            + Math.round(assessment.crewHoursPerWeek())
            + " h a week and follows the plan; nobody outside listens unless the plan asks them.");
    list.add(
        "Dates beyond "
            + Words.date(input.end())
            + " follow some of the possibilities of each cause without any command, and ask only"
            + " whether they send, not whether anybody would hear it.");
    list.add(
        "The orbit's end: drag coefficient 2.2, the mission file's mean area and mass, a simple"
            + " law for the air's density between a quiet and an active Sun, drag known to a factor"
            + " of 1.3.");
    assessment.warnings().forEach(list::add);
    return list;
  }
}
