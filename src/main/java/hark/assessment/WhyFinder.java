package hark.assessment;

import hark.assessment.MemberTrace.Share;
import hark.assessment.WhyThere.Reason;
import hark.assessment.WhyThere.StateShare;
import hark.ensemble.BodyList;
import hark.ensemble.BodyRun;
import hark.ensemble.DiagnosisInput;
import hark.power.PowerModel.BusState;
import hark.problem.BadInput;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Groups bodies by the state they are in at a time and by what brought them there. */
final class WhyFinder {
  /** Explanations named for each reason; more would be noise. */
  private static final int EXPLANATIONS = 5;

  private final BodyList list;
  private final BodyRun run;
  private final DiagnosisInput input;

  WhyFinder(BodyList list, BodyRun run) {
    this.list = list;
    this.run = run;
    this.input = list.input();
  }

  /** One body of the sample at the time asked about. */
  private record Case(int k, Course.Since since) {}

  WhyThere at(Instant time) {
    if (time.isBefore(input.separation()) || time.isAfter(input.end())) {
      throw BadInput.of(
          time + " is not between separation and the horizon",
          "the time asked about",
          "ask for a time from " + input.separation() + " to " + input.end());
    }
    double seconds = input.seconds(time);
    Map<BusState, List<Case>> byState = new EnumMap<>(BusState.class);
    for (int k = 0; k < run.sample().count(); k++) {
      Course.Since since = Course.at(run.history(k), seconds);
      byState.computeIfAbsent(since.state(), s -> new ArrayList<>()).add(new Case(k, since));
    }
    List<StateShare> states = new ArrayList<>();
    byState.forEach((state, cases) -> states.add(state(state, cases, seconds)));
    states.sort(Comparator.comparingDouble(StateShare::share).reversed());
    return new WhyThere(time, List.copyOf(states));
  }

  /** The heaviest member of each state at a time. */
  List<EnergyReport.Example> examples(Instant time) {
    return at(time).states().stream()
        .map(
            state ->
                new EnergyReport.Example(
                    state.state(),
                    state.share(),
                    state.member(),
                    explanations(List.of(state.member() - 1), new double[] {1}, time)
                        .get(0)
                        .title()))
        .toList();
  }

  private StateShare state(BusState state, List<Case> cases, double seconds) {
    Map<String, List<Case>> byReason = new LinkedHashMap<>();
    for (Case each : cases) {
      byReason.computeIfAbsent(each.since().reason(), r -> new ArrayList<>()).add(each);
    }
    List<Reason> reasons = new ArrayList<>();
    byReason.forEach((reason, some) -> reasons.add(reason(reason, some, seconds)));
    reasons.sort(Comparator.comparingDouble(Reason::share).reversed());
    return new StateShare(Course.word(state), share(cases), heaviest(cases), List.copyOf(reasons));
  }

  private Reason reason(String reason, List<Case> cases, double seconds) {
    List<Integer> bodies = cases.stream().map(each -> run.sample().body()[each.k()]).toList();
    double[] weights = cases.stream().mapToDouble(each -> weight(each)).toArray();
    return new Reason(
        reason,
        Course.words(reason),
        share(cases),
        input.instant(median(cases)),
        heaviest(cases),
        explanations(bodies, weights, input.instant(seconds)));
  }

  private double weight(Case each) {
    return run.sample().weight()[each.k()];
  }

  private double share(List<Case> cases) {
    return cases.stream().mapToDouble(this::weight).sum();
  }

  private int heaviest(List<Case> cases) {
    Case best = cases.get(0);
    for (Case each : cases) {
      best = weight(each) > weight(best) ? each : best;
    }
    return run.sample().body()[best.k()] + 1;
  }

  private double median(List<Case> cases) {
    List<Case> rising = new ArrayList<>(cases);
    rising.sort(Comparator.comparingDouble(each -> each.since().seconds()));
    double half = share(cases) / 2;
    double sum = 0;
    for (Case each : rising) {
      sum += weight(each);
      if (sum >= half) {
        return each.since().seconds();
      }
    }
    return rising.get(rising.size() - 1).since().seconds();
  }

  private List<Share> explanations(List<Integer> bodies, double[] weights, Instant time) {
    Map<String, Double> sums = new LinkedHashMap<>();
    for (int i = 0; i < weights.length; i++) {
      int body = bodies.get(i);
      double whole = list.sharers(body).stream().mapToDouble(BodyList.Sharer::weight).sum();
      for (BodyList.Sharer sharer : list.sharers(body)) {
        double share = whole > 0 ? sharer.weight() / whole : 0;
        String title = SetTitle.begun(input, sharer, input.seconds(time));
        sums.merge(title, share * weights[i], Double::sum);
      }
    }
    return SetTitle.heaviest(sums, EXPLANATIONS);
  }
}
