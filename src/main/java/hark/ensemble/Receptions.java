package hark.ensemble;

import hark.link.Way;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Computes what members let stations meet, and remembers it for members that share the answer.
 * Sittings fail with {@value #SLIP} each, independently.
 */
final class Receptions {
  /**
   * A sitting that failed without anyone noticing: wrong mode, loose plug, wrong set. Common
   * practice.
   */
  static final double SLIP = 0.03;

  /**
   * Gauss–Hermite nodes and weights for the standard normal, three points (Abramowitz and Stegun,
   * table 25.10): the clock of somebody else, whom nobody asks again.
   */
  private static final double[] CLOCK = {-1.7320508075688772, 0, 1.7320508075688772};

  private static final double[] CLOCK_WEIGHT = {1.0 / 6, 2.0 / 3, 1.0 / 6};

  /** Chances below this are none: they drown in what is not ours and in single precision. */
  private static final double LEAST_NOTICED = 1e-6;

  private final List<BeaconRadio> beacons;
  private final Ear ear;
  private final Remembering memory;

  /** Of silent bodies, by entry: one answer for all of them. */
  private final Map<Integer, Heard> nothing = new ConcurrentHashMap<>();

  Receptions(List<BeaconRadio> beacons, Ear ear, Remembering memory) {
    this.beacons = beacons;
    this.ear = ear;
    this.memory = memory;
  }

  /**
   * What the clue says of a member.
   *
   * @param tables by {@code [mode][beacon]}
   */
  Heard of(ListeningClue clue, Member member, Body body, LazyTables tables) {
    SkyWindow window = clue.window();
    double until = Math.min(window.to(), member.radio().muteFrom());
    return until > window.from()
            && Ear.Segments.any(body.history().segments(), window.from(), until)
        ? memory.ours(clue, member, body, bursts -> hear(clue, bursts, tables.get()))
        : nothing.computeIfAbsent(clue.entry(), entry -> Heard.nothing(clue, tables.rows()));
  }

  /** Windows in which somebody else may really have listened, by the error of the clock there. */
  static SkyWindow[] windows(OutsideClue clue) {
    SkyWindow[] windows = new SkyWindow[CLOCK.length];
    for (int k = 0; k < windows.length; k++) {
      windows[k] = clue.window().shifted(CLOCK[k] * clue.clockSdSeconds());
    }
    return windows;
  }

  /**
   * What a report of somebody else says of a member.
   *
   * @param tables by {@code [window][beacon]}, for {@link #windows}
   */
  Heard of(OutsideClue clue, Member member, Body body, LazyTables tables) {
    SkyWindow[] windows = windows(clue);
    double until = windows[windows.length - 1].to();
    return memory.outside(
        clue, member, until, () -> report(clue, windows, member, body, tables.get()));
  }

  private Heard report(
      OutsideClue clue, SkyWindow[] windows, Member member, Body body, HearingTable[][] tables) {
    double[] detect = new double[tables[0][0].nodes()];
    for (int k = 0; k < windows.length; k++) {
      Bursts bursts = Bursts.of(member, body, windows[k].from(), windows[k].to());
      double[] noticed =
          bursts.count == 0 ? null : detect(clue.listening().way(), bursts, tables[k]);
      for (int n = 0; n < detect.length; n++) {
        detect[n] += noticed == null ? 0 : CLOCK_WEIGHT[k] * noticed[n];
      }
    }
    double[] likelihood = new double[detect.length];
    for (int n = 0; n < likelihood.length; n++) {
      likelihood[n] = clue.likelihood(detect[n]);
    }
    double[][] alone = {likelihood};
    return new Heard(alone, clue.likelihood(0), alone, clue.likelihood(0));
  }

  /** Forgets what was remembered of a body. */
  void forget(int body) {
    memory.forget(body);
  }

  private Heard hear(ListeningClue clue, Bursts bursts, HearingTable[][] tables) {
    Heard nothing = Heard.nothing(clue, tables.length);
    double[][] likelihood = new double[tables.length][];
    double[][] outcome = clue.readsNumber() ? new double[tables.length][] : likelihood;
    for (int m = 0; m < tables.length; m++) {
      double[] detect =
          tables[m] == null ? null : detect(clue.listening().way(), bursts, tables[m]);
      if (detect != null) {
        HearingTable[] byBeacon = tables[m];
        Reception met =
            new Reception(
                detect,
                levels(clue, bursts, byBeacon),
                (pitch, n) -> pitch.density(bursts, byBeacon, beacons, n));
        likelihood[m] = new double[detect.length];
        outcome[m] = clue.readsNumber() ? new double[detect.length] : likelihood[m];
        for (int n = 0; n < detect.length; n++) {
          likelihood[m][n] = clue.likelihood(met, n);
          if (clue.readsNumber()) {
            outcome[m][n] = clue.outcome(met, n);
          }
        }
      }
    }
    return new Heard(likelihood, nothing.deaf(), outcome, nothing.deafOutcome());
  }

  /** Densities of levels, for all nodes prepared when the first is asked for. */
  private Reception.Levels levels(ListeningClue clue, Bursts bursts, HearingTable[] tables) {
    MetLevels[] known = new MetLevels[1];
    return (levelDb, readSdDb, node) -> {
      if (known[0] == null) {
        known[0] = ear.levels(bursts, tables, clue.listening().way());
      }
      return known[0].density(node, levelDb, readSdDb);
    };
  }

  /** Chance that a burst is noticed at each node; null when there is none at any. */
  private double[] detect(Way way, Bursts bursts, HearingTable[] tables) {
    float[] miss = ear.miss(bursts, tables, way);
    double[] detect = new double[miss.length];
    boolean any = false;
    for (int n = 0; n < detect.length; n++) {
      double noticed = 1 - miss[n];
      detect[n] = noticed > LEAST_NOTICED ? (1 - SLIP) * noticed : 0;
      any |= detect[n] > 0;
    }
    return any ? detect : null;
  }
}
