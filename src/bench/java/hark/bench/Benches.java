package hark.bench;

/** Runs every benchmark; a new one is one line here. */
public final class Benches {
  private Benches() {}

  /** Prints one line or a few for each benchmark. */
  public static void main(String[] args) {
    PassesBench.run();
    ColdBriefBench.run();
  }
}
