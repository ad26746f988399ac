package hark.trial.campaign;

import hark.ensemble.Candidate;
import hark.ensemble.Cause;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.Effect;
import hark.ensemble.RadioChange;
import hark.ensemble.Uncertain;
import hark.power.Illumination;
import hark.power.OnboardChange.Clearing;
import hark.power.PowerModel;
import hark.power.SimulationRequest.TimedChange;
import hark.trial.PlainLink;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Draws truths from a mission's priors as its files state them, each event by itself: three and
 * more at once happen too. This and {@link Geometry} are where the numbers of {@code hark.ensemble}
 * become plain ones; the simulators behind know nothing of it.
 */
public final class World {
  private static final double DAY = 86_400;

  /** Events happen within so many seconds of separation. */
  static final double SPAN = 30 * DAY;

  private static final double SHIFTED_RADIATED_DB = -3;
  private static final double SHIFTED_ALONG_TRACK = 2;
  private static final double SHIFTED_TUMBLE = 0.1;
  private static final double SHIFTED_ODDS = 2.5;

  private final DiagnosisInput input;
  private final boolean shifted;
  private final double firstEclipse;
  private final double quiet;
  private final List<StationHealth> stations;

  /** For a mission's priors, or for those of another world. */
  public World(DiagnosisInput input, Illumination light, Settings.Kind kind) {
    this.input = input;
    this.shifted = kind == Settings.Kind.SHIFTED;
    firstEclipse = light.nextEntryAfter(0);
    quiet = input.body().typical().quietSeconds();
    stations = input.stations().stream().map(station -> new StationHealth(station, input)).toList();
  }

  /** A truth. */
  public Truth draw(SplittableRandom random) {
    List<Cause> causes = input.causes();
    double[] onsets = new double[causes.size()];
    double[] sizes = new double[causes.size()];
    List<TimedChange> changes = new ArrayList<>();
    List<PlainLink.Harm> harms = new ArrayList<>();
    for (int c = 0; c < onsets.length; c++) {
      double happens = random.nextDouble();
      double when = inside(random);
      double size = inside(random);
      sizes[c] = size;
      onsets[c] = happens < probability(c) ? onset(causes.get(c), when) : Double.NaN;
      if (!Double.isNaN(onsets[c])) {
        happen(causes.get(c), onsets[c], size, changes, harms);
      }
    }
    double[] values = values(random);
    PowerModel model = input.body().build().apply(values);
    double power = inside(random);
    double frequency = inside(random);
    double[] radiated =
        input.beacons().stream().mapToDouble(b -> b.radiated().quantile(power)).toArray();
    double weaker = shifted ? SHIFTED_RADIATED_DB : 0;
    return new Truth(
        onsets,
        sizes,
        values,
        model,
        changes,
        harms,
        object(random.nextDouble()),
        random.nextGaussian() * (shifted ? SHIFTED_ALONG_TRACK : 1),
        IntStream.range(0, radiated.length).mapToDouble(b -> radiated[b] + weaker).toArray(),
        input.beacons().stream()
            .mapToDouble(b -> b.frequencyErrorHz().quantile(frequency))
            .toArray(),
        stations.stream().map(health -> health.draw(random)).toList());
  }

  private double probability(int cause) {
    double p = input.causes().get(cause).probability();
    if (!shifted) {
      return p;
    }
    // every second cause is likelier than the crew believes, the others less likely
    return cause % 2 == 0 ? Math.min(0.5, SHIFTED_ODDS * p) : p / SHIFTED_ODDS;
  }

  private double onset(Cause cause, double u) {
    return switch (cause.onset()) {
      case SEPARATION -> 0;
      case UNIFORM -> SPAN * u;
      case HAZARD -> -Math.log1p(-u * cause.probability()) / rate(cause);
      case FIRST_ECLIPSE -> firstEclipse;
      case FIRST_TRANSMISSION -> quiet;
    };
  }

  private static double rate(Cause cause) {
    return -Math.log1p(-cause.probability()) / SPAN;
  }

  /** Chance that a cause has begun by a time, before any evidence. */
  double begunBy(int index, double seconds) {
    Cause cause = input.causes().get(index);
    double p = cause.probability();
    return switch (cause.onset()) {
      case SEPARATION -> p;
      case UNIFORM -> p * Math.min(1, seconds / SPAN);
      case HAZARD -> -Math.expm1(-rate(cause) * Math.min(SPAN, seconds));
      case FIRST_ECLIPSE -> firstEclipse <= seconds ? p : 0;
      case FIRST_TRANSMISSION -> quiet <= seconds ? p : 0;
    };
  }

  /**
   * Chance that a cause has begun by a time and that at most one other event happens, before any
   * evidence.
   */
  double namedBy(int index, double seconds) {
    double none = 1;
    double odds = 0;
    for (int c = 0; c < input.causes().size(); c++) {
      double p = input.causes().get(c).probability();
      none *= c == index ? 1 : 1 - p;
      odds += c == index ? 0 : p / (1 - p);
    }
    return begunBy(index, seconds) * none * (1 + odds);
  }

  private static void happen(
      Cause cause,
      double onset,
      double size,
      List<TimedChange> changes,
      List<PlainLink.Harm> harms) {
    Set<Clearing> clearing = clearing(cause);
    for (Effect effect : cause.effects()) {
      effect
          .onboard(size, clearing)
          .ifPresent(change -> changes.add(new TimedChange(onset, change)));
      RadioChange radio = effect.radio(size);
      if (radio.mute() || radio.downlinkLossDb() != 0 || radio.frequencyShiftHz() != 0) {
        harms.add(
            new PlainLink.Harm(
                onset, radio.mute(), radio.downlinkLossDb(), radio.frequencyShiftHz()));
      }
    }
  }

  private static Set<Clearing> clearing(Cause cause) {
    Set<Clearing> set = EnumSet.noneOf(Clearing.class);
    for (Cause.ClearsOn clears : cause.clearsOn()) {
      switch (clears) {
        case POWER_CYCLE -> set.add(Clearing.POWER_CYCLE);
        case POWER_REMOVED -> set.add(Clearing.POWER_REMOVED);
        case WATCHDOG -> set.add(Clearing.WATCHDOG);
        case COMMAND -> set.addAll(EnumSet.of(Clearing.RESET_COMMAND, Clearing.BEACON_COMMAND));
        case SEASON -> {
          // the light itself brings it
        }
      }
    }
    return set;
  }

  private double[] values(SplittableRandom random) {
    List<Uncertain> numbers = input.body().numbers();
    double[] values = new double[numbers.size()];
    for (int k = 0; k < values.length; k++) {
      values[k] = numbers.get(k).quantile(inside(random));
      boolean tumble = input.body().keys().get(k).endsWith("rate_deg_s");
      values[k] *= shifted && tumble ? SHIFTED_TUMBLE : 1;
    }
    return values;
  }

  private int object(double u) {
    List<Candidate> candidates = input.candidates();
    double sum = 0;
    for (int k = 0; k < candidates.size(); k++) {
      sum += candidates.get(k).prior();
      if (u < sum) {
        return k;
      }
    }
    return candidates.size() - 1;
  }

  /** Strictly between 0 and 1. */
  static double inside(SplittableRandom random) {
    return Math.max(1e-9, Math.min(1 - 1e-9, random.nextDouble()));
  }
}
