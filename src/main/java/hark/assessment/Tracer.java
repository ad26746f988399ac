package hark.assessment;

import hark.assessment.MemberTrace.Event;
import hark.assessment.MemberTrace.Row;
import hark.assessment.MemberTrace.Share;
import hark.ensemble.BodyList;
import hark.ensemble.BodyPrior;
import hark.ensemble.DiagnosisInput;
import hark.power.BodyHistory;
import hark.power.BodyHistory.Probe;
import hark.power.BodyHistory.Transition;
import hark.power.PowerModel;
import hark.power.Simulation;
import hark.power.SimulationRequest;
import hark.problem.BadInput;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** Follows one body: first to learn when its state changes, then once more to read it there. */
final class Tracer {
  /** Regular rows of one trace; a smaller step is refused. */
  static final int MOST_ROWS = 100_000;

  /** Explanations that are listed. */
  private static final int EXPLANATIONS = 8;

  private static final double GRID_SECONDS = 600;

  private final BodyList list;
  private final BodyPrior prior;
  private final DiagnosisInput input;

  /** Follows bodies under a prior: that of the diagnosis, or that of a what-if. */
  Tracer(BodyList list, BodyPrior prior) {
    this.list = list;
    this.prior = prior;
    this.input = list.input();
  }

  MemberTrace trace(int member, int stepSeconds) {
    refuse(member, stepSeconds);
    int body = member - 1;
    PowerModel model = list.models(prior).of(body);
    List<Transition> changes = run(body, model, new double[0]).transitions();
    double[] times = times(stepSeconds, changes);
    List<Probe> probes = run(body, model, times).probes();
    return new MemberTrace(
        member,
        list.count(),
        list.weight(body),
        list.values(body, prior),
        events(body),
        explanations(body),
        rows(probes, changes));
  }

  private void refuse(int member, int stepSeconds) {
    if (member < 1 || member > list.count()) {
      throw BadInput.of(
          "there is no member " + member,
          "--member",
          "give a number from 1 to " + list.count() + "; `hark energy` names some worth a look");
    }
    double seconds = input.seconds(input.end());
    if (stepSeconds < 1 || seconds / stepSeconds > MOST_ROWS) {
      throw BadInput.of(
          "a step of " + stepSeconds + " s gives more than " + MOST_ROWS + " rows",
          "--step",
          "give at least " + (int) Math.ceil(seconds / MOST_ROWS) + " s");
    }
  }

  private BodyHistory run(int body, PowerModel model, double[] probeSeconds) {
    SimulationRequest request =
        new SimulationRequest(
            input.seconds(input.end()),
            0,
            GRID_SECONDS,
            list.changes(body),
            probeSeconds,
            new double[0]);
    return Simulation.run(model, list.light(), request);
  }

  private double[] times(int stepSeconds, List<Transition> changes) {
    int regular = (int) Math.floor(input.seconds(input.end()) / stepSeconds);
    DoubleStream steps =
        java.util.stream.IntStream.rangeClosed(0, regular)
            .mapToDouble(n -> n * (double) stepSeconds);
    DoubleStream own = changes.stream().mapToDouble(Transition::seconds);
    return DoubleStream.concat(steps, own).sorted().distinct().toArray();
  }

  /** One row a time; a time with several changes has one row for each, in their order. */
  private List<Row> rows(List<Probe> probes, List<Transition> changes) {
    List<Row> rows = new ArrayList<>();
    int next = 0;
    String state = "off";
    for (Probe probe : probes) {
      boolean changed = false;
      while (next < changes.size() && changes.get(next).seconds() <= probe.seconds()) {
        state = Course.word(changes.get(next).to());
        rows.add(row(probe, state, Optional.of(Course.words(changes.get(next).reason()))));
        changed = true;
        next++;
      }
      if (!changed) {
        rows.add(row(probe, state, Optional.empty()));
      }
    }
    return rows;
  }

  private Row row(Probe probe, String state, Optional<String> change) {
    return new Row(
        input.instant(probe.seconds()),
        list.light().fractionAt(probe.seconds()),
        probe.arrayWatts(),
        probe.loadWatts(),
        probe.batteryAmps(),
        probe.volts(),
        probe.soc(),
        probe.batteryCelsius(),
        probe.structureCelsius(),
        state,
        change);
  }

  /** Every event that any of the body's explanations holds, by onset. */
  private List<Event> events(int body) {
    List<BodyList.Sharer> sharers =
        list.sharers(body).stream()
            .sorted(Comparator.comparingDouble(BodyList.Sharer::weight).reversed())
            .toList();
    List<Event> events = new ArrayList<>();
    BodyList.Sharer heaviest = sharers.get(0);
    for (int i = 0; i < heaviest.onsets().length; i++) {
      double onset = heaviest.onsets()[i];
      if (onset < input.seconds(input.end())) {
        var cause = input.causes().get(heaviest.set().causes().get(i));
        events.add(new Event(cause.id(), cause.title(), input.instant(onset), does(body, onset)));
      }
    }
    events.sort(Comparator.comparing(Event::onset));
    return events;
  }

  private String does(int body, double onset) {
    List<String> words =
        list.changes(body).stream()
            .filter(change -> change.onsetSeconds() == onset)
            .map(change -> ChangeWords.of(change.change()))
            .toList();
    return words.isEmpty() ? "radio only" : String.join(", ", words);
  }

  private List<Share> explanations(int body) {
    Map<String, Double> sums = new LinkedHashMap<>();
    double whole = list.weight(body);
    for (BodyList.Sharer sharer : list.sharers(body)) {
      String title = SetTitle.begun(input, sharer, input.seconds(input.end()));
      sums.merge(title, whole > 0 ? sharer.weight() / whole : 0, Double::sum);
    }
    return SetTitle.heaviest(sums, EXPLANATIONS);
  }
}
