package hark.ensemble;

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

  /** What a working station meets of a member in the clue's window. */
  Reception of(ListeningClue clue, Member member, Body body, HearingTable[][] byNode) {
    SkyWindow window = clue.window();
    double[] detect =
        memory.get(clue.entry(), member, window.to(), () -> detect(clue, member, body, byNode));
    return new Reception(
        detect, n -> ear.strongestDb(member, body, byNode[n], window.from(), window.to()));
  }

  private double[] detect(ListeningClue clue, Member member, Body body, HearingTable[][] byNode) {
    SkyWindow window = clue.window();
    double[] detect = new double[byNode.length];
    double until = Math.min(window.to(), member.radio().muteFrom());
    if (Ear.Segments.any(body.history().segments(), window.from(), until)) {
      for (int n = 0; n < byNode.length; n++) {
        double miss =
            ear.miss(member, body, byNode[n], clue.listening().way(), window.from(), window.to());
        detect[n] = (1 - SLIP) * (1 - miss);
      }
    }
    return detect;
  }
}
