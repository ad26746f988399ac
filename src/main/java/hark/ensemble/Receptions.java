package hark.ensemble;

import hark.link.Way;

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

  private final Ear ear;
  private final HeardMemory memory;

  Receptions(Ear ear, int entries, int bodies) {
    this.ear = ear;
    this.memory = new HeardMemory(entries, bodies);
  }

  /**
   * What the clue says of a member.
   *
   * @param tables by {@code [mode][beacon]}
   */
  Heard of(ListeningClue clue, Member member, Body body, HearingTable[][] tables) {
    return memory.get(
        clue.entry(), member, clue.window().to(), () -> hear(clue, member, body, tables));
  }

  /** Forgets what was remembered of a body. */
  void forget(int body) {
    memory.forget(body);
  }

  private Heard hear(ListeningClue clue, Member member, Body body, HearingTable[][] tables) {
    SkyWindow window = clue.window();
    double until = Math.min(window.to(), member.radio().muteFrom());
    Heard nothing = Heard.nothing(clue, tables.length);
    if (!Ear.Segments.any(body.history().segments(), window.from(), until)) {
      return nothing;
    }
    Bursts bursts = Bursts.of(member, body, window.from(), window.to());
    double[][] likelihood = new double[tables.length][];
    double[][] outcome = clue.readsNumber() ? new double[tables.length][] : likelihood;
    for (int m = 0; m < tables.length; m++) {
      double[] detect =
          tables[m] == null ? null : detect(clue.listening().way(), bursts, tables[m]);
      if (detect != null) {
        HearingTable[] byBeacon = tables[m];
        Reception met = new Reception(detect, n -> Ear.strongestDb(bursts, byBeacon, n));
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

  /** Chance that a burst is noticed at each node; null when there is none at any. */
  private double[] detect(Way way, Bursts bursts, HearingTable[] tables) {
    double[] detect = ear.miss(bursts, tables, way);
    boolean any = false;
    for (int n = 0; n < detect.length; n++) {
      detect[n] = (1 - SLIP) * (1 - detect[n]);
      any |= detect[n] > 0;
    }
    return any ? detect : null;
  }
}
