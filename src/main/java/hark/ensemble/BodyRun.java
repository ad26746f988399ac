package hark.ensemble;

import hark.power.BodyHistory;
import hark.power.EnergyBooks;
import hark.power.Simulation;
import hark.power.SimulationRequest;
import java.util.ArrayList;
import java.util.List;

/**
 * Bodies of a {@link BodyList} simulated again from separation to the horizon, under the models of
 * the diagnosis or under others. Immutable.
 */
public final class BodyRun {
  private final BodyList list;
  private final BodyList.Sample sample;
  private final BodyHistory[] histories;

  private BodyRun(BodyList list, BodyList.Sample sample, BodyHistory[] histories) {
    this.list = list;
    this.sample = sample;
    this.histories = histories;
  }

  /**
   * Simulates them.
   *
   * @param bookSeconds times at which the energy books are read, rising, s since separation
   */
  public static BodyRun of(
      BodyList list,
      BodyList.Sample sample,
      BodyList.Models models,
      double[] bookSeconds,
      Workers workers) {
    BodyHistory[] histories = new BodyHistory[sample.count()];
    double start = Population.gridStart(list.input());
    workers.eachBlock(
        histories.length,
        Simulation.BLOCK,
        (from, to) -> {
          List<Simulation.Job> jobs = new ArrayList<>();
          for (int k = from; k < to; k++) {
            int body = sample.body()[k];
            SimulationRequest request =
                new SimulationRequest(
                    list.input().seconds(list.input().end()),
                    start,
                    Population.GRID_SECONDS,
                    list.changes(body),
                    bookSeconds,
                    new double[0]);
            jobs.add(new Simulation.Job(models.of(body), request));
          }
          List<BodyHistory> block = Simulation.runAll(jobs, list.light());
          for (int k = from; k < to; k++) {
            histories[k] = block.get(k - from);
          }
        });
    return new BodyRun(list, sample, histories);
  }

  /** Which bodies, and their weights. */
  public BodyList.Sample sample() {
    return sample;
  }

  /** What became of the k-th body of the sample. */
  public BodyHistory history(int k) {
    return histories[k];
  }

  /** State of charge and bus states against time, from a day before now to the horizon. */
  public List<EnergyFan.Point> fan(Workers workers) {
    EnergyFan.Point[] points = new EnergyFan.Point[histories[0].soc().length];
    workers.each(points.length, g -> points[g] = point(g));
    return List.of(points);
  }

  private EnergyFan.Point point(int g) {
    double seconds = histories[0].gridStart() + g * histories[0].gridStep();
    double[] states = new double[4];
    double[] soc = new double[histories.length];
    double transmitting = 0;
    for (int k = 0; k < soc.length; k++) {
      soc[k] = histories[k].soc()[g];
      states[histories[k].states()[g]] += sample.weight()[k];
      if (Ear.Segments.any(histories[k].segments(), seconds, seconds)) {
        transmitting += sample.weight()[k] * audible(k, seconds);
      }
    }
    return new EnergyFan.Point(
        seconds,
        WeightedQuantiles.of(soc, sample.weight(), EnergyFan.LEVELS),
        states,
        transmitting);
  }

  /** Share of a body's weight whose radio still radiates at a time. */
  private double audible(int k, double seconds) {
    int body = sample.body()[k];
    double radiates = 0;
    for (BodyList.Sharer sharer : list.sharers(body)) {
      radiates += sharer.muteFrom() > seconds ? sharer.weight() : 0;
    }
    return radiates / list.weight(body);
  }

  /**
   * Weighted mean of the energy books at the times asked for, cumulative from separation, J; as
   * many as there are times.
   */
  public List<EnergyBooks> meanBooks() {
    List<EnergyBooks> means = new ArrayList<>();
    for (int t = 0; t < histories[0].books().size(); t++) {
      means.add(mean(t));
    }
    return means;
  }

  private EnergyBooks mean(int t) {
    EnergyBooks sum = EnergyBooks.NONE;
    for (int k = 0; k < histories.length; k++) {
      sum = sum.plus(histories[k].books().get(t), sample.weight()[k]);
    }
    return sum;
  }
}
