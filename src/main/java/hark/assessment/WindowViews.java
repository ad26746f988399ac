package hark.assessment;

import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.EnergyFan;
import hark.ensemble.SkyWindow;
import hark.ensemble.Workers;
import hark.orbit.Eclipse;
import hark.plan.OptionValue;
import hark.plan.PlanOutcome;
import hark.plan.Procedure;
import hark.station.Pass;
import hark.station.Station;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The coming windows as the assessment shows them, and the plan's choices among them. */
final class WindowViews {
  private final Diagnosis diagnosis;
  private final DiagnosisInput input;
  private final PlanOutcome plan;
  private final List<EnergyFan.Point> fan;
  private final Neighbours neighbours;
  private final List<Assessment.Window> views = new ArrayList<>();

  WindowViews(
      Diagnosis diagnosis,
      PlanOutcome plan,
      List<EnergyFan.Point> fan,
      Neighbours neighbours,
      Workers workers) {
    this.neighbours = neighbours;
    this.diagnosis = diagnosis;
    this.input = diagnosis.input();
    this.plan = plan;
    this.fan = fan;
    double[][] beaconOn = new double[diagnosis.windows().size()][];
    workers.each(beaconOn.length, w -> beaconOn[w] = diagnosis.beaconOn(w));
    for (int w = 0; w < beaconOn.length; w++) {
      views.add(view(w, beaconOn[w]));
    }
  }

  List<Assessment.Window> all() {
    return List.copyOf(views);
  }

  List<Assessment.Choice> choices() {
    List<Assessment.Choice> choices = new ArrayList<>();
    for (Map.Entry<Integer, Procedure> choice : plan.choices().entrySet()) {
      choices.add(new Assessment.Choice(views.get(choice.getKey()).id(), choice.getValue().id()));
    }
    return choices;
  }

  private Assessment.Window view(int w, double[] beaconOn) {
    SkyWindow window = diagnosis.windows().get(w);
    Station station = input.stations().get(window.station());
    Pass main = window.passes().get(Diagnosis.heaviest(input, window)).orElseThrow();
    double[] soc = socAt(main.culmination());
    return new Assessment.Window(
        station.name() + " " + Words.seconds(main.aos()),
        station.name(),
        main.aos(),
        main.culmination(),
        main.los(),
        main.maxElevationDeg(),
        geometry(window),
        beaconOn[0],
        beaconOn[1],
        soc[1],
        soc[2],
        soc[3],
        minutesSinceSunrise(main.culmination()),
        station.receive().unattended(),
        Optional.ofNullable(plan.choices().get(w)).map(Procedure::id),
        options(w),
        station
            .use()
            .available()
            .against(input.instant(window.from()), input.instant(window.to())));
  }

  private static List<Assessment.Geometry> geometry(SkyWindow window) {
    return window.passes().stream()
        .flatMap(Optional::stream)
        .map(
            pass ->
                new Assessment.Geometry(
                    pass.objectId(),
                    pass.aos(),
                    pass.culmination(),
                    pass.los(),
                    pass.maxElevationDeg(),
                    pass.aosAzimuthDeg(),
                    pass.culminationAzimuthDeg(),
                    pass.losAzimuthDeg(),
                    pass.culminationRangeKm(),
                    pass.sunlitAtCulmination()))
        .toList();
  }

  private double[] socAt(Instant time) {
    double seconds = input.seconds(time);
    return fan.stream()
        .min(Comparator.comparingDouble(point -> Math.abs(point.seconds() - seconds)))
        .map(EnergyFan.Point::soc)
        .orElseThrow();
  }

  /**
   * Minutes since the end of the last shadow; in shadow, minutes to its end as a negative number.
   */
  private double minutesSinceSunrise(Instant time) {
    Instant sunrise = input.separation();
    for (Eclipse eclipse : diagnosis.eclipses()) {
      if (eclipse.penumbraEntry().isAfter(time)) {
        break;
      }
      sunrise = eclipse.penumbraExit();
    }
    return 1440 * Assessor.days(sunrise, time);
  }

  private List<Assessment.Option> options(int w) {
    List<Assessment.Option> list = new ArrayList<>();
    for (OptionValue value : plan.options().get(w)) {
      Procedure procedure = value.option().procedure();
      list.add(
          new Assessment.Option(
              procedure.id(),
              procedure.title(),
              value.heardThisPass(),
              value.error(),
              value.heardByHorizon(),
              value.informationBits(),
              value.option().costHours(),
              value.hazard(),
              value.reach(),
              list.size() + 1,
              Why.sentence(value, plan.options().get(w), input.end()),
              value.option().sends()
                  ? neighbours.cautions(diagnosis.windows().get(w))
                  : List.of()));
    }
    return list;
  }
}
