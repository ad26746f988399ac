package hark.plan;

import hark.ensemble.Cause;
import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.LeaveOneOut;
import hark.ensemble.Listening;
import hark.ensemble.Particles;
import hark.ensemble.SkyWindow;
import hark.ensemble.Workers;
import hark.link.Way;
import hark.station.Station;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Chances by window and particle, and their sums. */
final class ReachSum {
  private static final int PARTICLES = 1200;
  private static final double SOON_SECONDS = 86400;

  /** An attended station is taken to keep the best pass of each so many seconds. */
  private static final double ATTENDED_EVERY_SECONDS = 86400;

  private final Diagnosis diagnosis;
  private final DiagnosisInput input;
  private final PlanOutcome plan;
  private final Particles particles;
  private final List<SkyWindow> windows;
  private final HeardBy heardBy;
  private final double[][] works;
  private final float[][] planned;
  private final float[][] widest;
  private final float[][] watched;
  private final List<Integer> watch;

  ReachSum(Diagnosis diagnosis, PlanOutcome plan, Workers workers) {
    this.diagnosis = diagnosis;
    this.input = diagnosis.input();
    this.plan = plan;
    particles = diagnosis.particles(PARTICLES);
    windows = diagnosis.windows();
    heardBy = new HeardBy(windows.stream().map(SkyWindow::station).toList());
    works = new double[particles.count()][input.stations().size()];
    for (int p = 0; p < works.length; p++) {
      for (int s = 0; s < works[p].length; s++) {
        works[p][s] = particles.works(p, s);
      }
    }
    planned = new float[windows.size()][];
    widest = new float[windows.size()][];
    watched = new float[windows.size()][];
    watch = watchWindows();
    workers.each(windows.size(), this::hear);
  }

  private void hear(int w) {
    Listening wide = widest(w);
    List<Listening> ways = new ArrayList<>(List.of(wide));
    Optional<Listening> chosen = planned(w);
    chosen.filter(way -> !ways.contains(way)).ifPresent(ways::add);
    Optional<Listening> kept = watch.contains(w) ? cheapest(w) : Optional.empty();
    kept.filter(way -> !ways.contains(way)).ifPresent(ways::add);
    float[][] rows = particles.chances(windows.get(w), ways);
    widest[w] = best(rows);
    planned[w] = chosen.map(way -> rows[ways.indexOf(way)]).orElse(null);
    watched[w] = kept.map(way -> rows[ways.indexOf(way)]).orElse(null);
  }

  /** Whichever ear hears it best, by particle: what follows another object may hear more. */
  private static float[] best(float[][] rows) {
    float[] best = rows[0].clone();
    for (float[] row : rows) {
      for (int p = 0; p < best.length; p++) {
        best[p] = Math.max(best[p], row[p]);
      }
    }
    return best;
  }

  private Optional<Listening> planned(int w) {
    return Optional.ofNullable(plan.choices().get(w))
        .flatMap(
            procedure ->
                plan.options().get(w).stream()
                    .map(OptionValue::option)
                    .filter(option -> option.procedure().id().equals(procedure.id()))
                    .filter(WindowOption::listens)
                    .map(WindowOption::listening)
                    .findFirst());
  }

  /** The widest band of all options, recorded and searched, the antenna as usual. */
  private Listening widest(int w) {
    List<WindowOption> all = plan.options().get(w).stream().map(OptionValue::option).toList();
    double hertz = all.stream().mapToDouble(o -> o.listening().windowHz()).max().orElse(0);
    int tracked =
        all.stream()
            .filter(option -> !followsAnother(option))
            .map(option -> option.listening().tracked())
            .findFirst()
            .orElseGet(() -> Diagnosis.heaviest(input, windows.get(w)));
    return new Listening(Way.RECORDING, hertz, 0, tracked, 0, 0);
  }

  private static boolean followsAnother(WindowOption option) {
    return option.procedure().change() instanceof Procedure.Listen listen
        && listen.otherCandidate();
  }

  private Optional<OptionValue> cheapestOption(int w) {
    return plan.options().get(w).stream()
        .filter(value -> value.option().procedure().change() instanceof Procedure.Listen)
        .min(
            Comparator.comparingDouble((OptionValue value) -> value.option().costHours())
                .thenComparing(Comparator.comparingDouble(OptionValue::heardThisPass).reversed()));
  }

  private Optional<Listening> cheapest(int w) {
    return cheapestOption(w).map(value -> value.option().listening());
  }

  /** All windows of a station that records by itself, else one good pass a day. */
  private List<Integer> watchWindows() {
    Map<Integer, List<Integer>> alone = new TreeMap<>();
    for (int w = 0; w < windows.size(); w++) {
      if (station(w).receive().unattended() && cheapestOption(w).isPresent()) {
        alone.computeIfAbsent(windows.get(w).station(), s -> new ArrayList<>()).add(w);
      }
    }
    return alone.values().stream()
        .max(Comparator.comparingInt(List::size))
        .orElseGet(this::bestOfEachDay);
  }

  private Station station(int w) {
    return input.stations().get(windows.get(w).station());
  }

  private List<Integer> bestOfEachDay() {
    Map<Long, Integer> best = new TreeMap<>();
    for (int w = 0; w < windows.size(); w++) {
      if (cheapestOption(w).isPresent()) {
        double since = windows.get(w).from() - input.seconds(input.now());
        best.merge((long) Math.floor(since / ATTENDED_EVERY_SECONDS), w, this::better);
      }
    }
    return List.copyOf(best.values());
  }

  private int better(int a, int b) {
    double heardA = cheapestOption(a).orElseThrow().heardThisPass();
    double heardB = cheapestOption(b).orElseThrow().heardThisPass();
    return heardB > heardA ? b : a;
  }

  /** Chance that one particle is heard in windows that begin before a time. */
  private double heard(float[][] chances, int p, double[] healthy, double until) {
    HeardBy.Sum sum = heardBy.new Sum();
    sum.begin(healthy);
    for (int w = 0; w < windows.size(); w++) {
      if (chances[w] != null && chances[w][p] > 0 && windows.get(w).from() < until) {
        sum.listen(w, chances[w][p]);
      }
    }
    return 1 - sum.missed();
  }

  private double[] heard(float[][] chances, double[][] healthy, double until) {
    double[] heard = new double[particles.count()];
    for (int p = 0; p < heard.length; p++) {
      heard[p] = heard(chances, p, healthy[p], until);
    }
    return heard;
  }

  Reach reach() {
    double ever = Double.POSITIVE_INFINITY;
    double[] found = heard(planned, works, ever);
    double[][] sound = new double[particles.count()][input.stations().size()];
    for (double[] each : sound) {
      Arrays.fill(each, 1);
    }
    double soonEnd = input.seconds(input.now()) + SOON_SECONDS;
    double[] soon = heard(widest, sound, soonEnd);
    double[] everywhere = heard(widest, sound, ever);
    return new Reach(
        mean(found, p -> true),
        LeaveOneOut.error(group -> mean(found, p -> particles.group(p) != group)),
        byCause(found, true),
        byCause(found, false),
        sets(soon, everywhere),
        stations(),
        watch(ever));
  }

  private interface Which {
    boolean holds(int particle);
  }

  private double mean(double[] values, Which which) {
    double sum = 0;
    int count = 0;
    for (int p = 0; p < values.length; p++) {
      if (which.holds(p)) {
        sum += values[p];
        count++;
      }
    }
    return count == 0 ? Double.NaN : sum / count;
  }

  private double[] byCause(double[] values, boolean begun) {
    List<Cause> causes = input.causes();
    double[] means = new double[causes.size()];
    for (int c = 0; c < means.length; c++) {
      int cause = c;
      means[c] = mean(values, p -> begun(p, cause) == begun);
    }
    return means;
  }

  private boolean begun(int p, int cause) {
    List<Integer> set = diagnosis.sets().get(particles.set(p)).causes();
    int slot = set.indexOf(cause);
    return slot >= 0 && particles.onsets(p)[slot] <= input.seconds(input.now());
  }

  private List<Reach.OfSet> sets(double[] soon, double[] everywhere) {
    int count = diagnosis.sets().size();
    double[] weight = new double[count];
    double[] first = new double[count];
    double[] all = new double[count];
    for (int p = 0; p < soon.length; p++) {
      weight[particles.set(p)] += 1.0 / soon.length;
      first[particles.set(p)] += soon[p] / soon.length;
      all[particles.set(p)] += everywhere[p] / soon.length;
    }
    List<Reach.OfSet> sets = new ArrayList<>();
    for (int s = 0; s < count; s++) {
      boolean none = weight[s] == 0;
      sets.add(
          new Reach.OfSet(
              weight[s], none ? 0 : first[s] / weight[s], none ? 0 : all[s] / weight[s]));
    }
    return sets;
  }

  private List<Reach.OfStation> stations() {
    List<Reach.OfStation> stations = new ArrayList<>();
    for (int s = 0; s < input.stations().size(); s++) {
      stations.add(new Reach.OfStation(foundIf(s, 1), foundIf(s, 0)));
    }
    return stations;
  }

  private double foundIf(int station, double health) {
    double[][] changed = new double[works.length][];
    for (int p = 0; p < changed.length; p++) {
      changed[p] = works[p].clone();
      changed[p][station] = health;
    }
    return mean(heard(planned, changed, Double.POSITIVE_INFINITY), p -> true);
  }

  private Optional<Reach.Watch> watch(double until) {
    if (watch.isEmpty()) {
      return Optional.empty();
    }
    double[] found = heard(watched, works, until);
    double hours =
        watch.stream().mapToDouble(w -> cheapestOption(w).orElseThrow().option().costHours()).sum();
    int station = windows.get(watch.get(0)).station();
    return Optional.of(
        new Reach.Watch(
            station,
            station(watch.get(0)).receive().unattended(),
            watch.size(),
            hours,
            mean(found, p -> true),
            byCause(found, true)));
  }
}
