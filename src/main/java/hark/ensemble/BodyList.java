package hark.ensemble;

import hark.power.Illumination;
import hark.power.PowerModel;
import hark.power.SimulationRequest.TimedChange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Every body of a diagnosis with its weight, kept without its history: light enough to hold on to,
 * and enough to simulate any of them again, as it was or with other numbers. Immutable.
 */
public final class BodyList {
  private final DiagnosisInput input;
  private final Illumination light;
  private final PowerModel[] models;
  private final List<List<TimedChange>> changes;
  private final int[] draw;
  private final Draws draws;
  private final double[] weight;
  private final List<List<Sharer>> sharers;

  /**
   * A set of events that one body stands for: bodies are shared by sets that differ only in what
   * they do to the radio.
   *
   * @param weight of this set in this body; a body's sharers sum to its weight
   * @param onsets of the set's events, in its order, s since separation
   * @param muteFrom from when on nothing is radiated, s; positive infinity when never
   */
  public record Sharer(EventSet set, double weight, double[] onsets, double muteFrom) {}

  /**
   * Some of the bodies with weights that sum to 1.
   *
   * @param body index of each, rising
   * @param weight of each, above 0
   */
  public record Sample(int[] body, double[] weight) {
    /** How many. */
    public int count() {
      return body.length;
    }
  }

  private BodyList(
      DiagnosisInput input, Illumination light, Population population, double[] memberWeight) {
    this.input = input;
    this.light = light;
    this.draws = population.draws;
    int count = population.bodies.size();
    models = new PowerModel[population.draws.bodies()];
    draw = new int[count];
    weight = new double[count];
    changes = new ArrayList<>(count);
    sharers = new ArrayList<>(count);
    for (Body body : population.bodies) {
      changes.add(body.request().events());
      sharers.add(new ArrayList<>());
    }
    double total = Arrays.stream(memberWeight).sum();
    for (int m = 0; m < memberWeight.length; m++) {
      Member member = population.members.get(m);
      int body = member.body();
      double share = memberWeight[m] / total;
      draw[body] = member.draw();
      models[member.draw()] = population.bodies.get(body).model();
      weight[body] += share;
      sharers
          .get(body)
          .add(
              new Sharer(
                  population.sets.get(member.set()),
                  share,
                  member.onsets(),
                  member.radio().muteFrom()));
    }
  }

  static BodyList of(
      DiagnosisInput input, Illumination light, Population population, double[] memberWeight) {
    return new BodyList(input, light, population, memberWeight);
  }

  /** How many bodies there are, those without weight included. */
  public int count() {
    return weight.length;
  }

  /** What the diagnosis was built from. */
  public DiagnosisInput input() {
    return input;
  }

  /** Sunlight on all of them. */
  public Illumination light() {
    return light;
  }

  /** Weight of a body; all sum to 1. */
  public double weight(int body) {
    return weight[body];
  }

  /** The event sets that a body stands for, as they were drawn. */
  public List<Sharer> sharers(int body) {
    return Collections.unmodifiableList(sharers.get(body));
  }

  /** What happens to a body's electrical system. */
  public List<TimedChange> changes(int body) {
    return changes.get(body);
  }

  /** The drawn value of each uncertain number of a body, by its key, under a prior. */
  public Map<String, Double> values(int body, BodyPrior prior) {
    double[] drawn = values(prior, draw[body], drawsFor(prior));
    Map<String, Double> values = new LinkedHashMap<>();
    for (int k = 0; k < drawn.length; k++) {
      values.put(prior.keys().get(k), drawn[k]);
    }
    return values;
  }

  /** The models of the diagnosis. */
  public Models models() {
    return new Models(models);
  }

  /**
   * The same draws under another prior: a number that was uncertain keeps its quantile, one that is
   * now certain loses its draw, and one that is uncertain only now gets a draw of its own.
   */
  public Models models(BodyPrior changed) {
    Draws more = drawsFor(changed);
    PowerModel[] others = new PowerModel[models.length];
    for (int d = 0; d < models.length; d++) {
      others[d] = models[d] == null ? null : changed.build().apply(values(changed, d, more));
    }
    return new Models(others);
  }

  private double[] values(BodyPrior prior, int drawIndex, Draws more) {
    List<String> before = input.body().keys();
    double[] values = new double[prior.keys().size()];
    for (int k = 0; k < values.length; k++) {
      int known = before.indexOf(prior.keys().get(k));
      int number = known < 0 ? before.size() + k : known;
      double quantile = more.at(drawIndex, Population.FIRST_BODY_DIMENSION + number);
      values[k] = prior.numbers().get(k).quantile(quantile);
    }
    return values;
  }

  /** The diagnosis' draws with room for the numbers of a prior; those there were stay the same. */
  private Draws drawsFor(BodyPrior prior) {
    int numbers = input.body().keys().size() + prior.keys().size();
    return draws.widened(Population.FIRST_BODY_DIMENSION + numbers);
  }

  /** One model for each body; bodies with the same draw share it. */
  public final class Models {
    private final PowerModel[] byDraw;

    private Models(PowerModel[] byDraw) {
      this.byDraw = byDraw;
    }

    /** The model of a body. */
    public PowerModel of(int body) {
      return byDraw[draw[body]];
    }
  }

  /**
   * At most so many of the bodies that carry weight: all of them, or a systematic resample by
   * weight.
   */
  public Sample sample(int most) {
    double[] kept = new double[weight.length];
    int carrying = 0;
    for (double each : weight) {
      carrying += each >= Population.NEGLIGIBLE ? 1 : 0;
    }
    if (carrying <= most) {
      for (int b = 0; b < kept.length; b++) {
        kept[b] = weight[b] >= Population.NEGLIGIBLE ? weight[b] : 0;
      }
    } else {
      resample(kept, most);
    }
    int[] chosen =
        java.util.stream.IntStream.range(0, kept.length).filter(b -> kept[b] > 0).toArray();
    double total = Arrays.stream(kept).sum();
    return new Sample(chosen, Arrays.stream(chosen).mapToDouble(b -> kept[b] / total).toArray());
  }

  /** Picks at equal distances along the weights, in the order of bodies; no chance is in it. */
  private void resample(double[] kept, int picks) {
    double sum = 0;
    int next = 0;
    for (int b = 0; b < kept.length; b++) {
      sum += weight[b];
      while (next < picks && sum * picks > next + 0.5) {
        kept[b] += 1.0 / picks;
        next++;
      }
    }
  }
}
