package hark.bench;

/** Runs every benchmark; a new one is one line here. */
public final class Benches {
  private Benches() {}

  /**
   * Prints one line or a few for each benchmark; {@code energy} alone runs only that one, {@code
   * spread DIR} how the posterior of a mission wanders between seeds.
   */
  public static void main(String[] args) {
    if (args.length == 1 && args[0].equals("energy")) {
      EnergyBench.run();
      return;
    }
    if (args.length == 2 && args[0].equals("spread")) {
      SpreadBench.run(java.nio.file.Path.of(args[1]));
      return;
    }
    PassesBench.run();
    CatalogueBench.run();
    EnergyBench.run();
    ColdBriefBench.run();
  }
}
