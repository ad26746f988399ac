package hark.ensemble;

import hark.power.BodyHistory;
import hark.power.Illumination;
import hark.power.Simulation;
import hark.power.SimulationRequest;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A longer look ahead than the horizon: some bodies of each cause fly on for months without any
 * command, and the first burst that each sends is noted. Whether anybody would hear it is not
 * asked. The orbit is SGP4's from the newest elements: over a year its shadows move by a day or
 * more, and every date with them.
 */
public final class LongFlight {
  /** Bodies flown at most. */
  public static final int MOST_BODIES = 200;

  /** Bodies flown for one cause at most. */
  private static final int MOST_PER_CAUSE = 24;

  private static final double DAY = 86400;

  private final BodyList list;
  private final DiagnosisInput input;
  private final double now;
  private final List<List<Case>> byCause = new ArrayList<>();
  private double[] weight;

  /** A body standing for a cause, and from when on its radio is mute, s. */
  private record Case(int body, double muteFrom) {}

  /**
   * What became of the bodies in which a cause has begun.
   *
   * @param cause index among the causes
   * @param weight of those bodies among all, 0…1
   * @param bodies that were flown for it
   * @param sending share that sends within the day before now already
   * @param back share that sends at some time between now and the end
   * @param p10 s since separation by which a tenth has sent; empty when fewer do
   */
  public record Return(
      int cause,
      double weight,
      int bodies,
      double sending,
      double back,
      Optional<Double> p10,
      Optional<Double> p50,
      Optional<Double> p90) {}

  private LongFlight(BodyList list) {
    this.list = list;
    this.input = list.input();
    this.now = input.seconds(input.now());
  }

  /**
   * Flies them.
   *
   * @param least weight of a cause from which on it is looked at, 0…1
   * @param end until when
   * @return one for each cause looked at, heaviest first
   */
  public static List<Return> of(BodyList list, double least, Instant end, Workers workers) {
    LongFlight flight = new LongFlight(list);
    flight.choose(least);
    return flight.fly(end, workers);
  }

  private void choose(double least) {
    int causes = input.causes().size();
    List<List<BodyWeight>> cases = new ArrayList<>();
    for (int c = 0; c < causes; c++) {
      cases.add(new ArrayList<>());
    }
    for (int body = 0; body < list.count(); body++) {
      for (BodyList.Sharer sharer : list.sharers(body)) {
        for (int slot = 0; slot < sharer.onsets().length; slot++) {
          if (sharer.onsets()[slot] <= now && sharer.weight() > 0) {
            Case one = new Case(body, sharer.muteFrom());
            cases.get(sharer.set().causes().get(slot)).add(new BodyWeight(one, sharer.weight()));
          }
        }
      }
    }
    long looked = cases.stream().filter(all -> weight(all) >= least).count();
    int each = (int) Math.min(MOST_PER_CAUSE, MOST_BODIES / Math.max(1, looked));
    weight = cases.stream().mapToDouble(LongFlight::weight).toArray();
    for (List<BodyWeight> all : cases) {
      byCause.add(weight(all) >= least ? resample(all, each) : List.of());
    }
  }

  private record BodyWeight(Case of, double weight) {}

  private static double weight(List<BodyWeight> cases) {
    return cases.stream().mapToDouble(BodyWeight::weight).sum();
  }

  /** Picks at equal distances along the weights; no chance is in it. */
  private static List<Case> resample(List<BodyWeight> all, int picks) {
    double total = weight(all);
    List<Case> chosen = new ArrayList<>();
    double sum = 0;
    for (BodyWeight each : all) {
      sum += each.weight();
      while (chosen.size() < picks && sum * picks > (chosen.size() + 0.5) * total) {
        chosen.add(each.of());
      }
    }
    return chosen;
  }

  private List<Return> fly(Instant end, Workers workers) {
    DiagnosisInput longer = input.until(end);
    Illumination light = Sky.of(longer).illumination();
    Map<Integer, Integer> place = new LinkedHashMap<>();
    byCause.forEach(
        cases ->
            cases.stream()
                .filter(each -> each.muteFrom() > now)
                .forEach(each -> place.putIfAbsent(each.body(), place.size())));
    List<Integer> bodies = List.copyOf(place.keySet());
    BodyHistory[] flown = new BodyHistory[bodies.size()];
    workers.eachBlock(
        flown.length,
        // small blocks: few bodies for long, all threads shall have some
        Simulation.BLOCK / 4,
        (from, to) -> {
          List<Simulation.Job> jobs =
              bodies.subList(from, to).stream().map(b -> job(b, end)).toList();
          List<BodyHistory> block = Simulation.runAll(jobs, light);
          for (int k = from; k < to; k++) {
            flown[k] = block.get(k - from);
          }
        });
    List<Return> returns = new ArrayList<>();
    for (int c = 0; c < byCause.size(); c++) {
      if (!byCause.get(c).isEmpty()) {
        returns.add(outcome(c, place, flown));
      }
    }
    returns.sort(Comparator.comparingDouble(Return::weight).reversed());
    return returns;
  }

  private Simulation.Job job(int body, Instant end) {
    SimulationRequest request =
        new SimulationRequest(
            input.seconds(end), now, DAY, list.changes(body), new double[0], new double[0]);
    return new Simulation.Job(list.models().of(body), request);
  }

  private Return outcome(int cause, Map<Integer, Integer> place, BodyHistory[] flown) {
    List<Case> cases = byCause.get(cause);
    List<Double> back = new ArrayList<>();
    int sending = 0;
    for (Case each : cases) {
      if (each.muteFrom() <= now) {
        continue;
      }
      BodyHistory history = flown[place.get(each.body())];
      sending += Ear.Segments.any(history.segments(), now - DAY, now) ? 1 : 0;
      double first = firstBurst(history.segments());
      if (first < each.muteFrom()) {
        back.add(first);
      }
    }
    back.sort(Comparator.naturalOrder());
    int count = cases.size();
    return new Return(
        cause,
        weight[cause],
        count,
        (double) sending / count,
        (double) back.size() / count,
        quantile(back, count, 0.1),
        quantile(back, count, 0.5),
        quantile(back, count, 0.9));
  }

  /** The first burst from now on, s; positive infinity when none comes. */
  private double firstBurst(List<BodyHistory.BeaconSegment> segments) {
    for (int k = Ear.Segments.firstEndingAfter(segments, now); k < segments.size(); k++) {
      double first = Ear.Segments.firstBurstFrom(segments.get(k), now);
      if (first <= segments.get(k).end()) {
        return first;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private static Optional<Double> quantile(List<Double> rising, int count, double level) {
    int place = Math.max(0, (int) Math.ceil(level * count) - 1);
    return place < rising.size() ? Optional.of(rising.get(place)) : Optional.empty();
  }

  /** The last time to which it makes sense to look: not beyond the elements' validity. */
  public static Instant end(DiagnosisInput input, int days, Optional<Instant> decay) {
    Instant wanted = input.now().plus(Duration.ofDays(days));
    return decay.filter(time -> time.isBefore(wanted)).orElse(wanted);
  }
}
