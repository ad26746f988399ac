package hark.trial.score;

import hark.trial.score.Figure.What;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Makes the figures with bands from outcomes. */
final class Figures {
  /** Edges of the bins of the posterior. */
  static final double[] BINS = {0, 0.01, 0.03, 0.1, 0.3, 0.6, 1};

  private static final double[] LEVELS = {0.5, 0.8, 0.95};

  /** Ranks fewer than this say nothing. */
  private static final int LEAST = 20;

  private final List<Outcome> outcomes;
  private final Report.Subject subject;
  private final List<Figure> figures = new ArrayList<>();

  private Figures(List<Outcome> outcomes, Report.Subject subject) {
    this.outcomes = outcomes;
    this.subject = subject;
  }

  static List<Figure> of(List<Outcome> outcomes, Report.Subject subject) {
    Figures made = new Figures(outcomes, subject);
    if (!outcomes.isEmpty()) {
      made.calibration();
      made.reliability();
      made.places();
    }
    return List.copyOf(made.figures);
  }

  private double[] each(ToDoubleFunction<Outcome> number) {
    return outcomes.stream().mapToDouble(number).toArray();
  }

  private int count(java.util.function.Predicate<Outcome> truth) {
    return (int) outcomes.stream().filter(truth).count();
  }

  private void calibration() {
    for (int k = 0; k < subject.causes().size(); k++) {
      int c = k;
      figures.add(
          Figure.counted(
              What.CALIBRATION,
              subject.causes().get(c),
              each(o -> o.after()[c]),
              count(o -> o.begun()[c])));
    }
    figures.add(
        Figure.counted(
            What.CALIBRATION,
            "three and more events",
            each(Outcome::remainder),
            count(Outcome::isLarger)));
    for (int k = 0; k < subject.objects().size(); k++) {
      int object = k;
      figures.add(
          Figure.counted(
              What.CALIBRATION,
              "object " + subject.objects().get(k),
              each(o -> o.objects()[object]),
              count(o -> o.object() == object)));
    }
    for (int k = 0; k < subject.stations().size(); k++) {
      int s = k;
      figures.add(
          Figure.counted(
              What.CALIBRATION,
              subject.stations().get(s) + " works",
              each(o -> o.stations()[s]),
              count(o -> o.works()[s])));
    }
  }

  private void reliability() {
    List<double[]> all = new ArrayList<>();
    for (int c = 0; c < subject.causes().size(); c++) {
      List<double[]> own = new ArrayList<>();
      for (Outcome outcome : outcomes) {
        own.add(new double[] {outcome.after()[c], outcome.begun()[c] ? 1 : 0});
      }
      bins(subject.causes().get(c), own);
      all.addAll(own);
    }
    bins("all causes", all);
  }

  /** Pairs of belief and truth by bins of the belief. */
  private void bins(String of, List<double[]> pairs) {
    for (int b = 0; b + 1 < BINS.length; b++) {
      double low = BINS[b];
      double high = b + 2 == BINS.length ? 1.1 : BINS[b + 1];
      List<double[]> in = pairs.stream().filter(p -> p[0] >= low && p[0] < high).toList();
      if (in.size() >= LEAST) {
        String name =
            String.format(java.util.Locale.ROOT, "%s at %.2f … %.2f", of, low, BINS[b + 1]);
        figures.add(
            Figure.counted(
                What.RELIABILITY,
                name,
                in.stream().mapToDouble(p -> p[0]).toArray(),
                (int) in.stream().filter(p -> p[1] > 0.5).count()));
      }
    }
  }

  private void places() {
    place("state of charge", each(Outcome::chargeRank));
    for (int k = 0; k < subject.numbers().size(); k++) {
      int number = k;
      place(subject.numbers().get(k), each(o -> o.numberRanks()[number]));
    }
    double[] onsets =
        outcomes.stream()
            .flatMap(o -> o.onsets().stream())
            .mapToDouble(Outcome.OnsetRank::rank)
            .toArray();
    place("onset", onsets);
    ranks("object", each(Outcome::objectRank));
    for (int k = 0; k < subject.causes().size(); k++) {
      int c = k;
      ranks(subject.causes().get(c), each(o -> o.causeRanks()[c]));
    }
  }

  private void place(String of, double[] ranks) {
    if (ranks.length >= LEAST) {
      for (double level : LEVELS) {
        figures.add(Figure.coverage(of, ranks, level));
      }
      ranks(of, ranks);
    }
  }

  private void ranks(String of, double[] ranks) {
    if (ranks.length >= LEAST) {
      figures.add(Figure.ranks(of, ranks));
    }
  }
}
